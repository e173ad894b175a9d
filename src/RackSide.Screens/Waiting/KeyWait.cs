using System.Runtime.InteropServices;

namespace RackSide.Screens.Waiting;

/// <summary>Sleeps in the kernel until the terminal has something to read, or until somebody ends the wait.</summary>
/// <remarks>
/// The library's own readers ask fifty times a second whether a key is there. Nothing in .NET waits for a terminal without
/// reading from it, hence poll(2); the pipe is what another thread ends the wait with.
/// </remarks>
internal sealed partial class KeyWait : IDisposable
{
    private const int Input = 0;
    private const short Readable = 1;
    private static readonly TimeSpan Breath = TimeSpan.FromMilliseconds(20);
    private readonly int[] pipe = new int[2];
    private readonly CancellationTokenRegistration ending;

    /// <summary>A wait that ends for good when the token is cancelled.</summary>
    /// <exception cref="IOException">The system has no pipe left.</exception>
    public KeyWait(CancellationToken token)
    {
        if (OpenPipe(pipe) != 0)
        {
            throw new IOException("no pipe to wait with");
        }

        ending = token.Register(() => Write(pipe[1], [0], 1));
    }

    /// <summary>Returns when there may be something to read.</summary>
    public void ForKeys(CancellationToken token)
    {
        Span<PollEntry> entries = [new(Input, Readable), new(pipe[0], Readable)];
        var found = Poll(entries, (uint)entries.Length, Timeout.Infinite);
        if (found > 0 && entries[0].Found is not 0 and not Readable)
        {
            // The terminal is gone: poll answers at once from here on, and only a signal ends the program.
            token.WaitHandle.WaitOne(Breath);
        }
    }

    /// <summary>Gives the pipe back.</summary>
    public void Dispose()
    {
        ending.Dispose();
        _ = Close(pipe[0]);
        _ = Close(pipe[1]);
    }

    [StructLayout(LayoutKind.Sequential)]
    private readonly struct PollEntry(int descriptor, short wanted)
    {
        public readonly int Descriptor = descriptor;
        public readonly short Wanted = wanted;
        public readonly short Found;
    }

    [LibraryImport("libc", EntryPoint = "poll")]
    private static partial int Poll(Span<PollEntry> entries, uint count, int milliseconds);

    [LibraryImport("libc", EntryPoint = "pipe")]
    private static partial int OpenPipe([Out] int[] ends);

    [LibraryImport("libc", EntryPoint = "write")]
    private static partial nint Write(int descriptor, ReadOnlySpan<byte> bytes, nint count);

    [LibraryImport("libc", EntryPoint = "close")]
    private static partial int Close(int descriptor);
}
