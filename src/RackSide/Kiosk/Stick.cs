using RackSide.Logbook;
using RackSide.Places;

namespace RackSide.Kiosk;

/// <summary>A memory stick that others mount for the program: whether it is there, what is on it, and asking for its release.</summary>
/// <param name="settings">Where it would be.</param>
internal sealed class Stick(KioskSettings settings)
{
    private const string Mounts = "/proc/self/mountinfo";

    // The folder on sticks with owners of their own; see kiosk/stick.sh.
    private const string OwnFolder = "rackside";

    /// <summary>Whether somebody gives sticks back when asked.</summary>
    public bool CanBeReleased => settings.Release is not null;

    /// <summary>Whether one is there. Under a unit it must be mounted; the bare folder stays when it is gone.</summary>
    public bool IsThere => settings.Stick is { } place && Directory.Exists(place) && (!CanBeReleased || IsMounted(place));

    /// <summary>The folder on it.</summary>
    public string Folder => Path.Combine(settings.Stick!, OwnFolder) is var own && Directory.Exists(own) ? own : settings.Stick!;

    /// <summary>Its backups, newest first.</summary>
    public IReadOnlyList<FileInfo> Backups => [.. Logbook.Backups.In(Folder).Reverse().Select(b => b.File)];

    /// <summary>Writes a backup, which has the house rules in it, and the house rules beside it for people; each is read back.</summary>
    /// <returns>What was written, in a sentence.</returns>
    /// <exception cref="IOException">It could not be written.</exception>
    public string BackUp(Gym gym)
    {
        var name = new Backups(Folder).Make(gym.Snapshot()!, gym.Today);
        if (File.Exists(gym.Folders.GymFile))
        {
            Copy(gym.Folders.GymFile, Path.Combine(Folder, "gym.yaml"));
        }

        return $"{name} is on the stick, read back and found whole.";
    }

    /// <summary>Asks for its release.</summary>
    public void Release()
    {
        if (settings.Release is { } file)
        {
            File.WriteAllText(file, "");
        }
    }

    private static void Copy(string from, string to)
    {
        var bytes = File.ReadAllBytes(from);
        PrivateFile.Write(to, bytes);
        if (!File.ReadAllBytes(to).AsSpan().SequenceEqual(bytes))
        {
            throw new IOException($"{to} does not read back as it was written; check the stick");
        }
    }

    private static bool IsMounted(string place) => File.ReadLines(Mounts).Any(line => line.Split(' ') is { Length: > 4 } fields && fields[4] == place);
}
