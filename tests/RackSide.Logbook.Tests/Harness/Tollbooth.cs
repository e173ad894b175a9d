using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Logbook.Tests.Harness;

/// <summary>Our invented gym's lifters, sessions and sets.</summary>
internal static class Tollbooth
{
    public static readonly Instant Evening = Instant.FromUtc(2026, 3, 4, 18, 0);

    public static readonly LocalDate Wednesday = new(2026, 3, 4);

    public static readonly Lifter Ottoline = new("ottoline", "Ottoline Marsh", MassUnit.Kilogram, Evening - Duration.FromDays(30));

    public static readonly Lifter Bram = new("bram", "Bram Okafor-Lind", MassUnit.Pound, Evening - Duration.FromDays(20));

    public static SessionHead Head(FactId id, string lifter = "ottoline", LocalDate? date = null) => new()
    {
        Id = id,
        Begun = Evening,
        Date = date ?? Wednesday,
        Zone = "Europe/London",
        Lifter = lifter,
        Plan = "Two strength days",
        DayKey = "a",
        DayName = "Strength A",
        Kind = DayKind.Strength,
        Prescriptions = [Squat],
    };

    public static Prescription Squat { get; } = new()
    {
        Slot = "squat",
        Motion = Motion.Squat,
        Exercise = "back-squat",
        Scheme = new Scheme.Fixed(5, 5),
        Targets = [5, 5, 5, 5, 5],
        Load = Mass.Kg(42.5m),
        Ramp = [new RampSet(Mass.Kg(20), 10), new RampSet(Mass.Kg(32.5m), 3)],
        Rest = Duration.FromMinutes(2),
        Why = new Reason("all-met", "all 5x5 done on Monday: 2.5 kg more"),
    };

    public static SetDone Set(FactId id, int number = 1, int done = 5) =>
        new(id, Evening + Duration.FromMinutes(number), "squat", "back-squat", SetKind.Working, number, 5, done, Mass.Kg(42.5m));
}
