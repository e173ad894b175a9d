using CsCheck;
using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Training.Tests.Loading;

/// <summary>Gyms and exercises for these tests.</summary>
internal static class SampleKits
{
    /// <summary>One pair of each kilogram disc that the check values of the plates tests assume.</summary>
    public static GymKit OneOfEach { get; } = Kilograms(
        20, (25, 1), (20, 1), (15, 1), (10, 1), (5, 1), (2.5m, 1), (1.25m, 1), (0.5m, 1));

    /// <summary>A home set that steps by 2.5 kg from the bar up.</summary>
    public static GymKit StepsOfTwoAndAHalf { get; } = Kilograms(
        20, (20, 2), (15, 1), (10, 1), (5, 1), (2.5m, 1), (1.25m, 1));

    /// <summary>A pound gym, one pair of each.</summary>
    public static GymKit Pounds { get; } = new()
    {
        Unit = MassUnit.Pound,
        Bars = [new("the bar", Mass.Lb(45))],
        Plates = [.. new[] { 45, 35, 25, 10, 5, 2.5m }.Select(p => new PlatePairs(Mass.Lb(p), 1))],
    };

    /// <summary>Random gyms of up to two pairs of six kilogram discs and up to one pair of three pound plates.</summary>
    public static Gen<GymKit> Small { get; } =
        from kilograms in Gen.Int[0, 2].Array[6]
        from pounds in Gen.Frequency((3, 0), (1, 1)).Array[3]
        from bar in Gen.OneOf(Mass.Kg(20), Mass.Kg(15), Mass.Lb(45))
        select new GymKit
        {
            Unit = bar.Unit,
            Bars = [new("the bar", bar)],
            Plates =
            [
                .. new[] { 20, 15, 10, 5, 2.5m, 1.25m }.Zip(kilograms, (p, n) => new PlatePairs(Mass.Kg(p), n)),
                .. new[] { 45, 10, 2.5m }.Zip(pounds, (p, n) => new PlatePairs(Mass.Lb(p), n)),
            ],
        };

    /// <summary>A gym in kilograms.</summary>
    public static GymKit Kilograms(decimal bar, params (decimal Plate, int Pairs)[] plates) => new()
    {
        Unit = MassUnit.Kilogram,
        Bars = [new("the bar", Mass.Kg(bar))],
        Plates = [.. plates.Select(p => new PlatePairs(Mass.Kg(p.Plate), p.Pairs))],
    };

    /// <summary>An exercise that is loaded like this.</summary>
    public static Exercise Loaded(LoadType type, Motion motion = Motion.Squat) => new()
    {
        Id = "sample",
        Name = "Sample",
        ShortName = "Sample",
        Motion = motion,
        LoadType = type,
        Cues = new("set up", "way down", "way up", "fault", "stop if"),
    };
}
