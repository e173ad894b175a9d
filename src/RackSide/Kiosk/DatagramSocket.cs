using System.Buffers.Binary;
using System.Runtime.InteropServices;
using System.Text;

namespace RackSide.Kiosk;

/// <summary>A local datagram socket (unix(7)) that only sends, and waits for nobody.</summary>
/// <remarks>Four calls of the C library. The runtime's sockets are ready for the whole of the internet: 0.2 MB of the native program.</remarks>
internal sealed partial class DatagramSocket : IDisposable
{
    // The same on all of Linux's machines that we publish for: sys/socket.h.
    private const int UnixFamily = 1, Datagram = 2, CloseOnExec = 0x80000, DoNotWait = 0x40, NoSignal = 0x4000;

    // sun_path of sockaddr_un.
    private const int LongestName = 108;

    private readonly int handle;

    private DatagramSocket(int handle) => this.handle = handle;

    /// <summary>A socket whose datagrams go to another; null where nobody listens there.</summary>
    /// <param name="name">The other's path. An <c>@</c> at the front stands for the NUL of Linux's abstract names.</param>
    public static DatagramSocket? ConnectedTo(string name)
    {
        if (Address(name) is not { } address || Socket(UnixFamily, Datagram | CloseOnExec, 0) is not (>= 0 and var handle))
        {
            return null;
        }

        var socket = new DatagramSocket(handle);
        if (Connect(handle, address, (uint)address.Length) == 0)
        {
            return socket;
        }

        socket.Dispose();
        return null;
    }

    /// <summary>Sends one datagram; where it cannot go at once it is lost.</summary>
    public void Send(ReadOnlySpan<byte> datagram) => _ = Send(handle, datagram, (nuint)datagram.Length, DoNotWait | NoSignal);

    /// <inheritdoc/>
    public void Dispose() => _ = Close(handle);

    // sockaddr_un without a NUL at the end, which unix(7) allows: the length says where the name ends.
    private static byte[]? Address(string name)
    {
        var path = Encoding.UTF8.GetBytes(name[0] == '@' ? '\0' + name[1..] : name);
        if (path.Length > LongestName)
        {
            return null;
        }

        var address = new byte[sizeof(ushort) + path.Length];
        BinaryPrimitives.WriteUInt16LittleEndian(address, UnixFamily);
        path.CopyTo(address, sizeof(ushort));
        return address;
    }

    [LibraryImport("libc", EntryPoint = "socket")]
    private static partial int Socket(int family, int kind, int protocol);

    [LibraryImport("libc", EntryPoint = "connect")]
    private static partial int Connect(int socket, ReadOnlySpan<byte> address, uint length);

    [LibraryImport("libc", EntryPoint = "send")]
    private static partial nint Send(int socket, ReadOnlySpan<byte> datagram, nuint length, int flags);

    [LibraryImport("libc", EntryPoint = "close")]
    private static partial int Close(int handle);
}
