namespace RackSide.Files;

/// <summary>Gathers the mistakes of one file while it is read on.</summary>
internal sealed class MistakeList(string file)
{
    private readonly List<Mistake> found = [];

    public bool Any => found.Count > 0;

    public int Count => found.Count;

    public void Add(int line, string field, string wrong, string right) =>
        found.Add(new Mistake(file, line, Shown(field, 40), Shown(wrong, 200), right));

    // The sentence goes to a terminal and quotes the file, so no control character of the file may reach it.
    private static string Shown(string text, int most)
    {
        var plain = string.Concat(text.Select(c => char.IsControl(c) ? '?' : c));
        return plain.Length > most ? plain[..most] + "..." : plain;
    }

    /// <summary>The reading: the value where nothing was found, else every mistake, top of the file first.</summary>
    public Reading<T> Close<T>(T? value)
        where T : class => Any
        ? new Reading<T>(null, [.. found.OrderBy(m => m.Line)])
        : new Reading<T>(value, []);
}
