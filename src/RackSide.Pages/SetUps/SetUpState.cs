using System.Collections.Immutable;
using NodaTime;
using RackSide.Training.Measures;
using RackSide.Training.Safety;

namespace RackSide.Pages.SetUps;

/// <summary>All that has been answered so far, and where the lifter is.</summary>
public sealed record SetUpState
{
    /// <summary>The name where none is typed.</summary>
    public const string DefaultName = "Lifter";

    /// <summary>The page shown.</summary>
    public SetUpPage At { get; init; }

    /// <summary>The active line of a page of ticks or counts, from 0; on a page to read, how many lines were moved on.</summary>
    public int Line { get; init; }

    /// <summary>Which advice is shown, from 0.</summary>
    public int AdviceShown { get; init; }

    /// <summary>How many lines of the stop signs were moved on; null while they do not lie over the page.</summary>
    public int? StopSigns { get; init; }

    /// <summary>Whether everything was answered and accepted.</summary>
    public bool Finished { get; init; }

    /// <summary>Whether the set-up was left before that.</summary>
    public bool Left { get; init; }

    /// <summary>The name as typed.</summary>
    public string TypedName { get; init; } = "";

    /// <summary>Whether the last letter of it was turned on the pad.</summary>
    public bool TurningName { get; init; }

    /// <summary>Whether somebody joins a gym that is set up already: bar, plates, kit and days are not asked then.</summary>
    public bool Joining { get; init; }

    /// <summary>The unit the plates are marked in.</summary>
    public MassUnit Unit { get; init; }

    /// <summary>What is chosen where the plates are in kilograms.</summary>
    public UnitChoices InKilograms { get; init; } = UnitChoices.Default(MassUnit.Kilogram);

    /// <summary>What is chosen where the plates are in pounds.</summary>
    public UnitChoices InPounds { get; init; } = UnitChoices.Default(MassUnit.Pound);

    /// <summary>Ticked words of <see cref="KitOption"/>.</summary>
    public ImmutableHashSet<string> OtherKit { get; init; } = [];

    /// <summary>Ticked weekdays, Monday first.</summary>
    public ImmutableSortedSet<IsoDayOfWeek> Days { get; init; } =
        [IsoDayOfWeek.Monday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Friday];

    /// <summary>Safety questions answered "yes", in the order asked; gone when the set-up ends.</summary>
    public ImmutableSortedSet<SafetyTopic> Yes { get; init; } = [];

    /// <summary>The name, or the default one.</summary>
    public string Name => TypedName.Trim() is { Length: > 0 } name ? name : DefaultName;

    /// <summary>What is chosen in the unit in hand.</summary>
    public UnitChoices Choices => Unit == MassUnit.Kilogram ? InKilograms : InPounds;

    /// <summary>The first page of a set-up, with a first guess at the unit.</summary>
    public static SetUpState Begin(MassUnit guess) => new() { Unit = guess, OtherKit = [.. KitOption.TickedAtFirst(guess)] };

    /// <summary>The same with other choices in the unit in hand.</summary>
    public SetUpState With(UnitChoices choices) =>
        Unit == MassUnit.Kilogram ? this with { InKilograms = choices } : this with { InPounds = choices };
}
