using NodaTime;
using RackSide.Training.History;

namespace RackSide.Training.Sessions;

/// <summary>ENTER on a set: doubts are put in words once, and the same key again settles them.</summary>
internal static class SetAccepting
{
    /// <summary>A set accepted sooner than this after its screen appeared was hardly lifted.</summary>
    public static Duration TooSoon { get; } = Duration.FromSeconds(5);

    /// <summary>What is said to ENTER in the dead time.</summary>
    public const string JustTurned = "the screen just turned; press again";

    private const int ManyReps = 30;

    public static Turn Accept(Session s, Lifting p)
    {
        if (p.Rested is not null && s.Now - p.Since < SessionSteps.DeadTime)
        {
            return ((Turn)s).Say(JustTurned, Duration.FromSeconds(2));
        }

        return p.Doubt is null && Doubt(s, p) is { } doubt
            ? s with { Phase = p with { Doubt = doubt } }
            : Write(s, p);
    }

    private static string? Doubt(Session s, Lifting p)
    {
        var (load, asked) = (SetInHand.Load(s, p), SetInHand.AskedLoad(s));
        return load is { } l && SetInHand.Loads(s) is { } loads && !loads.Has(l) ? NotLoadable(s, loads, l)
            : load is { } a && asked is { Amount: > 0 } b && Math.Abs(a.Amount - b.Amount) > b.Amount / 5 ? $"{a} is far from {b}"
            : SetInHand.Reps(s, p) > ManyReps ? $"{SetInHand.Reps(s, p)} reps are many"
            : s.Now - p.Since < TooSoon ? "that was quick"
            : null;
    }

    /// <summary>On a bar it is told which pair is missing.</summary>
    private static string NotLoadable(Session s, Loading.ReachableLoads loads, Measures.Mass load)
    {
        var exercise = s.Setting.Catalogue[((SlotItem)s.Place.Current!).Asked.Exercise];
        return exercise.LoadType == Exercises.LoadType.Barbell
            ? s.Setting.Loads.Explain(load, exercise).Text
            : $"not loadable: {load}; {Near(loads, load)}";
    }

    private static string Near(Loading.ReachableLoads loads, Measures.Mass load)
    {
        var (below, above) = (loads.Below(load), loads.Above(load));
        return (below, above) switch
        {
            ({ } b, { } a) => $"{b.Number} or {a}",
            ({ } b, null) => $"{b} at most",
            (null, { } a) => $"{a} at least",
            _ => "nothing is",
        };
    }

    private static Turn Write(Session s, Lifting p)
    {
        var item = (SlotItem)s.Place.Current!;
        var (reps, load) = (SetInHand.Reps(s, p), SetInHand.Load(s, p));
        return item switch
        {
            SetItem set => After(set, ((Turn)s).Keep((id, at) =>
                new SetDone(id, at, set.Slot, set.Asked.Exercise, set.Kind, set.Number, set.Target, reps, load))),
            TotalItem total => After(total, ((Turn)s).Keep((id, at) => new SetDone(
                id, at, total.Slot, total.Asked.Exercise, SetKind.Share, s.Place.Work(total.Slot).Count() + 1, SetInHand.Asked(s), reps, null))),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    /// <summary>The rest begins with the set's own instant, not with its writing.</summary>
    internal static Turn After(SlotItem done, Turn turn)
    {
        var s = turn.Session;
        var set = (SetDone)s.Facts[^1];
        var length = Rests.Between(done, s.Place.Current);
        var next = length > Duration.Zero
            ? turn.Enter(new Resting(s.Now, RestClock.Start(s.Now, length), set.Id))
            : turn.Proceed();
        return Outlook.AfterSet(s, set) is { } line ? next.Say(line, Turn.AnswerStays) : next with { Session = next.Session with { Notice = null } };
    }
}
