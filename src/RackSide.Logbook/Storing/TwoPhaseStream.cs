using RackSide.Logbook.Disks;

namespace RackSide.Logbook.Storing;

/// <summary>
/// The stream the engine writes one of its files through. The engine syncs nothing on a commit: it appends pages of
/// 8,192 bytes to its write-ahead log and marks the last of a transaction by a 1 at byte 18. Here that page goes down
/// with a 0 there, all is synced, and one byte then confirms it, so that no loss, tear or reordering of what was not yet
/// synced can leave half a transaction confirmed. The layout is that of the pinned version; a test holds it fast.
/// </summary>
internal sealed class TwoPhaseStream(IDiskFile file, bool writeAhead) : Stream
{
    /// <summary>The engine's page, in bytes.</summary>
    public const int Page = 8192;

    /// <summary>Where a page of the write-ahead log says that its transaction is complete.</summary>
    public const int Confirmed = 18;

    private long position;

    /// <summary>
    /// Whether writes reach the file; at first they do not. The engine cuts files to whole pages and marks damaged ones
    /// before anyone could have put them aside, and a file that failed must not be touched while the engine is let go of.
    /// </summary>
    public bool Writable { get; set; }

    /// <inheritdoc/>
    public override bool CanRead => true;

    /// <inheritdoc/>
    public override bool CanWrite => true;

    /// <inheritdoc/>
    public override bool CanSeek => true;

    /// <inheritdoc/>
    public override long Length => file.Length;

    /// <inheritdoc/>
    public override long Position { get => position; set => position = value; }

    /// <inheritdoc/>
    public override int Read(byte[] buffer, int offset, int count)
    {
        var read = file.Read(buffer.AsSpan(offset, count), position);
        position += read;
        return read;
    }

    /// <inheritdoc/>
    public override void Write(byte[] buffer, int offset, int count)
    {
        var bytes = buffer.AsSpan(offset, count);
        if (Writable && writeAhead && count == Page && bytes[Confirmed] != 0)
        {
            WriteThenConfirm(bytes.ToArray());
        }
        else if (Writable)
        {
            file.Write(bytes, position);
        }

        position += count;
    }

    /// <inheritdoc/>
    public override void Flush()
    {
        if (Writable)
        {
            file.Sync();
        }
    }

    /// <inheritdoc/>
    public override void SetLength(long value)
    {
        if (Writable)
        {
            file.SetLength(value);
            file.Sync();
        }
    }

    /// <inheritdoc/>
    public override long Seek(long offset, SeekOrigin origin) => position = origin switch
    {
        SeekOrigin.Begin => offset,
        SeekOrigin.Current => position + offset,
        _ => Length + offset,
    };

    private void WriteThenConfirm(byte[] page)
    {
        var mark = page[Confirmed];
        page[Confirmed] = 0;
        file.Write(page, position);
        file.Sync();
        file.Write([mark], position + Confirmed);
        file.Sync();
    }
}
