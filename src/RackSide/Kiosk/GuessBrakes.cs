using RackSide.Pages.Lifters;
using RackSide.Training.History;

namespace RackSide.Kiosk;

/// <summary>
/// How far the guessing of each lifter's PIN is slowed. Kept while the program runs, so that going away and coming back
/// does not let go of it; pulling the plug does.
/// </summary>
internal sealed class GuessBrakes
{
    private readonly Dictionary<string, GuessBrake> brakes = [];

    /// <summary>The page that asks a lifter for the PIN.</summary>
    public PinConversation Ask(Lifter lifter) =>
        new(lifter.Name, pin => PinProof.Matches(lifter.Pin!, pin), brakes.GetValueOrDefault(lifter.Key));

    /// <summary>Takes over what came of asking.</summary>
    public void Keep(Lifter lifter, PinConversation asked) => brakes[lifter.Key] = asked.Brake;
}
