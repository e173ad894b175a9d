using System.Globalization;
using NodaTime;
using RackSide.Pages;

namespace RackSide.Screens.Probe;

/// <summary>
/// A conversation that shows what arrives: how many keys, the last ones, how often it was drawn for another size; and that
/// does on a key what a program must survive.
/// </summary>
internal sealed class ProbeConversation(Instant began) : IConversation
{
    private readonly List<string> keys = [];
    private Instant? until;
    private string woken = "no";
    private bool failNextTick;

    public Action? Wake { get; set; }

    public bool Ended { get; private set; }

    public Page Draw(PageSize size, Instant now)
    {
        var canvas = new Canvas(size);
        Frame.Header(canvas, "PROBE", $"{size.Columns}x{size.Rows}");
        var row = Frame.Top(size);
        canvas.Write(0, row, $"keys {keys.Count}");
        canvas.Write(0, row + 1, "last " + string.Join(' ', keys.TakeLast(6)), Look.Now);
        canvas.Write(0, row + 2, $"woken {woken}", Look.Next);
        canvas.Write(0, row + 3, Left(now), Look.Bold | Look.Reverse | Look.Now);
        canvas.Fill(0, row + 4, 4, '█', Look.Now);
        canvas.Fill(4, row + 4, 4, '░', Look.Next);
        canvas.Cursor(5, row + 1);
        Frame.Keys(canvas, new KeyHint("q", "end"), new KeyHint("x", "throw"), new KeyHint("c", "count down"));
        return canvas.Done();
    }

    public Bell Press(KeyPress key, Instant now)
    {
        keys.Add(key.Code is KeyCode.Character ? key.Character.ToString() : key.Code.ToString());
        return key.Character switch
        {
            'q' => End(),
            'x' => throw new InvalidOperationException("thrown by a key"),
            't' => FailInTick(),
            'o' => FailElsewhere(),
            'w' => WakeLater(),
            'c' => CountDown(now),
            'b' => Bell.Once,
            'B' => Bell.Twice,
            _ => Bell.None,
        };
    }

    public Bell Tick(Instant now) => failNextTick ? throw new InvalidOperationException("thrown by a tick") : Bell.None;

    private string Left(Instant now) => until is { } end
        ? string.Create(CultureInfo.InvariantCulture, $"left {(int)Math.Ceiling((end - now).TotalSeconds)} s")
        : string.Create(CultureInfo.InvariantCulture, $"began {began.InUtc().Year}");

    private Bell End()
    {
        Ended = true;
        return Bell.None;
    }

    private Bell FailInTick()
    {
        failNextTick = true;
        return Bell.None;
    }

    private static Bell FailElsewhere()
    {
        new Thread(() => throw new InvalidOperationException("thrown elsewhere")).Start();
        return Bell.None;
    }

    private Bell WakeLater()
    {
        new Thread(() =>
        {
            woken = "yes";
            Wake?.Invoke();
        }).Start();
        return Bell.None;
    }

    private Bell CountDown(Instant now)
    {
        until = now + Duration.FromMinutes(10);
        return Bell.None;
    }
}
