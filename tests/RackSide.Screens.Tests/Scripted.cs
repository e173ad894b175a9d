using NodaTime;
using RackSide.Pages;

namespace RackSide.Screens.Tests;

/// <summary>A conversation whose page shows the keys it got and how many seconds it has run; q ends it and ! breaks it.</summary>
internal sealed class Scripted : IConversation
{
    private Instant? began;
    private Instant last;

    public List<KeyPress> Keys { get; } = [];

    public Bell Rings { get; set; }

    public string Note { get; set; } = "";

    public int Ticks { get; private set; }

    public Action? Wake { get; set; }

    public bool Ended { get; set; }

    public Page Draw(PageSize size, Instant now)
    {
        var canvas = new Canvas(size);
        Frame.Header(canvas, "SCRIPTED", $"{size.Columns}x{size.Rows}");
        canvas.Write(2, 3, "keys " + string.Join(' ', Keys.Select(key => key.Code is KeyCode.Character ? key.Character.ToString() : key.Code.ToString())));
        canvas.Write(2, 4, $"seconds {(int)(last - (began ?? last)).TotalSeconds}", Look.Bold);
        canvas.Write(2, 5, "now", Look.Now);
        canvas.Write(2, 6, "next", Look.Next | Look.Reverse);
        canvas.Write(2, 7, Note);
        canvas.Fill(size.Columns - 4, size.Rows - 1, 4, '█');
        canvas.Cursor(7, 3);
        return canvas.Done();
    }

    public Bell Press(KeyPress key, Instant now)
    {
        Keys.Add(key);
        if (key == KeyPress.Of('!'))
        {
            throw new InvalidOperationException("broken");
        }

        Ended = key == KeyPress.Of('q');
        return Rings;
    }

    public Bell Tick(Instant now)
    {
        Ticks++;
        began ??= now;
        last = now;
        return Bell.None;
    }
}
