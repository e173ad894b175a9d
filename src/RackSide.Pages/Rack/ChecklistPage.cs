using RackSide.Training.Sessions;

namespace RackSide.Pages.Rack;

/// <summary>Things to confirm or to do and tick: what can hurt comes first, and what is not done stays visibly not done.</summary>
internal static class ChecklistPage
{
    public static void Draw(Canvas canvas, Session s)
    {
        var place = s.Place;
        var current = place.Current!;
        var checks = current is ConfirmItem;
        SessionPages.Header(canvas, s, checks ? "BEFORE THE FIRST SET" : "CHECKLIST");
        var (size, margin, row) = (canvas.Size, canvas.Size.Compact ? 0 : 2, Frame.Top(canvas.Size));
        if (!size.Compact)
        {
            canvas.Write(margin, row, checks ? "BEFORE THE FIRST SET: look, then press" : "CHECKLIST", Look.Bold);
            row += 2;
        }

        var items = place.Agenda.Where(i => checks ? i is ConfirmItem : i is SlotItem).DistinctBy(KeyOf).ToList();
        var from = Math.Max(0, items.FindIndex(i => KeyOf(i) == KeyOf(current)) - 2);
        foreach (var item in items.Skip(from).TakeWhile(_ => row < Frame.Bottom(size) - 2))
        {
            var now = KeyOf(item) == KeyOf(current);
            canvas.Write(margin, row, $"{Mark(place, item, items, current)} {(now ? ">" : " ")} {Frame.Fit(Text(s, item, size), size.Columns - margin - 6)}", now ? Look.Bold : Look.Plain);
            if (now)
            {
                canvas.Cursor(margin, row);
            }

            row += size.Compact ? 1 : 2;
        }

        if (current is SlotItem slot && row < Frame.Bottom(size))
        {
            var cues = s.Setting.Catalogue[slot.Asked.Exercise].Cues;
            canvas.Write(margin, Math.Min(row, Frame.Bottom(size) - 2), Frame.Fit($"{cues.SetUp}; {cues.WayDown}", size.Columns - margin));
        }

        canvas.Write(margin, Frame.Bottom(size) - 1, Frame.Fit(SessionPages.Told(s) ?? "", size.Columns - margin));
        Frame.Keys(canvas, Hints(s, current));
    }

    private static string KeyOf(AgendaItem item) => item is SlotItem slot ? slot.Slot : item.Key;

    private static string Mark(Place place, AgendaItem item, List<AgendaItem> items, AgendaItem current) =>
        item is SlotItem slot && place.LeftOut.Contains(slot.Slot) ? "[-]"
        : items.IndexOf(item) < items.FindIndex(i => KeyOf(i) == KeyOf(current)) || place.IsPast(item) ? "[x]" : "[ ]";

    private static string Text(Session s, AgendaItem item, PageSize size) => item is SlotItem slot
        ? $"{Name(s, slot, size)} {(slot is TickItem ? Words.Asks(slot) : PlanLines.Sets(slot.Asked))}".TrimEnd()
        : Words.Name(s, item);

    private static string Name(Session s, SlotItem slot, PageSize size) => size.Compact
        ? s.Setting.Catalogue[slot.Asked.Exercise].ShortName.PadRight(15)
        : Words.Name(s, slot).PadRight(36);

    private static IReadOnlyList<KeyHint> Hints(Session s, AgendaItem current) =>
    [
        new(KeyTable.Pad(Verb.Accept), current is ConfirmItem ? "that is so" : "done: tick it"),
        current is ConfirmItem ? new(KeyTable.Pad(Verb.More), "all of them are") : new(KeyTable.Pad(Verb.Other), "leave it out"),
        Hint.Menu,
        Hint.Undo(s),
    ];
}
