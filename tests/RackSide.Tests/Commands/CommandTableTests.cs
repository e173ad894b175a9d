using RackSide.Logbook;

namespace RackSide.Tests.Commands;

/// <summary>Command lines and what they come to. The exit codes are those of sysexits.h (BSD, 1993), from memory: 64 EX_USAGE,
/// 65 EX_DATAERR, 66 EX_NOINPUT, 70 EX_SOFTWARE, 74 EX_IOERR, 75 EX_TEMPFAIL, 78 EX_CONFIG.</summary>
[Collection(nameof(Tollbooth))]
public class CommandTableTests(Tollbooth gym)
{
    [Theory]
    [InlineData("today", "Wed 11 Nov 2026: Skills day, about 32 min, for Ottoline Marsh")]
    [InlineData("today --lifter first", "Wed 11 Nov 2026: Skills day, about 32 min, for Ottoline Marsh")]
    [InlineData("summary", "week 46 of 2026, 9 to 15 Nov: 1 of 3 training days done")]
    [InlineData("summary --week 2026-W45", "week 45 of 2026, 2 to 8 Nov: 3 of 3 training days done")]
    [InlineData("summary --week 2026w45", "week 45 of 2026, 2 to 8 Nov: 3 of 3 training days done")]
    [InlineData("summary --week 2026-W44", "2026-W44 is before the first session, on Mon 2 Nov 2026.")]
    [InlineData("summary --week 2026-W53", "2026-W53 has not begun yet: it begins on Mon 28 Dec 2026.")]
    [InlineData("forecast", "Working loads in the weeks to come, from Wed 11 Nov 2026")]
    [InlineData("history squat", "slot squat: 3 sessions")]
    [InlineData("history back-squat", "Barbell back squat: 3 sessions")]
    [InlineData("history back squat", "Barbell back squat: 3 sessions")]
    [InlineData("history BARBELL BACK", "Barbell back squat: 3 sessions")]
    [InlineData("history deadlift", "Barbell deadlift: nothing yet.")]
    [InlineData("plates 62.5", "loadable: 62.5 kg is 20 + 1.25 on each side of the bar")]
    [InlineData("plates 62,5", "loadable: 62.5 kg is 20 + 1.25 on each side of the bar")]
    [InlineData("plates 62.5kg", "loadable: 62.5 kg is 20 + 1.25 on each side of the bar")]
    [InlineData("plates 62.5 KG", "loadable: 62.5 kg is 20 + 1.25 on each side of the bar")]
    [InlineData("plates 62.5 --for bb-curl", "loadable: 62.5 kg is 20 + 1.25 on each side of the bar")]
    [InlineData("plates 20", "loadable: 20 kg is the bar alone")]
    [InlineData("plates 61", "not loadable: 61 needs a 0.5 pair; 60 or 62.5")]
    [InlineData("plates 10", "not loadable: 10 is lighter than the empty bar; 20 is the least")]
    [InlineData("plates 999", "not loadable: 999 needs plates that are not here; 127.5 is the most")]
    public void A_good_command_line_answers_on_the_standard_output(string line, string first)
    {
        var ran = gym.On(11).Run(line);

        (ran.Code, ran.Error, ran.Lines[0]).Should().Be((0, "", first));
    }

