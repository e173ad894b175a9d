using RackSide.Training.Kit;

namespace RackSide.Files;

/// <summary>
/// Writes a changed kit into the text that a person keeps: only the lines of what changed are touched, and comments, blank
/// lines, order and everything else stay as they are. What comes out is read again before anybody keeps it.
/// </summary>
internal static class GymEdit
{
    /// <summary>The text with the changes from one kit to another.</summary>
    /// <param name="text">The file as it is now; it may have been changed by hand meanwhile.</param>
    /// <param name="before">The kit as the screen began with it.</param>
    /// <param name="after">The kit as it is to be.</param>
    /// <param name="fileName">The name that mistakes are told under.</param>
    /// <returns>The new text; or, where the file cannot be read or would no longer say what is meant, why not.</returns>
    public static Reading<string> Apply(string text, GymKit before, GymKit after, string fileName)
    {
        var reading = GymFile.Read(text, fileName);
        if (reading.Value is not { } now)
        {
            return new(null, reading.Mistakes);
        }

        var changed = KitField.All.Where(f => !f.IsSame(before, after)).ToList();
        var meant = GymFile.Write(now with { Kit = Implied(changed.Aggregate(now.Kit, (kit, field) => field.Take(kit, after))) });
        foreach (var careful in new[] { true, false })
        {
            var lines = changed.Aggregate(new FileLines(text), (file, field) => Changed(file, field, now.Kit, after, careful));
            if (GymFile.Read(lines.Text, fileName).Value is { } read && GymFile.Write(read) == meant)
            {
                return new(lines.Text, []);
            }
        }

        return new(null, [new Mistake(fileName, 0, "", "is written in a way that the screen cannot change", "change it in an editor; docs/kit.md says how")]);
    }

    /// <summary>The kit with the words that follow from what it has, as the reader would add them.</summary>
    public static GymKit Implied(GymKit kit) => kit with
    {
        Equipment = new HashSet<string>(
        [
            .. kit.Equipment.Where(w => !EquipmentReader.IsImplied(w)),
            .. EquipmentReader.Implied(kit.Plates, kit.Dumbbells, kit.Handles, kit.Stack, kit.Machines, kit.Bands),
        ]),
    };

    private static FileLines Changed(FileLines file, KitField field, GymKit now, GymKit after, bool careful)
    {
        var block = file.Block(field.Name);
        if (block is null)
        {
            return field.Whole(after) is [var line] && line.EndsWith("[]", StringComparison.Ordinal) ? file : file.Append(["", .. field.Whole(after)]);
        }

        return careful && field.Entries is { } entries && file.Entries(block) is { Count: > 0 } old && old.Count == entries(now).Count && entries(after).Count > 0
            ? file.Replace(block, [file.Lines[block.First], .. Merged(file, block, old, entries(now), entries(after))])
            : file.Replace(block, WithComment(file.Lines[block.First], field.Whole(after)));
    }

    /// <summary>
    /// Each entry from its old lines where it had some, in the order they are to have; where the reader sorts what the file
    /// has in another order, in that of the file.
    /// </summary>
    private static IEnumerable<string> Merged(FileLines file, LineSpan block, IReadOnlyList<LineSpan> old, IReadOnlyList<KitEntry> now, IReadOnlyList<KitEntry> after)
    {
        var places = old.Select(span => (Span: span, Key: EntryKeys.Of(file.Lines[span.First]))).ToList();
        var left = places.ToList();
        var (indent, kept) = (file.Indent(old[0]), new List<(int Order, IEnumerable<string> Lines)>());
        var (last, asRead) = (0, places.Select(p => p.Key).SequenceEqual(now.Select(e => e.Key)));
        foreach (var entry in after)
        {
            var found = left.FindIndex(p => p.Key == entry.Key);
            if (found >= 0)
            {
                var at = places.IndexOf(left[found]);
                kept.Add((at, EntryLines.Merge([.. file.Lines.Skip(left[found].Span.First).Take(left[found].Span.Count)], entry.Lines, indent)));
                last = at;
                left.RemoveAt(found);
            }
            else
            {
                kept.Add((last, EntryLines.Indented(entry.Lines, indent)));
            }
        }

        var between = file.Lines.Skip(block.First + 1).Take(old[0].First - block.First - 1);
        return [.. between, .. kept.OrderBy(k => asRead ? 0 : k.Order).SelectMany(k => k.Lines)];
    }

    private static IReadOnlyList<string> WithComment(string old, IReadOnlyList<string> lines) =>
        EntryLines.CommentOf(old) is { Length: > 0 } comment ? [$"{lines[0]}  {comment}", .. lines.Skip(1)] : lines;
}
