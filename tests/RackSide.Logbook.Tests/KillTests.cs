using System.Globalization;
using Xunit.Abstractions;

namespace RackSide.Logbook.Tests;

/// <summary>A writer in a process of its own, killed (SIGKILL) again and again in the middle of writing, closing or opening.</summary>
public sealed class KillTests(ITestOutputHelper told) : IDisposable
{
    private const int RoundsOfACampaign = 50;

    private readonly string folder = Directory.CreateTempSubdirectory("logbook-").FullName;

    /// <summary>
    /// Each with a logbook of its own, so that none grows without end, and each a test of its own, so that a long run that
    /// was cut off can be gone on with by its number.
    /// </summary>
    public static TheoryData<int> Campaigns => [.. Enumerable.Range(1, LongRun.Or(1, 20))];

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [MemberData(nameof(Campaigns))]
    public void Kills_lose_no_acknowledged_set(int campaign)
    {
        var (rounds, chance) = (LongRun.Or(30, RoundsOfACampaign), new Random(campaign));
        var acks = new HashSet<Ack>();
        for (var round = 0; round < rounds; round++)
        {
            // Few sets a run make kills fall on closing and opening too; where a round stops is a matter of lines read.
            acks.UnionWith(Round(setsARun: round % 3 == 0 ? 2 : 200, lines: chance.Next(1, 40), lookIn: round == 0));

            using var book = LiteLogbook.Open(folder, Tollbooth.Evening);
            Ack.Missing(book, acks).Should().BeEmpty();
            book.Report.Lost.Should().Be(0);
            book.Report.Condition.Should().BeOneOf(Condition.Sound, Condition.Begun);
        }

        acks.Should().HaveCountGreaterThan(rounds);
        told.WriteLine($"{rounds} kills, {acks.Count} acknowledged sets, none lost");
    }

    private List<Ack> Round(int setsARun, int lines, bool lookIn)
    {
        using var child = WriterProcess.Start(folder, setsARun.ToString(CultureInfo.InvariantCulture));
        var heard = new List<string>();
        while (heard.Count < lines && child.StandardOutput.ReadLine() is { } line)
        {
            heard.Add(line);
        }

        if (lookIn)
        {
            var act = () => LiteLogbook.Open(folder, Tollbooth.Evening);
            act.Should().Throw<LogbookBusyException>();
        }

        child.Kill();
        heard.AddRange(child.StandardOutput.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries));
        child.WaitForExit();
        return [.. heard.Select(Ack.Of).OfType<Ack>()];
    }
}
