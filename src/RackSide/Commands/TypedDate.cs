using NodaTime;
using RackSide.Training.Schedule;

namespace RackSide.Commands;

/// <summary>A date on the command line.</summary>
internal static class TypedDate
{
    /// <summary>The date that was typed; without a year it is the one nearest to another date.</summary>
    /// <exception cref="Refusal">It is none.</exception>
    public static LocalDate Read(string text, LocalDate near) =>
        DateEntry.Read(text, near) ?? throw new Refusal(ExitCode.Usage, DateEntry.Refusal(text).TrimEnd('.'));
}
