using RackSide.Training.Exercises;

namespace RackSide.Training.Sessions;

/// <summary>The rung of the ladder that the item in hand stands on.</summary>
public static class Rungs
{
    /// <summary>The rung; null where the item in hand is on none.</summary>
    public static Rung? InHand(Session s) => s.Place.Current is SlotItem item
        ? s.Setting.Day.Slots.FirstOrDefault(x => x.Key == item.Slot)?.Ladder?.RungOf(item.Asked.Exercise)
        : null;
}
