using System.Text;
using RackSide.Files;
using RackSide.Logbook;
using RackSide.Places;

namespace RackSide.Commands;

/// <summary>The gym.yaml that lies in a backup, beside the one that is here.</summary>
internal sealed class RulesInBackup
{
    private const int MostShown = 12;

    private readonly Folders folders;
    private readonly byte[]? there;
    private readonly byte[]? here;
    private readonly Reading<HouseRules>? read;

    /// <summary>Looks at both.</summary>
    /// <exception cref="IOException">The one here cannot be read.</exception>
    public RulesInBackup(LogbookSnapshot backup, Folders folders)
    {
        (this.folders, there) = (folders, backup.HouseRules);
        here = File.Exists(folders.GymFile) ? File.ReadAllBytes(folders.GymFile) : null;
        read = there is null ? null : GymFile.Read(Encoding.UTF8.GetString(there), "its gym.yaml");
    }

    /// <summary>Whether it can be put in place, and that would change something.</summary>
    public bool Differs => read?.Value is not null && !IsSame;

    /// <summary>Whether one is here that it would take the place of.</summary>
    public bool Replaces => here is not null;

    /// <summary>The command that it would have run when a rest ends, where the one here has another; else null.</summary>
    public string? OtherCommand => read?.Value is { AlarmCommand: { Count: > 0 } command } && !command.SequenceEqual(AlarmHere())
        ? string.Join(' ', command)
        : null;

    private bool IsSame => here is not null && there is not null && here.AsSpan().SequenceEqual(there);

    /// <summary>What it is, and what it would change.</summary>
    public IEnumerable<string> Lines()
    {
        if (there is null)
        {
            return ["the backup holds no gym.yaml"];
        }

        return read!.Value is null ? [$"the backup's gym.yaml has mistakes and stays in the backup: {read.Mistakes[0]}"]
            : IsSame ? []
            : here is null ? ["the backup holds a gym.yaml, and here is none: it comes back"]
            : ["the backup's gym.yaml is another than the one here (- here, + in the backup):", .. Changes(), .. Command()];
    }

    /// <summary>Puts it in place; the one that was here stays beside it.</summary>
    /// <returns>What was done, in a line.</returns>
    /// <exception cref="IOException">It could not be written; the one here is as it was.</exception>
    public string PutInPlace()
    {
        PrivateFolder.Make(folders.Config);
        WholeFile.Replace(folders.GymFile, Encoding.UTF8.GetString(there!));
        return Replaces ? $"gym.yaml is the backup's; the old one is kept as {folders.GymFile}.old" : $"gym.yaml is back: {folders.GymFile}";
    }

    private IEnumerable<string> Command() => OtherCommand is { } command ? [$"it has this run when a rest ends: {command}"] : [];

    private IReadOnlyList<string> AlarmHere() => GymFile.Read(Encoding.UTF8.GetString(here ?? []), "gym.yaml").Value?.AlarmCommand ?? [];

    private List<string> Changes()
    {
        var (mine, its) = (LinesOf(here!), LinesOf(there!));
        List<string> changes = [.. mine.Except(its).Select(l => $"  - {l}"), .. its.Except(mine).Select(l => $"  + {l}")];
        return changes.Count <= MostShown ? changes : [.. changes.Take(MostShown), $"  and {changes.Count - MostShown} lines more"];
    }

    private static List<string> LinesOf(byte[] bytes) =>
        [.. Encoding.UTF8.GetString(bytes).ReplaceLineEndings("\n").Split('\n').Select(l => l.Trim()).Where(l => l.Length > 0)];
}
