using System.Globalization;
using RackSide.Pages;
using RackSide.Pages.Plain;
using RackSide.Tollbooth;
using RackSide.Training.Sessions;
using Terminal.Gui.Input;
using Xunit.Abstractions;

namespace RackSide.Screens.Tests.Storm;

/// <summary>
/// Keys at random through the whole screen, in windows of any size, with time that passes at random. The variable
/// <c>RACKSIDE_KEYS</c> asks for another number of them than the suite's; docs/testing-hooks.md tells of the long run.
/// </summary>
public sealed class RandomKeysTests(ITestOutputHelper told)
{
    private const int InTheSuite = 20_000;

    // A session of more facts than any real one only makes the folding slow.
    private const int MostInASession = 400;

    private static readonly Key[] Pressed =
    [
        Key.Enter, Key.Enter, Key.Enter, Key.Enter, Key.Space, Key.Esc, Key.Tab, Key.Backspace, Key.CursorUp, Key.CursorDown, Key.Home,
        Key.PageUp, Key.PageDown, Key.InsertChar, Key.DeleteChar, Key.CursorLeft, Key.F5, Key.Enter.WithCtrl,
        .. "0123456789+-*/.,!?hmpqswxzuda=#kTé".Select(character => new Key(character)),
    ];

    // What chance alone would seldom find its way to.
    private static readonly string[] Routes = ["/*19", "/*29", "/*15", "/12", "/14", "/21", "/51", "/672.4", "*62,5", "/*3", "/7"];

    private static readonly PageSize[] Sizes =
    [
        new(50, 15), new(80, 24), new(120, 40), new(200, 60), new(30, 8), new(1, 1), PageSize.ToRead,
        new(50, 15) { Big = true }, new(80, 24) { Big = true, Steady = true },
    ];

    // Standard S20 of docs/screen.md.
    [Fact]
    public void Whatever_is_pressed_in_whatever_window_nothing_breaks_and_every_page_can_be_drawn()
    {
        var keys = int.TryParse(Environment.GetEnvironmentVariable("RACKSIDE_KEYS"), CultureInfo.InvariantCulture, out var wished) ? wished : InTheSuite;
        var (pressed, sessions, phases) = (0, 0, new HashSet<string>());
        while (pressed < keys)
        {
            pressed += Session(sessions++, Math.Min(MostInASession, keys - pressed), phases);
        }

        told.WriteLine($"{pressed} keys in {sessions} sessions; pages seen: {string.Join(", ", phases.Order())}");
        phases.Should().Contain(["Lifting", "Resting", "Asking", "Holding", "Ticking", "Finishing", "Choosing NoteText", "Reading LookBack"]);
    }

    /// <summary>One session until it ends or so many keys were pressed; gives how many were.</summary>
    private static int Session(int seed, int most, HashSet<string> phases)
    {
        var chance = new Random(seed);
        var rack = new RackAtRandom(Begun(seed), chance);
        using var screen = new Headless(rack);
        for (var i = 1; i <= most; i++)
        {
            Pass(screen, chance);
            Key[] keys = chance.Next(40) == 0 ? [.. Routes[chance.Next(Routes.Length)].Select(character => new Key(character))] : [Pressed[chance.Next(Pressed.Length)]];
            var key = string.Join(' ', keys.Select(k => k.ToString()));
            screen.Press(keys);
            phases.Add(Name(rack.Session.Phase));
            rack.Broken().Should().BeEmpty($"session {seed}, key {i}, {key}");
            Draw(rack, i % 25 == 0 ? Sizes : [Sizes[chance.Next(Sizes.Length)]]);
            if (i % 25 == 0)
            {
                rack.DifferentAfterAKill().Should().BeNull($"session {seed}, key {i}, {key}");
            }

            if (rack.Ended)
            {
                return i;
            }
        }

        return most;
    }

    private static Session Begun(int seed) => (seed % 3) switch
    {
        0 => TollboothDay.Begin(TollboothDay.Strength, TollboothDay.SquatOnMonday(65, 5, 5, 5, 5, 5)),
        1 => TollboothDay.Begin(TollboothDay.Strength),
        _ => TollboothDay.Begin(TollboothDay.Skills),
    };

    // Mostly moments, sometimes the time of a set, seldom that of a rest; and now and then another window.
    private static void Pass(Headless screen, Random chance)
    {
        screen.Jump(TimeSpan.FromSeconds(chance.Next(10) switch { < 5 => chance.NextDouble(), < 9 => 1 + (10 * chance.NextDouble()), _ => 130 * chance.NextDouble() }));
        if (chance.Next(100) == 0)
        {
            screen.Resize(chance.Next(1, 140), chance.Next(1, 50));
        }
    }

    private static void Draw(RackAtRandom rack, IEnumerable<PageSize> sizes)
    {
        foreach (var size in sizes)
        {
            var page = rack.Draw(size, rack.Session.Now);
            page.Size.Should().Be(size);
            if (size.Plain)
            {
                PlainPage.Of(page.InAscii()).Lines.Should().NotBeEmpty();
            }
        }
    }

    private static string Name(Phase phase) => phase switch
    {
        Choosing choosing => $"Choosing {choosing.What}",
        Reading reading => $"Reading {reading.What}",
        _ => phase.GetType().Name,
    };
}
