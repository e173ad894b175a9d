using System.Net;
using System.Net.Sockets;

namespace RackSide.Tests.Racks;

/// <summary>Stands between a rack and the server on loopback, and cuts a connection after so many bytes towards the server or back.</summary>
internal sealed class CuttingProxy : IDisposable
{
    private readonly TcpListener listener = new(IPAddress.Loopback, 0);
    private readonly int server;
    private readonly CancellationTokenSource stop = new();
    private int cuts;

    /// <summary>Listens.</summary>
    public CuttingProxy(int server)
    {
        this.server = server;
        listener.Start();
        _ = Accept();
    }

    /// <summary>Where it listens.</summary>
    public int Port => ((IPEndPoint)listener.LocalEndpoint).Port;

    /// <summary>How many bytes a connection may send, and get back, before it is cut; null lets all through.</summary>
    public (int Sent, int Answered)? CutAfter { get; set; }

    /// <summary>How many connections were cut.</summary>
    public int Cuts => cuts;

    /// <inheritdoc/>
    public void Dispose()
    {
        stop.Cancel();
        listener.Dispose();
    }

    private async Task Accept()
    {
        try
        {
            while (true)
            {
                _ = Serve(await listener.AcceptTcpClientAsync(stop.Token));
            }
        }
        catch (Exception e) when (e is OperationCanceledException or SocketException or ObjectDisposedException)
        {
            // The test is over.
        }
    }

    private async Task Serve(TcpClient rack)
    {
        using (rack)
        using (var to = new TcpClient())
        {
            await to.ConnectAsync(IPAddress.Loopback, server, stop.Token);
            var limit = CutAfter;
            var cut = await await Task.WhenAny(Pump(rack, to, limit?.Sent), Pump(to, rack, limit?.Answered));
            Interlocked.Add(ref cuts, cut ? 1 : 0);
        }
    }

    private async Task<bool> Pump(TcpClient from, TcpClient to, int? limit)
    {
        var buffer = new byte[4096];
        try
        {
            for (var left = limit ?? int.MaxValue; left > 0;)
            {
                var read = await from.GetStream().ReadAsync(buffer.AsMemory(0, Math.Min(buffer.Length, left)), stop.Token);
                if (read == 0)
                {
                    return false;
                }

                await to.GetStream().WriteAsync(buffer.AsMemory(0, read), stop.Token);
                left -= limit is null ? 0 : read;
            }

            return true;
        }
        catch (Exception e) when (e is IOException or SocketException or OperationCanceledException or ObjectDisposedException)
        {
            return false;
        }
    }
}
