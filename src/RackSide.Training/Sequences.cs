namespace RackSide;

/// <summary>Three words of LINQ, said plainly. In every namespace of RackSide they are nearer than LINQ's own, so they are meant.</summary>
/// <remarks>
/// LINQ prepares each pair of types for all that may follow (a filter after a projection, another projection, counting, the
/// nth), and a native program has to hold the code of all of it: 1.4 MB, most of it for pairs that never meet. A loop has one
/// thing to hold. What is asked for and when is the same: nothing before the first element is, and each once.
/// </remarks>
public static class Sequences
{
    /// <summary>What a function makes of each element, when it is asked for.</summary>
    public static IEnumerable<TResult> Select<T, TResult>(this IEnumerable<T> source, Func<T, TResult> make)
    {
        foreach (var one in source)
        {
            yield return make(one);
        }
    }

    /// <summary>What a function makes of each element and its place, counted from 0, when it is asked for.</summary>
    public static IEnumerable<TResult> Select<T, TResult>(this IEnumerable<T> source, Func<T, int, TResult> make)
    {
        var place = 0;
        foreach (var one in source)
        {
            yield return make(one, place++);
        }
    }

    /// <summary>All that a function finds for each element, one after another, when it is asked for.</summary>
    public static IEnumerable<TResult> SelectMany<T, TResult>(this IEnumerable<T> source, Func<T, IEnumerable<TResult>> find)
    {
        foreach (var one in source)
        {
            foreach (var found in find(one))
            {
                yield return found;
            }
        }
    }

    /// <summary>The elements that hold, when they are asked for.</summary>
    public static IEnumerable<T> Where<T>(this IEnumerable<T> source, Func<T, bool> holds)
    {
        foreach (var one in source)
        {
            if (holds(one))
            {
                yield return one;
            }
        }
    }
}
