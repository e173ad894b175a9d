using NodaTime;

namespace RackSide.Training.Sessions;

/// <summary>What ENTER would write of a running hold.</summary>
public static class HoldInHand
{
    /// <summary>The seconds asked for.</summary>
    public static int Target(Session s) => ((HoldItem)s.Place.Current!).Target;

    /// <summary>Time held so far; below zero during the lead-in; null while ready.</summary>
    public static Duration? Elapsed(Session s, Holding p) => p.Started is { } started ? s.Now - started - s.Setting.LeadIn : null;

    /// <summary>
    /// The seconds ENTER would write: from the target on, the target; before it, whole seconds less the time it took to
    /// reach the key. Null while ready or in the lead-in.
    /// </summary>
    public static int? Seconds(Session s, Holding p) => Elapsed(s, p) switch
    {
        null => null,
        { } past when past < Duration.Zero => null,
        { } past when past >= Duration.FromSeconds(Target(s)) => Target(s),
        { } past => Math.Max(0, (int)Math.Floor((past - s.Setting.Reach).TotalSeconds)),
    };
}
