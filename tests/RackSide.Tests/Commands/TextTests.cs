using NodaTime;
using RackSide.Logbook;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Tests.Commands;

/// <summary>What the commands print, as a lifter reads it.</summary>
[Collection(nameof(Tollbooth))]
public class TextTests(Tollbooth gym)
{
    private static readonly Instant Monday = Instant.FromUtc(2026, 11, 2, 18, 0);

    [Fact]
    public void Today_says_what_and_why_and_what_to_have_at_hand()
    {
        var lines = gym.On(13).Run("today").Out.ReplaceLineEndings("\n");

        lines.Should().StartWith("""
            Fri 13 Nov 2026: Strength day, about 60 min, for Ottoline Marsh
            why: Friday is a strength day

            Barbell back squat                   5x5        25 kg
              warm-up: 20 kg x 10
              rest 2 min
              why (all-met): all 5x5 done on Mon 9 Nov: 2.5 kg more, a big step (11 %)
              advice: a pair of 1 kg plates would make smaller steps

            """.ReplaceLineEndings("\n"));
        lines.Should().Contain("""
            Dumbbell curl                        3x11       pair of 2.5 kg
              rest 75 s; in turn with the others of "arms", 15 s to change over
            """.ReplaceLineEndings("\n"));
        lines.Should().Contain("Plates at hand: 2 x 2.5 kg.\nBefore you begin: safety bars set just under");
        lines.Should().EndWith("outrank the plan.\n\nnext: Mon 16 Nov, Strength day\n");
    }

    [Fact]
    public void A_rest_day_says_so_and_when_the_next_day_is() =>
        gym.On(10).Run("today").Lines.Should().Equal(
            "Tue 10 Nov 2026: rest day, for Ottoline Marsh",
            "why: you trained yesterday: a rest day comes between",
            "next: Wed 11 Nov, Skills day");

    [Fact]
    public void A_session_left_open_is_told()
    {
        using var folder = new PassingFolder();
        using (var logbook = LiteLogbook.Open(folder.Path, Monday))
        {
            logbook.Keep(new Lifter("first", "Bram Okafor-Lind", MassUnit.Pound, Monday));
            logbook.Begin(new SessionHead
            {
                Id = logbook.NextId(),
                Begun = Monday,
                Date = new LocalDate(2026, 11, 2),
                Zone = "Europe/London",
                Lifter = "first",
                Plan = "a plan",
                DayKey = "strength-day",
                DayName = "Strength day",
                Kind = DayKind.Strength,
                Prescriptions = [],
            });
        }

        CommandLine.In(folder.Path, "2026-11-02T19:00").Run("today").Lines
            .Should().Contain("A session begun on Mon 2 Nov is still open; rackside goes on with it.");
    }

    [Fact]
    public void A_day_that_is_done_says_so() =>
        gym.On(9).Run("today").Lines.Should().Equal(
            "Mon 9 Nov 2026: done, for Ottoline Marsh",
            "why: today's training is done",
            "next: Wed 11 Nov, Skills day");

    [Fact]
    public void History_tells_each_session_set_by_set_with_its_why_line() =>
        gym.On(11).Run("history squat").Lines.Should().Equal(
            "slot squat: 3 sessions",
            "Mon 2 Nov 2026, Barbell back squat: asked 5x5, all met",
            "  20 kg x 7, 7, 7, 7, 7",
            "  why then (first-time): first time: start with the empty bar, 20 kg, and learn",
            "  the motion",
            "Fri 6 Nov 2026, Barbell back squat: asked 5x5, 4 of 5 sets met",
            "  22.5 kg x 7, 7, 7, 7 (form slipped), 7",
            "  why then (all-met): all 5x5 done on Mon 2 Nov: 2.5 kg more, a big step (13 %)",
            "Mon 9 Nov 2026, Barbell back squat: asked 5x5, all met",
            "  22.5 kg x 7, 7, 7, 7, 7",
            "  why then (form-slipped): form slipped on Fri 6 Nov: same load again, honest",
            "  reps first",
            "Heaviest so far, Barbell back squat:",
            "  22.5 kg x 7 (Fri 6 Nov 2026)",
            "One rep, estimated from the last session: at least 26 to 28 kg, the span of",
            "seven formulas. Nothing to try without a qualified coach.");

    [Theory]
    [InlineData("history core", "  30, 30, 30 s")]
    [InlineData("history push-up", "  40 reps")]
    [InlineData("history db-curl", "  pair of 2.5 kg x 8, 8, 8")]
    [InlineData("history overhead-press", "  20 kg x 8, 8, 5")]
    public void Holds_totals_and_dumbbells_are_told_in_their_own_words(string line, string sets) =>
        gym.On(11).Run(line).Lines.Should().Contain(sets);

    [Fact]
    public void A_week_is_told_as_it_stood_on_its_sunday()
    {
        var then = gym.On(11).Run("summary --week 2026-W45").Lines;

        then.Should().Contain("done: Mon Strength day, Wed Skills day, Fri Strength day");
        then.Should().Contain("back squat      22.5 kg next  22.5 kg: same (from 20)", "the 9th had not come yet");
        then.Should().Contain("body weight, mean of the week: 72.4 kg");
        then[^1].Should().Be("next: Mon 9 Nov, Strength day");
    }

    [Fact]
    public void A_load_is_shown_on_the_sleeve() =>
        gym.On(11).Run("plates 67.5").Lines.Should().Equal(
            "loadable: 67.5 kg is 20 + 2.5 + 1.25 on each side of the bar",
            "67.5 kg on the 20 kg bar; each side, inside to outside: 20 kg, 2.5 kg, 1.25 kg",
            "  =====|[20][2.5][1.25]--");

    [Fact]
    public void A_load_that_cannot_be_made_shows_the_nearest_two() =>
        gym.On(11).Run("plates 61").Lines.Should().Equal(
            "not loadable: 61 needs a 0.5 pair; 60 or 62.5",
            "60 kg on the 20 kg bar; each side, inside to outside: 20 kg",
            "  =====|[20]--",
            "62.5 kg on the 20 kg bar; each side, inside to outside: 20 kg, 1.25 kg",
            "  =====|[20][1.25]--");

    [Fact]
    public void No_control_character_of_the_logbook_or_a_plan_reaches_the_terminal()
    {
        using var folder = new PassingFolder();
        var plan = folder.File("plan.yaml", RackSide.Files.PlanFile.DefaultText.Replace("name: Strength day", "name: \"Strength \\e[31mday\"", StringComparison.Ordinal));

        var ran = gym.On(13).Run($"today --plan {plan}");

        ran.Lines[0].Should().Contain("Strength ?[31mday");
        ran.Out.Should().NotContain("\u001b");
    }
}
