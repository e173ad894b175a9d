using System.Runtime.CompilerServices;
using System.Text;
using NodaTime.Testing;
using RackSide.Pages;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;
using Terminal.Gui.Time;

namespace RackSide.Screens.Tests;

internal static class NoTerminal
{
    // Before anything touches the library, which would otherwise write to the terminal the tests were started from.
    [ModuleInitializer]
    internal static void Choose()
    {
        Environment.SetEnvironmentVariable("DisableRealDriverIO", "1");
        Environment.SetEnvironmentVariable("TUI_CONFIG", null);
    }
}

/// <summary>The whole screen without a terminal: the library's own driver and cells, a clock that the test moves.</summary>
internal sealed class Headless : IDisposable
{
    private readonly VirtualTimeProvider time = new();
    private readonly FakeClock clock = new(NodaTime.Instant.FromUtc(2026, 11, 25, 18, 0));
    private readonly SessionToken? session;

    public Headless(IConversation conversation, int columns = 80, int rows = 24, ScreenOptions? options = null)
    {
        time.SetTime(clock.GetCurrentInstant().ToDateTimeUtc());
        App = Application.Create(time);
        App.Init(DriverRegistry.Names.ANSI);
        App.Driver!.SetScreenSize(columns, rows);
        Loop = new ScreenLoop(App, conversation, clock, options ?? new ScreenOptions(), new Lock());
        Loop.Attach();

        // Begin leaves the library's context on the test's thread, where it would hold up whatever awaits later.
        var before = SynchronizationContext.Current;
        session = App.Begin(Loop.View);
        SynchronizationContext.SetSynchronizationContext(before);
        Turn();
    }

    public IApplication App { get; }

    public ScreenLoop Loop { get; }

    public bool Closing => Loop.View.StopRequested;

    /// <summary>The cells as the driver holds them, a line a row, without trailing blanks.</summary>
    public string Text
    {
        get
        {
            var (cells, text) = (App.Driver!.Contents!, new StringBuilder());
            for (var row = 0; row < cells.GetLength(0); row++)
            {
                var line = Enumerable.Range(0, cells.GetLength(1)).Select(column => cells[row, column].Grapheme);
                text.Append(string.Concat(line).TrimEnd()).Append('\n');
            }

            return text.ToString();
        }
    }

    /// <summary>What was last sent to the terminal, had there been one.</summary>
    public string LastSent => App.Driver!.GetOutput().GetLastOutput();

    public int DirtyCells => App.Driver!.Contents!.Cast<Terminal.Gui.Drawing.Cell>().Count(cell => cell.IsDirty);

    public void Press(params Key[] keys)
    {
        foreach (var key in keys)
        {
            App.InjectKey(key);
        }

        Turn();
    }

    /// <summary>Lets time pass, in steps no longer than the screen's own tick.</summary>
    public void Advance(TimeSpan span)
    {
        var step = TimeSpan.FromMilliseconds(100);
        for (var passed = TimeSpan.Zero; passed < span; passed += step)
        {
            time.Advance(step);
            clock.Advance(NodaTime.Duration.FromTimeSpan(step));
            App.TimedEvents!.RunTimers();
            Turn();
        }
    }

    /// <summary>Lets time pass at once, as for somebody who looks away: one turn sees all of it.</summary>
    public void Jump(TimeSpan span)
    {
        time.Advance(span);
        clock.Advance(NodaTime.Duration.FromTimeSpan(span));
        App.TimedEvents!.RunTimers();
        Turn();
    }

    public void Resize(int columns, int rows)
    {
        App.Driver!.SetScreenSize(columns, rows);
        Turn();
    }

    /// <summary>One turn of the library's loop, but for its reading and its waiting.</summary>
    public void Turn()
    {
        App.RaiseIteration();
        App.LayoutAndDraw();
        App.Navigation?.UpdateCursor();
    }

    public void Dispose()
    {
        if (session is not null)
        {
            App.End(session);
        }

        Loop.View.Dispose();
        App.Dispose();
    }
}
