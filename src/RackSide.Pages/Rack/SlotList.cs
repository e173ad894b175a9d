using RackSide.Training.History;
using RackSide.Training.Plans;
using RackSide.Training.Sessions;

namespace RackSide.Pages.Rack;

/// <summary>The day's slots down the left side: what is done, what is in hand, what comes.</summary>
internal static class SlotList
{
    /// <summary>The column of the line right of the list.</summary>
    public const int Width = 22;

    /// <summary>Draws it from a row down to the key bar.</summary>
    public static void Draw(Canvas canvas, Session s, int top)
    {
        var (place, row) = (s.Place, top);
        var prescriptions = s.Place.Prescriptions;
        var gap = Frame.Bottom(canvas.Size) - row >= (2 * prescriptions.Count) ? 2 : 1;
        foreach (var asked in prescriptions.TakeWhile(_ => row < Frame.Bottom(canvas.Size)))
        {
            DrawSlot(canvas, row, s, place, asked);
            row += gap;
        }

        for (var line = top; line < Frame.Bottom(canvas.Size); line++)
        {
            canvas.Set(Width, line, '│');
        }
    }

    private static void DrawSlot(Canvas canvas, int row, Session s, Place place, Prescription asked)
    {
        var inHand = place.Current is SlotItem current && current.Slot == asked.Slot;
        var look = inHand ? Look.Bold : Look.Plain;
        var name = s.Setting.Catalogue[asked.Exercise].ShortName.ToLowerInvariant();
        canvas.Write(0, row, (inHand ? "> " : "  ") + Frame.Fit(name, 14), look);
        canvas.WriteRight(Width - 1, row, State(place, asked), look);
    }

    private static string Asked(Prescription asked) => asked.Scheme switch
    {
        Scheme.Hold => $"{asked.Targets.Count}x{asked.Targets[0]}s",
        Scheme.Tick or Scheme.Total => "",
        Scheme.Accumulate => $"{asked.Targets[0]}s",
        _ => $"{asked.Targets.Count}x{asked.Targets[0]}",
    };

    private static string State(Place place, Prescription asked)
    {
        var items = place.Agenda.OfType<SlotItem>().Where(i => i.Slot == asked.Slot && i is not (RampItem or AskItem)).ToList();
        var done = place.Work(asked.Slot).Count();
        return place.LeftOut.Contains(asked.Slot) ? "left out"
            : items.All(place.IsPast) ? "done"
            : items is [AccumulateItem time] ? $"{place.Held(asked.Slot)}/{time.Total}s"
            : items is [TotalItem total] ? $"{place.Counted(asked.Slot)}/{total.Total}"
            : done > 0 ? $"{done}/{items.Count}"
            : Asked(asked);
    }
}