    // Standard S23 of docs/screen.md.
    [Theory]
    [InlineData("todya", "there is no command \"todya\"; did you mean today?")]
    [InlineData("frobnicate", "there is no command \"frobnicate\"; see rackside --help")]
    [InlineData("@today", "there is no command \"@today\"; did you mean today?")]
    [InlineData("today --jsno", "there is no option --jsno; did you mean --json?")]
    [InlineData("today --lfter Bram", "there is no option --lfter; did you mean --lifter?")]
    [InlineData("today tomorrow", "\"tomorrow\" is one word too many; see rackside today --help")]
    [InlineData("today --lifter Bram", "--lifter: nobody here is called \"Bram\"; here train: Ottoline Marsh")]
    [InlineData("today --lifter first --lifter second", "--lifter is given more than once; write --lifter NAME once")]
    [InlineData("today --json=maybe", "\"maybe\" is one word too many; see rackside today --help")]
    [InlineData("--data", "--data needs a value: --data DIR")]
    [InlineData("summary --week", "--week needs a value: --week 2026-W48")]
    [InlineData("summary --week soon", "--week: \"soon\" is not a week; write one such as 2026-W48")]
    [InlineData("summary --week 48", "--week: \"48\" is not a week; write one such as 2026-W48")]
    [InlineData("summary --week 2026-W00", "--week: 2026 has no week 0; its weeks are 1 to 53")]
    [InlineData("summary --week 2027-W53", "--week: 2027 has no week 53; its weeks are 1 to 52")]
    [InlineData("history", "history needs EXERCISE; see rackside history --help")]
    [InlineData("history sqaut", "no exercise is called \"sqaut\"; did you mean squat?")]
    [InlineData("history hollow hodl", "no exercise is called \"hollow hodl\"; did you mean hollow hold?")]
    [InlineData("history press", "\"press\" may be Barbell bench press or Standing barbell press; name one of them")]
    [InlineData("history squat --jsno", "there is no option --jsno; did you mean --json?")]
    [InlineData("plates 20 --for push-up", "--for: Push-up is not done with a bar and plates")]
    [InlineData("plates 20 --for croquet", "--for: no exercise is called \"croquet\"; write one such as bb-curl")]
    [InlineData("plates", "plates needs WEIGHT; see rackside plates --help")]
    [InlineData("plates heavy", "\"heavy\" is not a load; write a number such as 62.5, 62,5 or 135lb")]
    [InlineData("plates 1.000,5", "\"1.000,5\" is not a load; write a number such as 62.5, 62,5 or 135lb")]
    [InlineData("plates kg", "\"kg\" is not a load; write a number such as 62.5, 62,5 or 135lb")]
    [InlineData("plates -20", "there is no option -20; see rackside plates --help")]
    [InlineData("plates 60 70", "\"60 70\" is not a load; write a number such as 62.5, 62,5 or 135lb")]
    [InlineData("plan", "plan needs a command: check; see rackside plan --help")]
    [InlineData("plan chekc", "there is no command \"chekc\"; did you mean check?")]
    [InlineData("plan check", "check needs FILE; see rackside plan check --help")]
    public void A_mistyped_command_line_gets_one_sentence_and_64(string line, string sentence)
    {
        var ran = gym.On(11).Run(line);

        ran.ErrorLines.Should().Equal($"rackside: {sentence}");
        (ran.Code, ran.Out).Should().Be((64, ""));
    }

    [Theory]
    [InlineData("today", "Wed 11 Nov 2026: Skills day, about 32 min, for Ottoline Marsh")]
    [InlineData("summary", "week 46 of 2026, 9 to 15 Nov: 1 of 3 training days done")]
    [InlineData("forecast", "Working loads in the weeks to come, from Wed 11 Nov 2026")]
    [InlineData("history squat", "slot squat: 3 sessions")]
    [InlineData("calendar", null)]
    [InlineData("away", "no days away")]
    [InlineData("redate", null)]
    public void A_logbook_open_elsewhere_is_read_from_its_copy_of_a_moment_that_is_told(string line, string? first)
    {
        var free = gym.On(11).Run(line);
        using var elsewhere = LiteLogbook.Open(gym.Folder, NodaTime.Instant.FromUtc(2026, 11, 11, 18, 0));

        var ran = gym.On(11).Run(line);

        (ran.Code, ran.Out).Should().Be((0, free.Out));
        ran.Lines[0].Should().Be(first ?? ran.Lines[0]);
        ran.Error.ReplaceLineEndings(" ").Should().StartWith(
            "rackside: the logbook is open in another window; this is from its copy and journal, as of Mon 9 Nov 2026, ").And.EndWith(", its last entry ");
    }

    // Standard S23 of docs/screen.md.
    [Theory]
    [InlineData("away today")]
    [InlineData("redate 2026-11-09 2026-11-10")]
    [InlineData("sore squat")]
    [InlineData("known deadlift 60 8")]
    public void A_command_that_writes_is_told_with_75_where_the_logbook_is_open_elsewhere(string line)
    {
        using var elsewhere = LiteLogbook.Open(gym.Folder, NodaTime.Instant.FromUtc(2026, 11, 11, 18, 0));

        var ran = gym.On(11).Run(line);

        (ran.Code, ran.Out).Should().Be((75, ""));
        ran.ErrorLines.Should().Equal($"rackside: The logbook in {gym.Folder} is already open in another window on this machine. "
            + "Go on there, or close it first; rackside today, summary, calendar and history answer meanwhile.");
    }

    [Fact]
    public void Plates_are_told_while_the_logbook_is_open_elsewhere()
    {
        using var elsewhere = LiteLogbook.Open(gym.Folder, NodaTime.Instant.FromUtc(2026, 11, 11, 18, 0));

        gym.On(11).Run("plates 62.5").Code.Should().Be(0);
    }

    [Theory]
    [InlineData(2)]
    [InlineData(10)]
    [InlineData(11)]
    [InlineData(13)]
    public void No_line_of_text_is_wider_than_80_columns(int day)
    {
        foreach (var line in (string[])["today", "summary", "history squat", "history core", "history push-up-total", "plates 127.5", "--help", "history --help"])
        {
            gym.On(day).Run(line).Lines.Should().OnlyContain(l => l.Length <= 80, line);
        }
    }
}
