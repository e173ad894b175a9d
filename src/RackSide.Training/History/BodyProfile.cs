using NodaTime;
using RackSide.Training.Measures;

namespace RackSide.Training.History;

/// <summary>Which of the two sets of numbers a formula for energy is taken with.</summary>
public enum FormulaSex
{
    /// <summary>The numbers for women.</summary>
    Female,

    /// <summary>The numbers for men.</summary>
    Male,
}

/// <summary>How active a life is besides, and with, the training; the levels of FAO/WHO/UNU 2001.</summary>
public enum DailyActivity
{
    /// <summary>Sitting work, little walking, the training three times a week.</summary>
    Light,

    /// <summary>On the feet for much of the day, or an hour of brisk movement every day.</summary>
    Active,

    /// <summary>Heavy work by hand, or hours of hard exercise every day.</summary>
    Vigorous,
}

/// <summary>What a lifter told for the numbers on food, water and sleep. All of it is optional.</summary>
public sealed record BodyProfile
{
    /// <summary>Nothing told.</summary>
    public static BodyProfile Empty { get; } = new();

    /// <summary>How tall.</summary>
    public Height? Height { get; init; }

    /// <summary>
    /// The latest date of birth that fits what was told. An age told once goes on by itself, and is at most a year too low;
    /// so nobody under 18 is taken for older.
    /// </summary>
    public LocalDate? BornBy { get; init; }

    /// <summary>Which numbers the formulas are taken with.</summary>
    public FormulaSex? Sex { get; init; }

    /// <summary>How active the life is.</summary>
    public DailyActivity Activity { get; init; } = DailyActivity.Light;

    /// <summary>When the lifter usually gets up.</summary>
    public LocalTime? Rises { get; init; }

    /// <summary>
    /// Whether no targets are set, because a reason was told. Which reason is not kept: RackSide stores no diagnosis.
    /// </summary>
    public bool NoTargets { get; init; }

    /// <summary>Whether body weight, food and sleep are shown and asked nowhere.</summary>
    public bool Hidden { get; init; }

    /// <summary>The age on a date in whole years, or null where nothing was told.</summary>
    public int? AgeOn(LocalDate date) => BornBy is { } born ? Period.Between(born, date, PeriodUnits.Years).Years : null;
}
