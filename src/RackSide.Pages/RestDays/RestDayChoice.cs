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

    /// <summary>A check-in: body weight, sleep, food.</summary>
    public sealed record CheckIn : RestDayChoice;

    /// <summary>The page of the body.</summary>
    public sealed record BodyPage : RestDayChoice;

    /// <summary>This week's page.</summary>
    public sealed record WeekPage : RestDayChoice;

    /// <summary>The next four weeks.</summary>
    public sealed record CalendarPage : RestDayChoice;

    /// <summary>The page of days away.</summary>
    public sealed record AwayPage : RestDayChoice;

    /// <summary>What was done, exercise by exercise.</summary>
    public sealed record LookBack : RestDayChoice;

    /// <summary>What the gym owns.</summary>
    public sealed record KitPage : RestDayChoice;

    /// <summary>The settings of the screen, the sound and the keys.</summary>
    public sealed record Settings : RestDayChoice;
}
