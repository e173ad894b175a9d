using System.Globalization;
using System.Net.Sockets;
using System.Text;

namespace RackSide.Kiosk;

/// <summary>
/// Tells systemd that the screen is up, and goes on telling it that it is alive, from the screen's own tick: a screen that
/// hangs tells nothing and is started again. One datagram each, as sd_notify(3) lays down; without a socket named in the
/// environment nothing is told.
/// </summary>
internal sealed class ServiceManager : IDisposable
{
    private readonly TimeProvider time;
    private readonly Socket? socket;
    private readonly TimeSpan every;
    private long told;
    private bool up;

    /// <summary>Finds the socket by <c>NOTIFY_SOCKET</c> and the watchdog's patience by <c>WATCHDOG_USEC</c>.</summary>
    /// <param name="environment">Gives the value of a variable, or null.</param>
    /// <param name="time">Measures how long ago it was told.</param>
    public ServiceManager(Func<string, string?> environment, TimeProvider time)
    {
        this.time = time;
        every = Every(environment("WATCHDOG_USEC"));
        if (environment("NOTIFY_SOCKET") is { Length: > 1 } name)
        {
            socket = Connected(name);
        }
    }

    /// <summary>The screen ticked.</summary>
    public void Ticked()
    {
        if (!up)
        {
            up = true;
            told = time.GetTimestamp();
            Tell("READY=1\nSTATUS=The screen is up.");
        }
        else if (every > TimeSpan.Zero && time.GetElapsedTime(told) >= every)
        {
            told = time.GetTimestamp();
            Tell("WATCHDOG=1");
        }
    }

    /// <summary>Says that it ends.</summary>
    public void Dispose()
    {
        Tell("STOPPING=1");
        socket?.Dispose();
    }

    // Four times within the patience: twice is the least that is safe, and a tick may come late.
    private static TimeSpan Every(string? patience) =>
        long.TryParse(patience, NumberStyles.None, CultureInfo.InvariantCulture, out var microseconds)
            ? TimeSpan.FromMicroseconds(microseconds / 4)
            : TimeSpan.Zero;

    private static Socket? Connected(string name)
    {
        var socket = new Socket(AddressFamily.Unix, SocketType.Dgram, ProtocolType.Unspecified) { Blocking = false };
        try
        {
            // An @ at the front stands for the NUL of Linux's abstract names.
            socket.Connect(new UnixDomainSocketEndPoint(name[0] == '@' ? '\0' + name[1..] : name));
            return socket;
        }
        catch (SocketException)
        {
            socket.Dispose();
            return null;
        }
    }

    private void Tell(string state)
    {
        try
        {
            socket?.Send(Encoding.UTF8.GetBytes(state));
        }
        catch (SocketException)
        {
            // A manager that does not listen is no reason to stop training.
        }
    }
}
