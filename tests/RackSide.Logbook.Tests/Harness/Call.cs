namespace RackSide.Logbook.Tests.Harness;

/// <summary>A call that changes a disk.</summary>
internal abstract record Call
{
    /// <summary>The file it changes; -1 for none.</summary>
    public virtual int Of => -1;

    public sealed record Wrote(int Node, long At, byte[] Bytes) : Call
    {
        public override int Of => Node;
    }

    public sealed record Resized(int Node, long Length) : Call
    {
        public override int Of => Node;
    }

    public sealed record Synced(int Node) : Call
    {
        public override int Of => Node;
    }

    public sealed record Named(string Name, int Node) : Call;

    public sealed record Renamed(string From, string To) : Call;

    public sealed record Deleted(string Name) : Call;

    public sealed record NamesSynced : Call;
}
