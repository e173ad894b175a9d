namespace RackSide.Commands;

/// <summary>A question before something is changed that a key cannot take back.</summary>
internal static class AskFirst
{
    /// <summary>The option that answers it beforehand.</summary>
    public const string YesName = "--yes";

    /// <summary>Whether to go on: told beforehand, or answered with yes.</summary>
    /// <exception cref="Refusal">There is nobody to ask.</exception>
    public static bool Confirmed(this Surroundings around, bool yes, string command, string question) => yes
        || (around.Ask($"{question} [y/N] ") ?? throw new Refusal(ExitCode.Usage, $"{command}: this is asked about first, and nobody is here to answer; add {YesName} if you are sure"))
            .Trim().ToLowerInvariant() is "y" or "yes";
}
