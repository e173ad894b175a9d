using NodaTime;
using RackSide.Training.History;

namespace RackSide.Training.Planning;

/// <summary>
/// The rest between the last warm-up set and the first working set: that of the working sets after a ramp of three sets or
/// more, at most a minute after a shorter one, none where there is no ramp. Common practice, no source.
/// </summary>
public static class RampRest
{
    private const int LongRamp = 3;

    private static readonly Duration AfterShortRamp = Duration.FromSeconds(60);

    /// <summary>The rest.</summary>
    public static Duration Of(Prescription asked) => After(asked, asked.Ramp.Count);

    /// <summary>The rest after so many warm-up sets, those of a search among them.</summary>
    public static Duration After(Prescription asked, int sets) => sets switch
    {
        0 => Duration.Zero,
        >= LongRamp => asked.Rest,
        _ => Duration.Min(AfterShortRamp, asked.Rest),
    };
}
