using System.Runtime.CompilerServices;
using NodaTime;
using RackSide.Pages;
using RackSide.Screens.Waiting;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;

namespace RackSide.Screens;

/// <summary>Shows a conversation on the whole terminal until it ends, and gives the terminal back whatever happens.</summary>
public static class ScreenHost
{
    /// <summary>The exit code after the terminal is gone: what a shell reports of a process that SIGHUP ended.</summary>
    public const int HangupExitCode = 129;

    /// <summary>The exit code after an exception (sysexits.h: internal software error).</summary>
    public const int FaultExitCode = 70;

    /// <summary>How long an orderly end may take before it is given up.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromSeconds(3);

    // The library sleeps for what is left of a turn after it; our own sleep comes before, and ends when a key does.
    private const ushort TurnsPerSecond = 1000;

    private static Thread? ready;

    /// <summary>Shows a conversation until it ends.</summary>
    /// <param name="conversation">What is shown.</param>
    /// <param name="clock">Tells it the time.</param>
    /// <param name="options">What the terminal and the lifter allow.</param>
    /// <returns>How it ended; nothing was sent to the terminal where the start was refused.</returns>
    /// <remarks>Call it on the program's main thread, once at a time. What the conversation throws comes back as a value.</remarks>
    public static ScreenOutcome Run(IConversation conversation, IClock clock, ScreenOptions options)
    {
        // Read by the library as soon as it is first touched, which is why the rest stands in a method of its own.
        Environment.SetEnvironmentVariable("TUI_CONFIG", null);
        ready?.Join();
        return RefuseOrShow(conversation, clock, options);
    }

    /// <summary>Why nothing could be shown here, before anything is opened for it; null where it can.</summary>
    public static ScreenEnd? Refusal(ScreenOptions options) => TerminalCheck.Refusal(options, TerminalCheck.Attached());

    /// <summary>
    /// Lets the library set itself up on a thread of its own, which takes as long as opening a logbook; nothing is sent to
    /// the terminal. <see cref="Run"/> waits for the end of it, because the library is made for one thread at a time.
    /// </summary>
    public static void GetReady()
    {
        Environment.SetEnvironmentVariable("TUI_CONFIG", null);
        ready = new Thread(Waken) { IsBackground = true, Name = "Screen, getting ready" };
        ready.Start();
    }

    /// <summary>Shows a conversation in an application that is already set up.</summary>
    internal static ScreenEnd Show(IApplication app, ScreenLoop loop)
    {
        loop.Attach();
        try
        {
            app.Run(loop.View);
            return loop.End;
        }
        finally
        {
            loop.Detach();
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static ScreenOutcome RefuseOrShow(IConversation conversation, IClock clock, ScreenOptions options) =>
        TerminalCheck.Refusal(options, TerminalCheck.Attached()) is { } refusal
            ? new ScreenOutcome(refusal)
            : ShowOnTerminal(conversation, clock, options);

    private static ScreenOutcome ShowOnTerminal(IConversation conversation, IClock clock, ScreenOptions options)
    {
        var before = SynchronizationContext.Current;
        var gate = new Lock();
        using var stir = new Stir();
        var app = WaitingApplication.Create(options.LinuxConsole, stir);
        var loop = new ScreenLoop(app, conversation, clock, options, gate, stir);
        using var signals = new ScreenSignals(loop.Nudges, () => HangUp(gate, options.Hangup), options.LinuxConsole);
        using var foreign = new ForeignFault(loop.Nudges, options.Crashed);
        try
        {
            SetUp(app, options);
            return new ScreenOutcome(Show(app, loop));
        }
        catch (Exception fault)
        {
            return new ScreenOutcome(ScreenEnd.Failed, fault);
        }
        finally
        {
            GiveBack(app, loop, options);
            SynchronizationContext.SetSynchronizationContext(before);
            foreign.TerminalRestored();
        }
    }

    // What fails here fails again, and is told, when the screen is shown.
    private static void Waken()
    {
        try
        {
            RunInitializer();
        }
        catch (Exception)
        {
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void RunInitializer() => RuntimeHelpers.RunModuleConstructor(typeof(Application).Module.ModuleHandle);

    private static void SetUp(IApplication app, ScreenOptions options)
    {
        // Esc quits by default. All keys are taken before the library sees them; this is the second lock.
        Application.SetDefaultKeyBinding(Command.Quit, Bind.All(Key.Q.WithCtrl));
        Application.MaximumIterationsPerSecond = TurnsPerSecond;
        if (!options.Colour)
        {
            // Keeps the library from asking the terminal for its colours.
            Environment.SetEnvironmentVariable("NO_COLOR", "1");
        }

        app.Init();
        app.Mouse.IsMouseDisabled = true;
        TerminalModes.KeepPlainKeyboard(app.Driver!);
        app.Driver!.WriteRaw(TerminalModes.Settle);
    }

    private static void GiveBack(IApplication app, ScreenLoop loop, ScreenOptions options)
    {
        app.Driver?.WriteRaw(TerminalModes.Leave);
        if (options.LinuxConsole)
        {
            app.Driver?.WriteRaw(TerminalModes.Clear);
        }

        loop.View.Dispose();

        // On a terminal that is gone the library waits for its reader without end; that thread may be left behind. What
        // this throws is of no use to anybody either, and must not hide why the screen ended.
        ((IAsyncResult)Task.Run(app.Dispose)).AsyncWaitHandle.WaitOne(Patience);
    }

    // Not unwound: the library would read the dead terminal for ever. The gate stays held, so that nothing follows.
    internal static void HangUp(Lock gate, Action? close)
    {
        gate.TryEnter(Patience);
        try
        {
            close?.Invoke();
        }
        finally
        {
            Environment.Exit(HangupExitCode);
        }
    }
}
