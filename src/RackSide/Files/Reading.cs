namespace RackSide.Files;

/// <summary>What came of reading a file: the value, or every mistake in it at once, so that one mending round is enough.</summary>
/// <typeparam name="T">What the file says.</typeparam>
/// <param name="Value">The value; null exactly where there are mistakes.</param>
/// <param name="Mistakes">The mistakes in the order of their lines; empty where there is a value.</param>
public sealed record Reading<T>(T? Value, IReadOnlyList<Mistake> Mistakes)
    where T : class
{
    /// <summary>The value of a file known to be good.</summary>
    /// <exception cref="InvalidDataException">There are mistakes; the message is their sentences.</exception>
    public T OrThrow() => Value ?? throw new InvalidDataException(string.Join(Environment.NewLine, Mistakes));
}
