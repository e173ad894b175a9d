using RackSide.Training.Body;
using RackSide.Training.Measures;

namespace RackSide.Pages.RestDays;

/// <summary>What the lifter asked for on a rest day.</summary>
public abstract record RestDayChoice
{
    private RestDayChoice()
    {
    }

    /// <summary>Nothing more today.</summary>
    public sealed record Leave : RestDayChoice;

    /// <summary>An extra session today.</summary>
    public sealed record TrainAnyway : RestDayChoice;

    /// <summary>A body weight to be written.</summary>
    /// <param name="BodyMass">As typed, in the lifter's unit; within <see cref="BodyWeightEntry.Least"/> and <see cref="BodyWeightEntry.Most"/>.</param>
    public sealed record Weigh(Mass BodyMass) : RestDayChoice;

    /// <summary>This week's page.</summary>
    public sealed record WeekPage : RestDayChoice;

    /// <summary>The next four weeks.</summary>
    public sealed record CalendarPage : RestDayChoice;

    /// <summary>The page of days away.</summary>
    public sealed record AwayPage : RestDayChoice;

    /// <summary>The settings of the screen, the sound and the keys.</summary>
    public sealed record Settings : RestDayChoice;
}
