using System.Text.Json.Nodes;

namespace RackSide.Tests.Commands;

/// <summary>Export and back, in copies of the Tollbooth's folder and in empty ones.</summary>
[Collection(nameof(Tollbooth))]
public sealed class ImportTests(Tollbooth gym) : IDisposable
{
    private readonly PassingFolder home = gym.Copy();
    private readonly PassingFolder empty = new();

    public void Dispose()
    {
        home.Dispose();
        empty.Dispose();
    }

    [Fact]
    public void A_record_comes_into_an_empty_logbook_and_leaves_it_again_as_it_was()
    {
        var record = Record();

        var ran = There().Answering("y").RunWords("import", record);

        (ran.Code, ran.Error).Should().Be((0, ""));
        ran.Out.ReplaceLineEndings(" ").Should().Contain("importing it would add:   1 lifter   4 sessions   1 weigh-in ").And.Contain("imported; the logbook: 1 lifter, 4 sessions");
        Text(There().Run("export").Out).Should().Be(Text(File.ReadAllText(record)));
        Directory.GetFiles(Path.Combine(empty.Path, "backups")).Select(Path.GetFileName).Should().Equal("before-import-2026-11-11.db");
    }

    [Fact]
    public void A_second_time_everything_is_here_and_nothing_is_asked()
    {
        var here = Here();

        var ran = here.RunWords("import", Record());

        (ran.Code, ran.Lines[^1], here.Asked.Count).Should().Be((0, "nothing was changed", 0));
        ran.Out.Should().Contain("importing it would add nothing: all of it is here").And.Contain("here already, and left as they are: 6 entries");
    }

    [Theory]
    [InlineData("n")]
    [InlineData("")]
    public void Without_a_yes_nothing_is_changed(string answer)
    {
        There().Answering(answer).RunWords("import", Record()).Lines[^1].Should().Be("nothing was changed");

        There().Run("export").Out.Should().Contain("\"sessions\": []");
    }

    [Fact]
    public void A_dry_run_makes_nothing_on_disk()
    {
        There().RunWords("import", Record(), "--dry-run").Lines[^1].Should().Be("a dry run: nothing was changed");

        empty.Entries.Should().BeEmpty();
    }

    [Theory]
    [InlineData("not json", "this is not JSON")]
    [InlineData("""{"format":"rackside-record","version":9}""", "its version is not 1; a newer RackSide wrote it")]
    [InlineData("""{"format":"rackside-record","version":1,"lifters":[],"sessions":[],"weighIns":[]}""", "the field \"told\" is missing")]
    public void A_bad_file_gets_one_sentence(string text, string part)
    {
        var file = home.File("bad.json", text);

        var ran = Here().RunWords("import", file, "--yes");

        (ran.Code, ran.Out).Should().Be((65, ""));
        ran.Error.ReplaceLineEndings(" ").Should().StartWith($"rackside: {file}: ").And.Contain(part).And.Contain("export it again, or mend that place. Nothing was changed");
    }

    [Fact]
    public void A_file_that_is_not_there_is_told_with_66() =>
        Here().Run("import nowhere.json").Should().BeEquivalentTo(new { Code = 66, Out = "" });

    private CommandLine Here() => CommandLine.In(home.Path, "2026-11-11T18:00");

    private CommandLine There() => CommandLine.In(empty.Path, "2026-11-11T18:00");

    private string Record()
    {
        var file = Path.Combine(home.Path, "record.json");
        gym.On(11).RunWords("export", file).Code.Should().Be(0);
        return file;
    }

    private static string Text(string record)
    {
        var json = JsonNode.Parse(record)!.AsObject();
        json.Remove("made").Should().BeTrue();
        json.Remove("rack").Should().BeTrue();
        return json.ToJsonString();
    }
}
