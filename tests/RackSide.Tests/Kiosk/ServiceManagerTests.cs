using System.Net.Sockets;
using System.Text;
using RackSide.Kiosk;
using RackSide.Tests.Commands;

namespace RackSide.Tests.Kiosk;

/// <summary>sd_notify(3): one datagram of assignments to the socket that NOTIFY_SOCKET names; WATCHDOG_USEC is in microseconds.</summary>
public sealed class ServiceManagerTests : IDisposable
{
    private readonly PassingFolder folder = new();
    private readonly Stopped time = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void The_first_tick_says_that_the_screen_is_up_and_later_ones_that_it_is_alive(bool isAbstract)
    {
        var name = isAbstract ? "@rackside-test-" + Path.GetFileName(folder.Path) : Path.Combine(folder.Path, "notify");
        using var systemd = Listen(name);
        using (var manager = new ServiceManager(Environment(name), time))
        {
            Heard(systemd).Should().BeNull();
            manager.Ticked();
            Heard(systemd).Should().StartWith("READY=1\n");
            time.Advance(TimeSpan.FromSeconds(7));
            manager.Ticked();
            Heard(systemd).Should().BeNull("a quarter of the patience has not passed");
            time.Advance(TimeSpan.FromSeconds(1));
            manager.Ticked();
            Heard(systemd).Should().Be("WATCHDOG=1");
            manager.Ticked();
            Heard(systemd).Should().BeNull();
        }

        Heard(systemd).Should().Be("STOPPING=1");
    }

    [Fact]
    public void Where_nobody_listens_nothing_happens()
    {
        using var none = new ServiceManager(_ => null, time);
        none.Ticked();
        using var gone = new ServiceManager(Environment(Path.Combine(folder.Path, "nobody")), time);
        gone.Ticked();
        time.Advance(TimeSpan.FromMinutes(1));
        gone.Ticked();
    }

    private static Func<string, string?> Environment(string socket) => name => name switch
    {
        "NOTIFY_SOCKET" => socket,
        "WATCHDOG_USEC" => "30000000",
        _ => null,
    };

    private static Socket Listen(string name)
    {
        var socket = new Socket(AddressFamily.Unix, SocketType.Dgram, ProtocolType.Unspecified);
        socket.Bind(new UnixDomainSocketEndPoint(name[0] == '@' ? '\0' + name[1..] : name));
        return socket;
    }

    /// <summary>Time that passes only when it is told to.</summary>
    private sealed class Stopped : TimeProvider
    {
        private long now;

        public override long TimestampFrequency => TimeSpan.TicksPerSecond;

        public override long GetTimestamp() => now;

        public void Advance(TimeSpan by) => now += by.Ticks;
    }

    private static string? Heard(Socket systemd)
    {
        var bytes = new byte[200];
        return systemd.Available == 0 ? null : Encoding.UTF8.GetString(bytes, 0, systemd.Receive(bytes));
    }
}
