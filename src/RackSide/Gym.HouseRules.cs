using RackSide.Files;
using RackSide.Pages.Settings;
using RackSide.Places;
using RackSide.Training.Kit;

namespace RackSide;

/// <summary>The gym's house rules: the file that a person may write too, read, changed and kept.</summary>
internal sealed partial class Gym
{
    /// <summary>The house rules in these folders; null before the first set-up.</summary>
    /// <exception cref="Refusal">The file has mistakes.</exception>
    public static HouseRules? RulesIn(Folders folders) =>
        File.Exists(folders.GymFile) ? Good(GymFile.ReadFrom(folders.GymFile), ExitCode.Config) : null;

    /// <summary>Keeps the house rules of a set-up. Rules that were there before stay beside them, under another name.</summary>
    public void Keep(HouseRules rules)
    {
        PrivateFolder.Make(Folders.Config);
        WholeFile.Replace(Folders.GymFile, GymFile.Write(rules));
        Rules = rules;
    }

    /// <summary>Puts a change of the kit into the house rules, touching nothing else that a person wrote there.</summary>
    /// <param name="before">The kit the change was made from.</param>
    /// <param name="after">The kit it is to be.</param>
    /// <returns>Null where it is written; otherwise why not, in one sentence, and nothing has changed.</returns>
    public string? ChangeKit(GymKit before, GymKit after) =>
        Change(text => GymEdit.Apply(text, before, after, Path.GetFileName(Folders.GymFile)));

    /// <summary>Keeps changed settings in the house-rules file, every other line of which stays as it is.</summary>
    /// <returns>A sentence where they could not be kept; else null.</returns>
    public string? Keep(RackSettings settings) =>
        Change(text => new Reading<string>(ScreenText.Into(text, settings.Screen, settings.Sound), []));

    /// <summary>What the file would say is read first, so that nothing is ever written that could not be opened again.</summary>
    private string? Change(Func<string, Reading<string>> edit)
    {
        try
        {
            var changed = edit(File.ReadAllText(Folders.GymFile));
            var read = changed.Value is { } text ? GymFile.Read(text, Path.GetFileName(Folders.GymFile)) : null;
            if (read?.Value is not { } rules)
            {
                return $"Not written. {(read?.Mistakes ?? changed.Mistakes)[0]}";
            }

            WholeFile.Replace(Folders.GymFile, changed.Value!);
            Rules = rules;
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return $"Not written: {e.Message}";
        }
    }

    // A logbook without them is worth more than none.
    private byte[]? RulesAtRest()
    {
        try
        {
            return File.Exists(Folders.GymFile) ? File.ReadAllBytes(Folders.GymFile) : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
