using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Progression;

namespace RackSide.Training.Sessions;

/// <summary>The motion in hand is told sore: it is spared from the next session on, and today only as the lifter decides.</summary>
internal static class SoreTelling
{
    public static Turn Tell(Session s, Choosing p, SlotItem item) => ((Turn)s)
        .Keep((id, at) => new SoreTold(id, at, s.Head.Date, item.Asked.Motion))
        .Enter(p.Under)
        .Say($"{item.Asked.Motion.Name()} told sore: lighter next time; {Sparing.Caution}", Turn.AnswerStays);
}
