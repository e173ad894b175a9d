namespace RackSide.Files;

/// <summary>One thing a person wrote that cannot be read, in one sentence: where it is, what is wrong, what would be right.</summary>
/// <param name="File">The file's name as the person knows it.</param>
/// <param name="Line">The line, counted from 1; 0 where the whole file is meant.</param>
/// <param name="Field">The field, or empty where the mistake is not in one.</param>
/// <param name="Wrong">What is wrong.</param>
/// <param name="Right">What to do about it.</param>
public sealed record Mistake(string File, int Line, string Field, string Wrong, string Right)
{
    /// <summary>The sentence: <c>plan.yaml:14: rest: "two minutes" is not a length of time; write …</c>.</summary>
    public override string ToString() => $"{Place}: {(Field.Length > 0 ? Field + ": " : "")}{Wrong}; {Right}";

    private string Place => Line > 0 ? $"{File}:{Line}" : File;
}
