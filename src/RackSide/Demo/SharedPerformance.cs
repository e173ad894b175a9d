using RackSide.Training.Sessions;

namespace RackSide.Demo;

/// <summary>Two lifters perform their sessions on one bar by the keys they would press, each in turn.</summary>
internal static class SharedPerformance
{
    /// <summary>Performs both to their ends.</summary>
    /// <param name="begun">As they begin.</param>
    /// <param name="performers">Who performs the first and the second.</param>
    public static TwoOnOneBar Of(TwoOnOneBar begun, IReadOnlyList<Performer> performers)
    {
        var both = begun;
        while (both.Both.Any(s => s.Phase is not Ended))
        {
            var turn = both.Turn;
            performers[turn].Act(both.InTurn, e => (both = BarSteps.Step(both, e).Both).Both[turn]);
        }

        return both;
    }
}
