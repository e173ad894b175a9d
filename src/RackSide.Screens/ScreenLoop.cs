using NodaTime;
using RackSide.Pages;
using RackSide.Screens.Waiting;
using Terminal.Gui.App;
using Terminal.Gui.Input;

namespace RackSide.Screens;

/// <summary>
/// Leads keys and time to a conversation and its pages to the terminal, inside an application that is already set up.
/// Everything here happens on the screen's thread.
/// </summary>
internal sealed class ScreenLoop
{
    private static readonly TimeSpan TickEvery = TimeSpan.FromMilliseconds(100);
    private readonly IApplication app;
    private readonly IConversation conversation;
    private readonly IClock clock;
    private readonly BellRinger bell;
    private readonly Lock gate;
    private readonly Pulse? pulse;
    private readonly Tidying tidying = new();
    private readonly bool locked;

    /// <summary>A loop that is not attached yet.</summary>
    /// <param name="app">The application, after its Init.</param>
    /// <param name="conversation">What is shown.</param>
    /// <param name="clock">Tells the conversation the time.</param>
    /// <param name="options">Colour and sound.</param>
    /// <param name="gate">Held while the conversation works, so that a hang-up can wait for it.</param>
    /// <param name="stir">What the loop sleeps on between turns; null leaves its turns and ticks to the library.</param>
    public ScreenLoop(IApplication app, IConversation conversation, IClock clock, ScreenOptions options, Lock gate, Stir? stir = null)
    {
        (this.app, this.conversation, this.clock, this.gate) = (app, conversation, clock, gate);
        locked = options.Locked;
        bell = new BellRinger(app, options.Sound, options.Alarm);
        View = new PageView(DrawGated, options.Shown);
        pulse = stir is null ? null : new Pulse(stir, TimeProvider.System);
        Nudges = new Nudges(stir is null ? null : stir.Up);
    }

    /// <summary>The view to run.</summary>
    public PageView View { get; }

    /// <summary>What other threads may ask.</summary>
    public Nudges Nudges { get; }

    /// <summary>Why the loop ended.</summary>
    public ScreenEnd End => Nudges.Stopping ?? ScreenEnd.Finished;

    /// <summary>Takes over the application's keys, its turns and one timer.</summary>
    public void Attach()
    {
        app.Keyboard.KeyDown += (_, key) => OnKey(key);
        app.Iteration += (_, _) => OnTurn();
        app.LayoutAndDrawComplete += (_, _) => KeepLibraryCursorStill();
        if (pulse is null)
        {
            app.AddTimeout(TickEvery, OnTick);
        }

        conversation.Wake = Nudges.Wake;
        if (conversation.Ended)
        {
            Nudges.Stop(ScreenEnd.Finished);
        }
    }

    /// <summary>Lets the conversation go.</summary>
    public void Detach() => conversation.Wake = null;

    // Every key is ours: none reaches the library's own bindings, whatever its configuration files say of them.
    private void OnKey(Key key)
    {
        key.Handled = true;
        if (key == Key.C.WithCtrl && !locked)
        {
            Nudges.Stop(ScreenEnd.Interrupted);
        }
        else if (key == Key.Z.WithCtrl && !locked)
        {
            Suspend();
        }
        else if (KeyTranslation.Translate(key) is { } press && !View.StopRequested)
        {
            Converse(now => conversation.Press(press, now));
        }
    }

    private bool OnTick()
    {
        Converse(conversation.Tick);
        return !View.StopRequested;
    }

    private void OnTurn()
    {
        pulse?.Rest();
        KeepLibraryCursorStill();
        if (Nudges.TakeResume())
        {
            Repossess();
        }

        if (Nudges.TakeWake() | pulse?.TakeTick() == true)
        {
            // A tick is what a conversation takes news with; waiting for the next one would say "written" a tenth of a second late.
            Converse(conversation.Tick);
        }

        if (pulse?.Idle == true)
        {
            tidying.Tidy();
        }

        if (Nudges.Stopping is not null)
        {
            app.RequestStop(View);
        }
    }

    private void Converse(Func<Instant, Bell> turn)
    {
        Bell rings;
        bool ended;
        lock (gate)
        {
            rings = turn(clock.GetCurrentInstant());
            ended = conversation.Ended;
        }

        bell.Ring(rings);
        if (ended)
        {
            Nudges.Stop(ScreenEnd.Finished);
        }
        else
        {
            Paint();
        }
    }

    private void Paint()
    {
        if (View.Paint())
        {
            pulse?.Moved();
        }
    }

    private Page DrawGated(PageSize size)
    {
        lock (gate)
        {
            return conversation.Draw(size, clock.GetCurrentInstant());
        }
    }

    private void Suspend()
    {
        app.Driver?.Suspend();
        Repossess();
    }

    // After a stop the shell has used the terminal; nothing is known of what it shows or of its modes.
    private void Repossess()
    {
        app.Driver?.WriteRaw(TerminalModes.Settle);
        app.ClearScreenNextIteration = true;
    }

    // The brush places the real cursor. The library would hide it and send it to the corner on each of its turns.
    private void KeepLibraryCursorStill() => app.Driver?.SetCursorNeedsUpdate(false);
}
