using NodaTime;
using RackSide.Training.Kit;
using RackSide.Training.Measures;
using RackSide.Training.Safety;

namespace RackSide.Pages.SetUps;

/// <summary>What the set-up found out. No safety answer is among it, only what follows from them.</summary>
public sealed record SetUpAnswers
{
    /// <summary>The lifter's name.</summary>
    public required string Name { get; init; }

    /// <summary>The unit the plates are marked in.</summary>
    public required MassUnit MassUnit { get; init; }

    /// <summary>The bar.</summary>
    public required Bar Bar { get; init; }

    /// <summary>All usual plates of the unit, heaviest first, with the pairs owned; 0 for those that are not.</summary>
    public required IReadOnlyList<PlatePairs> Plates { get; init; }

    /// <summary>What else is owned, in the catalogue's words, in the order asked.</summary>
    public required IReadOnlyList<string> OtherKit { get; init; }

    /// <summary>The step of the cable stack; null where there is none.</summary>
    public required Mass? StackStep { get; init; }

    /// <summary>Three weekdays, Monday first, no two of them neighbours.</summary>
    public required IReadOnlyList<IsoDayOfWeek> TrainingDays { get; init; }

    /// <summary>Whether a safety question was answered "yes" and its advice read.</summary>
    public required bool CautionsRead { get; init; }

    /// <summary>Whether head-down work is to be replaced by floor work.</summary>
    public required bool AvoidInverted { get; init; }

    /// <summary>The answers as they stand.</summary>
    public static SetUpAnswers From(SetUpState state) => new()
    {
        Name = state.Name,
        MassUnit = state.Unit,
        Bar = KitDefaults.Bars(state.Unit)[state.Choices.Bar],
        Plates = state.Choices.Plates,
        OtherKit = [.. KitOption.All.Select(option => option.Word).Where(state.OtherKit.Contains)],
        StackStep = state.OtherKit.Contains(KitOption.CableStack)
            ? KitOption.StackSteps(state.Unit)[state.Choices.StackStep]
            : null,
        TrainingDays = [.. state.Days],
        CautionsRead = !state.Yes.IsEmpty,
        AvoidInverted = Screening.AvoidInverted(state.Yes),
    };

    /// <summary>The gym's kit: what was answered, and for what was not asked the default kit of the unit.</summary>
    public GymKit ToKit()
    {
        var usual = KitDefaults.For(MassUnit);
        var notAsked = usual.Equipment.Except(KitOption.All.Select(option => option.Word));
        return usual with
        {
            Bars = [Bar],
            Plates = [.. Plates.Where(p => p.Pairs > 0)],
            Dumbbells = OtherKit.Contains(KitOption.Dumbbells) ? usual.Dumbbells : [],
            Stack = StackStep is { } step ? KitOption.Stack(step) : [],
            Equipment = notAsked.Concat(OtherKit).ToHashSet(),
        };
    }
}
