using RackSide.Training.Measures;

namespace RackSide.Training.Sessions;

/// <summary>Reading a typed body weight.</summary>
public static class BodyWeightEntry
{
    private const decimal Lightest = 25, Heaviest = 350;

    /// <summary>What is typed, with one more character where that can still become a number.</summary>
    public static string Add(string typed, string more) =>
        typed.Length >= 6 || (more == "." && typed.Contains('.')) ? typed : typed.Length == 0 && more == "." ? "0." : typed + more;

    /// <summary>The weight typed; null where it is none between 25 and 350 kg.</summary>
    public static Mass? Read(string typed, MassUnit unit) =>
        NumberEntry.Parse(typed) is { } amount && new Mass(amount, unit) is { Kilograms: >= Lightest and <= Heaviest } weight ? weight : null;

    /// <summary>What is wrong with a weight that was not taken.</summary>
    public static string Refusal(MassUnit unit) => unit == MassUnit.Kilogram
        ? "a body weight lies between 25 and 350 kg; type it again"
        : "a body weight lies between 55 and 770 lb; type it again";
}
