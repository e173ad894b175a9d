namespace RackSide.Logbook.Tests.Harness;

/// <summary>What becomes of calls that were not synced when the power went.</summary>
/// <param name="Kind">Kept, dropped, a subset of them, or a subset torn into blocks.</param>
/// <param name="Block">The size of a block, in bytes.</param>
/// <param name="Chance">Decides each; seeded.</param>
internal sealed record Loss(LossKind Kind, int Block, Random Chance)
{
    public IEnumerable<Call> Prefix(IReadOnlyList<Call> names) => Kind switch
    {
        LossKind.Kept => names,
        LossKind.Dropped => [],
        _ => names.Take(Chance.Next(names.Count + 1)),
    };

    public IEnumerable<Call> Survivors(IReadOnlyList<Call> calls) => Kind switch
    {
        LossKind.Kept => calls,
        LossKind.Dropped => [],
        LossKind.Subset => calls.Where(_ => Heads()),
        _ => calls.Where(_ => Heads()).SelectMany(c => c is Call.Wrote wrote ? Tear(wrote) : [c]),
    };

    private IEnumerable<Call> Tear(Call.Wrote wrote)
    {
        var end = wrote.At + wrote.Bytes.Length;
        for (var at = wrote.At; at < end;)
        {
            var next = Math.Min((at / Block + 1) * Block, end);
            if (Heads())
            {
                yield return wrote with { At = at, Bytes = wrote.Bytes[(int)(at - wrote.At)..(int)(next - wrote.At)] };
            }

            at = next;
        }
    }

    private bool Heads() => Chance.Next(2) == 0;
}

internal enum LossKind
{
    Kept,
    Dropped,
    Subset,
    Torn,
}
