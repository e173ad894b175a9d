using System.Diagnostics;
using System.Text.Json;
using RackSide.Exchange;
using RackSide.Tests.Commands;

namespace RackSide.Tests.Exchange;

/// <summary>
/// Our tables, read by another program: the csv module of python3, whose reader in strict mode refuses what RFC 4180 does.
/// </summary>
[Collection(nameof(Tollbooth))]
public class CsvTablesTests(Tollbooth gym)
{
    private const string Reader = """
        import csv, json, sys
        with open(sys.argv[1], newline="", encoding="utf-8") as file:
            print(json.dumps(list(csv.reader(file, strict=True))))
        """;

    [Fact]
    public void Another_program_reads_every_table_and_finds_what_was_done()
    {
        using var folder = new PassingFolder();

        var ran = gym.On(11).RunWords("export", "--csv", folder.Path);

        (ran.Code, ran.Out).Should().Be((0, ""));
        Read(folder, "lifters.csv").Should().BeEquivalentTo([["lifter", "name", "unit", "joined (UTC)"], (string[])["first", "Ottoline Marsh", "kg", "2026-11-01T18:00:00Z"]]);
        Read(folder, "weigh-ins.csv").Should().BeEquivalentTo([["lifter", "date", "weight (kg)", "weight (lb)"], (string[])["first", "2026-11-03", "72.4", ""]]);
        Read(folder, "sessions.csv").Select(r => r[2]).Should().Equal("date", "2026-11-02", "2026-11-04", "2026-11-06", "2026-11-09");
        Read(folder, "days.csv").Should().ContainSingle();
        var sets = Read(folder, "sets.csv");
        sets.Should().OnlyContain(r => r.Length == sets[0].Length);
        var slipped = sets.Single(r => r[16] == "slipped");
        slipped[2..16].Should().Equal("2026-11-06", "2026-11-06T18:00:00Z", "squat", "back-squat", "Barbell back squat", "working", "4", "", "5", "7", "", "", "22.5", "");
        var missed = sets.Last(r => r[4] == "overhead-press");
        (missed[2], missed[11]).Should().Be(("2026-11-09", "5"));
        sets.Where(r => r[7] is "hold").Should().NotBeEmpty().And.OnlyContain(r => r[10] == "" && r[11] == "" && r[13] != "");
        Directory.GetFiles(folder.Path).Should().OnlyContain(f => OperatingSystem.IsWindows() || File.GetUnixFileMode(f) == (UnixFileMode.UserRead | UnixFileMode.UserWrite));
    }

    [Fact]
    public void A_table_holds_any_text_and_no_spreadsheet_takes_it_for_a_formula()
    {
        string[] texts = ["plain", "a,b", "say \"five\"", "two\r\nlines", " spaced ", "", "=1+1", "+4", "-4", "@sum", "\tx", "\rx", "'tis", "''", "Märsta 2½", "鉄"];
        var table = new CsvLines("text", "again");
        foreach (var text in texts)
        {
            table.Add(CsvLines.Guard(text), "x");
        }

        using var folder = new PassingFolder();
        folder.File("any.csv", table.ToString());
        var read = Read(folder, "any.csv").Skip(1).Select(r => r[0]).ToList();

        read.Select(CsvLines.Unguard).Should().Equal(texts);
        read.Should().OnlyContain(t => t.Length == 0 || !"=+-@\t\r".Contains(t[0]));
        table.ToString().ReplaceLineEndings("\n").Should().NotBe(table.ToString(), "lines end in CR LF");
    }

    private static List<string[]> Read(PassingFolder folder, string name)
    {
        var start = new ProcessStartInfo("python3") { RedirectStandardOutput = true };
        start.ArgumentList.Add("-c");
        start.ArgumentList.Add(Reader);
        start.ArgumentList.Add(Path.Combine(folder.Path, name));
        using var python = Process.Start(start)!;
        var json = python.StandardOutput.ReadToEnd();
        python.WaitForExit();
        python.ExitCode.Should().Be(0, $"python3 reads {name}; .ci/run installs it where it is missing");
        return JsonSerializer.Deserialize<List<string[]>>(json)!;
    }
}
