using NodaTime;
using RackSide.Pages;
using RackSide.Pages.Plain;
using RackSide.Screens.Waiting;

namespace RackSide.Screens.Plain;

/// <summary>
/// Shows a conversation line by line: a line read is keys pressed, and what the page then says is printed. No escape code,
/// no cursor, no prompt; for screen readers, for a terminal that can do no more, and for a pipe.
/// </summary>
public static class PlainHost
{
    // Ticks pass as they do on the full screen, so that a rest ends on its second.
    private static readonly TimeSpan TickEvery = TimeSpan.FromMilliseconds(100);

    // The disk answers in milliseconds; a page that waits for it longer says so itself.
    private static readonly TimeSpan News = TimeSpan.FromMilliseconds(20);
    private const int MostNews = 50;

    /// <summary>Shows a conversation until it ends or the input does.</summary>
    /// <param name="conversation">What is shown.</param>
    /// <param name="clock">Tells it the time.</param>
    /// <param name="options">Sound, and what to close when the terminal is gone.</param>
    /// <param name="input">Lines typed.</param>
    /// <param name="output">Lines said.</param>
    public static ScreenOutcome Run(IConversation conversation, IClock clock, ScreenOptions options, TextReader input, TextWriter output)
    {
        using var stir = new Stir();
        var nudges = new Nudges(stir.Up);
        var gate = new Lock();
        using var signals = new ScreenSignals(nudges, () => ScreenHost.HangUp(gate, options.Hangup), runtimeKeepsTerminal: true);
        var lines = new LineReader(input, stir.Up);
        conversation.Wake = nudges.Wake;
        try
        {
            return new ScreenOutcome(new PlainTalk(conversation, clock, options, output, gate).Hold(lines, nudges, stir));
        }
        catch (Exception fault)
        {
            return new ScreenOutcome(ScreenEnd.Failed, fault);
        }
        finally
        {
            conversation.Wake = null;
        }
    }

    /// <summary>One conversation being held.</summary>
    private sealed class PlainTalk(IConversation conversation, IClock clock, ScreenOptions options, TextWriter output, Lock gate)
    {
        private readonly PlainSpeech speech = new();

        public ScreenEnd Hold(LineReader lines, Nudges nudges, Stir stir)
        {
            Print(speech.AfterTime(Page()));
            while (!conversation.Ended && nudges.Stopping is null)
            {
                if (lines.Next(out var line))
                {
                    Take(line, stir);
                }
                else if (lines.Over)
                {
                    return ScreenEnd.Finished;
                }
                else
                {
                    stir.Sleep(TickEvery);
                    Tick();
                }
            }

            return nudges.Stopping ?? ScreenEnd.Finished;
        }

        private void Take(string line, Stir stir)
        {
            Converse(conversation.Tick);
            if (string.Equals(line.Trim(), PlainEntry.Again, StringComparison.OrdinalIgnoreCase))
            {
                Print(speech.Again(Page()));
            }
            else if (PlainEntry.Presses(line, Page().Tells) is not { } presses)
            {
                Print([PlainEntry.Refusal]);
            }
            else
            {
                Press(presses, stir);
            }
        }

        private void Press(IReadOnlyList<KeyPress> presses, Stir stir)
        {
            foreach (var press in presses.TakeWhile(_ => !conversation.Ended))
            {
                Converse(now => conversation.Press(press, now));
            }

            if (!conversation.Ended && presses[^1] != KeyPress.Enter && Page().Tells.Typing)
            {
                Converse(now => conversation.Press(KeyPress.Enter, now));
            }

            for (var i = 0; i < MostNews && !conversation.Ended && Page().Tells.Pending; i++)
            {
                stir.Sleep(News);
                Converse(conversation.Tick);
            }

            if (!conversation.Ended)
            {
                Print(speech.AfterKeys(Page()));
            }
        }

        private void Tick()
        {
            Converse(conversation.Tick);
            if (!conversation.Ended)
            {
                Print(speech.AfterTime(Page()));
            }
        }

        private void Converse(Func<Instant, Bell> turn)
        {
            Bell rings;
            lock (gate)
            {
                rings = turn(clock.GetCurrentInstant());
            }

            if (options.Sound && rings is not Bell.None)
            {
                options.Alarm?.Invoke(rings);
            }
        }

        private PlainPage Page()
        {
            lock (gate)
            {
                return PlainPage.Of(conversation.Draw(PageSize.ToRead, clock.GetCurrentInstant()).InAscii());
            }
        }

        private void Print(IReadOnlyList<string> lines)
        {
            foreach (var line in lines)
            {
                output.WriteLine(line);
            }

            if (lines.Count > 0)
            {
                output.Flush();
            }
        }
    }
}
