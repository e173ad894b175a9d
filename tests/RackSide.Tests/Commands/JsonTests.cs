using System.Text.Json;

namespace RackSide.Tests.Commands;

/// <summary>What other programs read. That it is JSON is judged by the framework's own reader (RFC 8259).</summary>
[Collection(nameof(Tollbooth))]
public class JsonTests(Tollbooth gym)
{
    [Theory]
    [InlineData("today --json")]
    [InlineData("summary --json")]
    [InlineData("summary --week 2026-W45 --json")]
    [InlineData("summary --week 2026-W44 --json")]
    [InlineData("history squat --json")]
    [InlineData("plates 61 --json")]
    [InlineData("--data . plates 62.5 --json")]
    public void Everything_is_one_json_object_with_a_schema_and_no_escape(string line)
    {
        var ran = gym.On(11).Run(line);

        ran.Code.Should().Be(0);
        ran.Out.Should().NotContain("\u001b").And.NotContain("\\u");
        JsonDocument.Parse(ran.Out).RootElement.GetProperty("schema").GetInt32().Should().Be(1);
    }

    [Fact]
    public void Today_tells_loads_with_unit_and_kilograms_and_reasons_with_code()
    {
        var today = Json(13, "today --json");

        today.GetProperty("date").GetString().Should().Be("2026-11-13");
        today.GetProperty("lifter").GetString().Should().Be("Ottoline Marsh");
        today.GetProperty("due").GetString().Should().Be("train");
        today.GetProperty("day").GetProperty("kind").GetString().Should().Be("strength");
        today.GetProperty("next").GetProperty("date").GetString().Should().Be("2026-11-16");
        var squat = today.GetProperty("prescriptions")[0];
        squat.GetProperty("exercise").GetProperty("id").GetString().Should().Be("back-squat");
        squat.GetProperty("targets").EnumerateArray().Select(t => t.GetInt32()).Should().Equal(5, 5, 5, 5, 5);
        squat.GetProperty("load").GetRawText().ReplaceLineEndings("").Replace(" ", "", StringComparison.Ordinal)
            .Should().Be("""{"amount":25,"unit":"kg","kilograms":25}""");
        squat.GetProperty("warmUp")[0].GetProperty("reps").GetInt32().Should().Be(10);
        squat.GetProperty("restSeconds").GetInt32().Should().Be(120);
        var why = squat.GetProperty("why");
        why.GetProperty("code").GetString().Should().Be("all-met");
        why.GetProperty("inputs").EnumerateArray()
            .Select(i => $"{i.GetProperty("name")} {i.GetProperty("amount")} {i.GetProperty("unit")}".Trim())
            .Should().Equal("from 22.5 kg", "to 25 kg", "gapDays 4 d", "asked 5", "fewest 7", "stepPercent 11.1 %");
        why.GetProperty("advice").GetString().Should().Be("a pair of 1 kg plates would make smaller steps");
    }

    [Fact]
    public void A_rest_day_has_no_day_and_no_prescriptions()
    {
        var today = Json(10, "today --json");

        today.GetProperty("due").GetString().Should().Be("rest");
        today.GetProperty("day").ValueKind.Should().Be(JsonValueKind.Null);
        today.GetProperty("prescriptions").GetArrayLength().Should().Be(0);
    }

    [Fact]
    public void A_week_tells_its_days_lifts_and_body_weight()
    {
        var week = Json(11, "summary --week 2026-W45 --json");

        week.GetProperty("week").GetString().Should().Be("2026-W45");
        (week.GetProperty("from").GetString(), week.GetProperty("to").GetString()).Should().Be(("2026-11-02", "2026-11-08"));
        week.GetProperty("done").EnumerateArray().Select(d => d.GetProperty("date").GetString())
            .Should().Equal("2026-11-02", "2026-11-04", "2026-11-06");
        week.GetProperty("lifts")[0].GetProperty("now").GetProperty("amount").GetDecimal().Should().Be(22.5m);
        week.GetProperty("bodyWeight").GetProperty("mean").GetProperty("kilograms").GetDecimal().Should().Be(72.4m);
    }

    [Fact]
    public void History_tells_what_slipped_and_whether_the_targets_were_met()
    {
        var sessions = Json(11, "history back-squat --json").GetProperty("sessions").EnumerateArray().ToList();

        sessions.Select(s => s.GetProperty("date").GetString()).Should().Equal("2026-11-02", "2026-11-06", "2026-11-09");
        sessions.Select(s => s.GetProperty("targetsMet").GetBoolean()).Should().Equal(true, false, true);
        sessions[1].GetProperty("sets").EnumerateArray().Select(s => s.GetProperty("formSlipped").GetBoolean())
            .Should().Equal(false, false, false, true, false);
    }

    /// <summary>45 lb = 20.41165665 kg: 45 times 0.45359237, the pound of NIST SP 811, appendix B.</summary>
    [Fact]
    public void Pounds_are_told_in_exact_kilograms()
    {
        using var home = new PassingFolder();

        var plates = JsonDocument.Parse(CommandLine.At(home.Path, "2026-11-11T18:00").Run("plates 135lb --json").Out).RootElement;

        plates.GetProperty("loadable").GetBoolean().Should().BeTrue();
        plates.GetProperty("eachSide")[0].GetProperty("kilograms").GetRawText().Should().Be("20.41165665");
        plates.GetProperty("bar").GetProperty("mass").GetProperty("unit").GetString().Should().Be("lb");
    }

    private JsonElement Json(int day, string line) => JsonDocument.Parse(gym.On(day).Run(line).Out).RootElement;
}
