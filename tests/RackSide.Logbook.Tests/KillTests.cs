using System.Diagnostics;
using System.Globalization;

namespace RackSide.Logbook.Tests;

/// <summary>A writer in a process of its own, killed (SIGKILL) again and again in the middle of writing, closing or opening.</summary>
public sealed class KillTests : IDisposable
{
    private static readonly int Rounds = LongRun.Or(30, 1_000);

    private readonly string folder = Directory.CreateTempSubdirectory("logbook-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Kills_lose_no_acknowledged_set()
    {
        var chance = new Random(30);
        var acks = new List<(long Session, long Set)>();
        for (var round = 0; round < Rounds; round++)
        {
            // Few sets a run make kills fall on closing and opening too; where a round stops is a matter of lines read.
            var heard = Round(setsARun: round % 3 == 0 ? 2 : 200, lines: chance.Next(1, 60), lookIn: round == 0);
            acks.AddRange(heard);

            using var book = LiteLogbook.Open(folder, Tollbooth.Evening);
            var sets = book.Sessions("ottoline").ToDictionary(s => s.Head.Id.Sequence, s => s.Facts.OfType<SetDone>().ToDictionary(f => f.Id.Sequence));
            acks.Should().OnlyContain(a => Holds(sets, a.Session, a.Set));
            book.Report.Lost.Should().Be(0);
            book.Report.Condition.Should().BeOneOf(Condition.Sound, Condition.Begun);
        }

        acks.Should().HaveCountGreaterThan(Rounds);
    }

    private static bool Holds(Dictionary<long, Dictionary<long, SetDone>> sets, long session, long set) =>
        sets.TryGetValue(session, out var facts) && facts.TryGetValue(set, out var found)
        && found.Done == set % 13 && found.Load == Mass.Kg(set);

    private List<(long Session, long Set)> Round(int setsARun, int lines, bool lookIn)
    {
        var writer = Path.Combine(AppContext.BaseDirectory, "RackSide.Logbook.Writer.dll");
        using var child = Process.Start(new ProcessStartInfo("dotnet", [writer, folder, setsARun.ToString(CultureInfo.InvariantCulture)])
        {
            RedirectStandardOutput = true,
        })!;
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
        return [.. heard.Where(l => l != "closing").Select(l => l.Split(' ')).Where(p => p.Length == 2).Select(p => (Number(p[0]), Number(p[1])))];
    }

    private static long Number(string text) => long.Parse(text, CultureInfo.InvariantCulture);
}
