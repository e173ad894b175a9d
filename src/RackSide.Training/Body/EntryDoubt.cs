using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Training.Body;

/// <summary>
/// Asks back where a weight or a height that can be read is hardly meant: a digit too many or too few, the other unit, the two
/// numbers changed about. Whoever means it says so again, and it is kept.
/// </summary>
public static class EntryDoubt
{
    /// <summary>
    /// From this share of the level on a weight is asked back. Six mornings in a hundred differ from the one before by a
    /// kilogram and more (second-hand, probably Edholm et al. 1974), none by three; so a slip is likelier. Ours.
    /// </summary>
    public const double Share = 0.04;

    private const double ShareADay = 0.001;
    private const double MostShare = 0.15;

    // Body mass index; beyond these a grown-up is rare and a slip is not. Ours.
    private const double LeastIndex = 12;
    private const double MostIndex = 60;

    /// <summary>Why a weight is asked back, in one sentence without a full stop; null where it is not.</summary>
    /// <param name="weight">What was typed.</param>
    /// <param name="before">The weigh-ins so far, oldest first.</param>
    /// <param name="profile">What was told.</param>
    /// <param name="on">The day it is for.</param>
    public static string? Of(Mass weight, IReadOnlyList<WeighIn> before, BodyProfile profile, LocalDate on) =>
        Swapped(weight, profile.Height) ? $"{weight} with a height of {profile.Height} looks like the two numbers changed about"
        : before.LastOrDefault(w => w.Date != on) is { } last ? FromLast(weight, last, on)
        : profile.Height is { } height && Index(weight, height) is < LeastIndex or > MostIndex ? $"{weight} at {height} is hardly a body weight"
        : null;

    /// <summary>Why a height is asked back; null where it is not.</summary>
    /// <param name="height">What was typed.</param>
    /// <param name="last">The last body weight; null where there is none.</param>
    public static string? Of(Height height, Mass? last) => last is not { } weight ? null
        : Swapped(weight, height) ? $"{height} with a body weight of {weight} looks like the two numbers changed about"
        : Index(weight, height) is < LeastIndex or > MostIndex ? $"{height} at {weight} is hardly a height"
        : null;

    /// <summary>
    /// Whether a weight and a height make no body as they stand and one when changed about, as in a well-known table of 200
    /// people where one weighs 166 kg and is 57 cm tall (Davis 1990, Appetite 15:13-21).
    /// </summary>
    /// <param name="kilograms">As it was written for the weight.</param>
    /// <param name="centimetres">As it was written for the height.</param>
    public static bool AreSwapped(decimal kilograms, decimal centimetres) =>
        Index(kilograms, centimetres) is < LeastIndex or > MostIndex && Index(centimetres, kilograms) is >= LeastIndex and <= MostIndex;

    private static bool Swapped(Mass weight, Height? height) => height is { } tall
        && (AreSwapped(weight.Kilograms, tall.Centimetres) || (weight.Amount == tall.Amount && Index(weight, tall) > 40));

    private static string? FromLast(Mass weight, WeighIn last, LocalDate on)
    {
        var days = Math.Abs(Period.DaysBetween(last.Date, on));
        var off = (double)Math.Abs(weight.Kilograms - last.Weight.Kilograms) / (double)last.Weight.Kilograms;
        if (off <= Math.Min(MostShare, Share + (ShareADay * days)))
        {
            return null;
        }

        return $"{weight} is {Off(weight, last.Weight)} than the last, {last.Weight} on {Schedule.ShownDate.Short(last.Date)}{Meant(weight, last.Weight)}";
    }

    private static string Off(Mass weight, Mass last)
    {
        var off = Math.Round(weight.Amount - last.In(weight.Unit), 1);
        return $"{new Mass(Math.Abs(off), weight.Unit)} {(off > 0 ? "more" : "less")}";
    }

    private static string Meant(Mass weight, Mass last)
    {
        Mass[] slips = [weight * 0.1m, weight * 10, new(weight.Amount, Other(weight.Unit))];
        var meant = slips.Where(s => Math.Abs((double)(s.Kilograms / last.Kilograms) - 1) < Share).Cast<Mass?>().FirstOrDefault();
        return meant is { } slip ? $"; is {slip} meant?" : "";
    }

    private static MassUnit Other(MassUnit unit) => unit == MassUnit.Kilogram ? MassUnit.Pound : MassUnit.Kilogram;

    private static double Index(Mass weight, Height height) => Index(weight.Kilograms, height.Centimetres);

    private static double Index(decimal kilograms, decimal centimetres) =>
        centimetres == 0 ? double.PositiveInfinity : (double)(kilograms / (centimetres * centimetres / 10_000));
}
