using System.Globalization;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Plans;
using RackSide.Training.Schedule;

namespace RackSide.Training.Progression;

/// <summary>
/// A motion that was told sore: lighter the next time, by ten per cent or what the plan's rule asks for where that is
/// lighter still, and so until a session of it was done with honest form. Common practice, no source. It is no treatment:
/// the words send a lifter whose pain stays to a clinician.
/// </summary>
public static class Sparing
{
    /// <summary>The caution that goes with every set of a sore motion.</summary>
    public const string Caution = "stop if it hurts; if it stays, see a clinician";

    private const int Percent = 10;

    private const int HoldStepSeconds = 5;

    /// <summary>The decision, made easier where the motion is told sore.</summary>
    internal static Decision Of(Footing f, Decision decision) => f.Meanwhile.Sore is not { } sore ? decision : new(
        Load(f, decision),
        Targets(f, decision),
        new Reason(Reasons.Sore, Line(f, sore, Load(f, decision))) { Inputs = [new("percent", Percent, "%")], Advice = Caution });

    /// <summary>A decision that is light already, with the caution where the motion is told sore; a sore motion searches for nothing heavier.</summary>
    internal static Decision Cautioned(Decision decision, Meanwhile? meanwhile) =>
        meanwhile?.Sore is null ? decision : decision with { Why = decision.Why.Advise(Caution), Search = null };

    private static Mass? Load(Footing f, Decision decision) => f.Load is not { } from ? decision.Load
        : Easier(f, decision.Load, f.Meanwhile.SparedBefore ? from : f.Moves!.Easier(from, Percent));

    private static Mass? Easier(Footing f, Mass? a, Mass? b) => LoadUsed.IsHarder(a, b, f.Exercise) ? b : a;

    /// <summary>No more reps than the bottom of the scheme; what has no load to take off is shorter instead.</summary>
    private static IReadOnlyList<int> Targets(Footing f, Decision decision) => f.Slot.Scheme switch
    {
        Scheme.Hold or Scheme.Accumulate => Reps.Each(f.Slot.Scheme, f.Asked * (100 - Percent) / 100 / HoldStepSeconds * HoldStepSeconds),
        Scheme.Total => [Math.Max(1, Math.Min(f.Asked, decision.Targets[0]) * (100 - Percent) / 100)],
        _ => Reps.Each(f.Slot.Scheme, Reps.Low(f.Slot.Scheme)),
    };

    private static string Line(Footing f, SoreTold sore, Mass? load)
    {
        var told = string.Create(CultureInfo.InvariantCulture, $"{sore.Motion.Name()} told sore on {sore.On.Short()}");
        return (f.Load, load) switch
        {
            _ when f.Meanwhile.SparedBefore => $"{told}: no heavier until a session is honest",
            ({ } from, { } to) when to != from => $"{told}: lighter, {Named(to, f.Exercise)}",
            _ => $"{told}: go easy, and no more than asked",
        };
    }

    private static string Named(Mass load, Exercise exercise) =>
        exercise.LoadType == LoadType.Assisted ? $"{load} of help" : load.ToString();
}
