using RackSide.Training.Measures;

namespace RackSide.Commands;

/// <summary>A load as typed: a number, and a unit where one is said.</summary>
/// <param name="Amount">The number.</param>
/// <param name="Unit">The unit; null takes the gym's.</param>
internal sealed record LoadEntry(decimal Amount, MassUnit? Unit)
{
    /// <summary>Reads <c>62.5</c>, <c>62,5 kg</c> or <c>135lb</c>.</summary>
    /// <exception cref="Refusal">It is no load.</exception>
    public static LoadEntry Parse(string text)
    {
        var typed = text.Trim();
        var unit = typed.Length > 2 ? MassUnits.Parse(typed[^2..]) : null;
        return NumberEntry.Parse(unit is null ? typed : typed[..^2]) is { } amount
            ? new LoadEntry(amount, unit)
            : throw new Refusal(ExitCode.Usage, $"\"{text}\" is not a load; write a number such as 62.5, 62,5 or 135lb");
    }
}
