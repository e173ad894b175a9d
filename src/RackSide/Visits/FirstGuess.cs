using RackSide.Training.Measures;

namespace RackSide.Visits;

/// <summary>A first guess at the unit, for the set-up to offer.</summary>
internal static class FirstGuess
{
    /// <summary>Pounds where the locale's region counts in them, else kilograms. Globalization is invariant here, so the variables are read.</summary>
    public static MassUnit Unit(Func<string, string?>? environment = null)
    {
        var read = environment ?? Environment.GetEnvironmentVariable;
        var locale = new[] { "LC_ALL", "LC_MEASUREMENT", "LANG" }.Select(read).FirstOrDefault(v => !string.IsNullOrEmpty(v)) ?? "";
        return locale.Contains("_US", StringComparison.Ordinal) ? MassUnit.Pound : MassUnit.Kilogram;
    }
}
