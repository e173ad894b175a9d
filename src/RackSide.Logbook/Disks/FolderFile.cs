namespace RackSide.Logbook.Disks;

/// <summary>An open file of a <see cref="FolderDisk"/>. It works on the handle, so that no buffer of the stream stands between.</summary>
internal sealed class FolderFile(FileStream stream) : IDiskFile
{
    /// <inheritdoc/>
    public long Length => RandomAccess.GetLength(stream.SafeFileHandle);

    /// <inheritdoc/>
    public int Read(Span<byte> buffer, long at) => RandomAccess.Read(stream.SafeFileHandle, buffer, at);

    /// <inheritdoc/>
    public void Write(ReadOnlySpan<byte> bytes, long at) => RandomAccess.Write(stream.SafeFileHandle, bytes, at);

    /// <inheritdoc/>
    public void SetLength(long length) => RandomAccess.SetLength(stream.SafeFileHandle, length);

    /// <inheritdoc/>
    public void Sync() => RandomAccess.FlushToDisk(stream.SafeFileHandle);

    /// <inheritdoc/>
    public void Dispose() => stream.Dispose();
}
