using RackSide.Training.Exercises;

namespace RackSide.Training.Summary;

/// <summary>The weekly sets in words.</summary>
public static class MuscleLines
{
    /// <summary>
    /// The groups that something was done for, and push against pull; nothing where nothing was lifted. Groups that were
    /// only trained besides are left out here.
    /// </summary>
    /// <param name="muscles">The sets of each group.</param>
    /// <param name="balance">Push and pull.</param>
    /// <param name="width">The most columns of a line; words are kept whole.</param>
    public static IReadOnlyList<string> Of(IReadOnlyList<MuscleSets> muscles, PushPull balance, int width)
    {
        var groups = muscles.Where(m => m.Direct > 0).Select(m => FormattableString.Invariant($"{m.Group.Name()}{Joint}{m.Counted:0.#}")).ToList();
        return groups.Count == 0
            ? []
            : [.. Wrapped($"sets, estimated: {string.Join(", ", groups)}", width), .. Wrapped(Balance(balance), width)];
    }

    // A group and its number stay on one line.
    private const char Joint = '\u00a0';

    private static string Balance(PushPull balance) => FormattableString.Invariant(
        $"push {balance.Push}, pull {balance.Pull}; for size about {MuscleSets.AboutEnough} a muscle");

    private static IReadOnlyList<string> Wrapped(string text, int width)
    {
        List<string> lines = [""];
        foreach (var word in text.Split(' '))
        {
            if (lines[^1].Length > 0 && lines[^1].Length + 1 + word.Length > width)
            {
                lines.Add("");
            }

            lines[^1] += lines[^1].Length > 0 ? " " + word : word;
        }

        return [.. lines.Select(l => l.Replace(Joint, ' '))];
    }
}
