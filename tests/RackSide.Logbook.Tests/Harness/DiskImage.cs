namespace RackSide.Logbook.Tests.Harness;

/// <summary>A file's bytes.</summary>
internal sealed class DiskImage
{
    private readonly MemoryStream bytes = new();

    public long Length => bytes.Length;

    public byte[] Bytes => bytes.ToArray();

    public void Resize(long length) => bytes.SetLength(length);

    public void Write(ReadOnlySpan<byte> what, long at)
    {
        bytes.Position = at;
        bytes.Write(what);
    }

    public int Read(Span<byte> buffer, long at)
    {
        bytes.Position = at;
        return bytes.Read(buffer);
    }
}
