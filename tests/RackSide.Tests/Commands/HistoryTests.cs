using System.Text.Json;
using NodaTime;
using RackSide.Logbook;
using RackSide.Training.History;

namespace RackSide.Tests.Commands;

/// <summary>The history of a lift that was trained for a long time.</summary>
[Collection(nameof(Tollbooth))]
public sealed class HistoryTests : IDisposable
{
    private const int Sessions = 70;

    private readonly PassingFolder home;

    public HistoryTests(Tollbooth gym)
    {
        home = gym.Copy();
        using var book = LiteLogbook.Open(home.Path, Instant.FromUtc(2026, 11, 11, 18, 0));
        var first = book.Sessions("first")[0];
        book.Import(Enumerable.Range(1, Sessions).Select(n => Earlier(first, book.NextId(), n)));
    }

    public void Dispose() => home.Dispose();

    [Fact]
    public void The_newest_are_shown_and_count_and_records_are_of_all()
    {
        var ran = CommandLine.In(home.Path, "2026-11-11T18:00").Run("history back-squat");

        var all = Sessions + 3;
        ran.Lines[..2].Should().Equal($"Barbell back squat: {all} sessions; the newest 60 are shown, --all prints the", "others too");
        ran.Lines.Count(l => l.Contains(": asked ", StringComparison.Ordinal)).Should().Be(60);
        ran.Out.Should().Contain("Heaviest so far:").And.Contain("22.5 kg x 7");
        CommandLine.In(home.Path, "2026-11-11T18:00").Run("history back-squat --all").Lines
            .Count(l => l.Contains(": asked ", StringComparison.Ordinal)).Should().Be(all);
        JsonDocument.Parse(CommandLine.In(home.Path, "2026-11-11T18:00").Run("history back-squat --json").Out)
            .RootElement.GetProperty("sessions").GetArrayLength().Should().Be(all);
    }

    private static SessionRecord Earlier(SessionRecord first, FactId id, int days) => new(
        first.Head with { Id = id, Date = first.Head.Date.PlusDays(-days) },
        [.. first.Facts.OfType<SetDone>().Select((f, n) => f with { Id = id with { Sequence = id.Sequence + ((n + 1) * 1_000) } })]);
}
