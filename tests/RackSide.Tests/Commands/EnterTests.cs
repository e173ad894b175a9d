using NodaTime;
using RackSide.Commands;
using RackSide.Logbook;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Tests.Commands;

/// <summary>A session from paper: what a line means, and what comes into the logbook.</summary>
[Collection(nameof(Tollbooth))]
public class EnterTests(Tollbooth gym)
{
    private static readonly Prescription Squat = Asked(new Scheme.Fixed(5, 5), [5, 5, 5, 5, 5], Mass.Kg(60));

    [Theory]
    [InlineData("", "5 5 5 5 5", null)]
    [InlineData("  ", "5 5 5 5 5", null)]
    [InlineData("-", "", null)]
    [InlineData("5 5 5 4 3", "5 5 5 4 3", null)]
    [InlineData("5,5,4", "5 5 4", null)]
    [InlineData("5 5 5 5~ 4", "5 5 5 5~ 4", null)]
    [InlineData("57.5: 5 5 5 5 5", "5 5 5 5 5", 57.5)]
    [InlineData("57,5: 5 5", "5 5", 57.5)]
    public void A_line_says_what_was_done(string typed, string sets, double? load)
    {
        var (line, refusal) = SheetLine.Read(typed, Squat);

        refusal.Should().BeNull();
        string.Join(' ', line!.Sets.Select(s => $"{s.Done}{(s.Slipped ? "~" : "")}")).Should().Be(sets);
        line.Load.Should().Be(load is { } kg ? Mass.Kg((decimal)kg) : null);
    }

    [Theory]
    [InlineData("five", "\"five\" cannot be read; type counts such as 5 5 4, or - or ENTER")]
    [InlineData("5 5 5 5 5 5", "6 sets are told and 5 were asked for")]
    [InlineData("x: 5", "\"x\" is no load; type one such as 22.5 before the colon")]
    [InlineData("60:", "\"60:\" cannot be read; type counts such as 5 5 4, or - or ENTER")]
    [InlineData("5 -1", "\"5 -1\" cannot be read; type counts such as 5 5 4, or - or ENTER")]
    public void What_cannot_be_read_is_asked_again_with_a_reason(string typed, string refusal) =>
        SheetLine.Read(typed, Squat).Should().Be(((SheetLine?)null, (string?)refusal));

    [Fact]
    public void A_total_takes_as_many_shares_as_were_done() =>
        SheetLine.Read("10 10 10 5 5 5 5", Asked(new Scheme.Total(50), [50], null)).Line!.Sets.Should().HaveCount(7);

    [Fact]
    public void A_sheet_comes_into_the_logbook_and_earns_what_it_would_have_at_the_rack()
    {
        using var copy = gym.Copy();
        var here = CommandLine.In(copy.Path, "2026-11-14T09:00");

        // Friday the 13th from paper, on Saturday: squats all done, rows at other reps, the rest left out; 72.6 kg.
        var ran = here.Typing("\n6 6 5\n-\n-\n-\n-\n-\n-\n72,6\n").Run("enter 2026-11-13");

        ran.Code.Should().Be(0, ran.Error);
        using var logbook = LiteLogbook.Open(copy.Path, Instant.FromUtc(2026, 11, 14, 10, 0));
        var session = logbook.Sessions("first")[^1];
        (session.Date, session.Closed, session.Sets.Count).Should().Be((new LocalDate(2026, 11, 13), true, 8));
        session.Sets.Take(5).Should().OnlyContain(s => s.OnTarget && s.Set.Load == Mass.Kg(25));
        session.LeftOut.Should().HaveCount(6);
        logbook.WeighIns("first")[^1].Should().Be(new WeighIn(new LocalDate(2026, 11, 13), Mass.Kg(72.6m)));
    }

    [Theory]
    [InlineData("\n\n")]
    [InlineData("\n\nq\n")]
    public void A_sheet_left_in_the_middle_writes_nothing(string typed)
    {
        using var copy = gym.Copy();

        var ran = CommandLine.In(copy.Path, "2026-11-13T20:00").Typing(typed).Run("enter");

        (ran.Code, ran.ErrorLines[^1]).Should().Be((64, "rackside: stopped before the sheet was done; nothing was written"));
        using var logbook = LiteLogbook.Open(copy.Path, Instant.FromUtc(2026, 11, 14, 10, 0));
        logbook.Sessions("first").Should().HaveCount(4);
    }

    [Theory]
    [InlineData("enter 2026-11-09", "Strength day of Mon 9 Nov 2026 is in the logbook already; only a session after the newest can be entered")]
    [InlineData("enter 2026-12-24", "Thu 24 Dec 2026 is yet to come; a session has a date that has been")]
    [InlineData("enter --day swimming", "--day: the plan has no day \"swimming\"; its days are strength-day or skills-day")]
    public void What_cannot_be_entered_is_refused_before_anything_is_asked(string line, string sentence)
    {
        var ran = gym.On(13).Run(line);

        (ran.Code, string.Join(' ', ran.ErrorLines)).Should().Be((64, $"rackside: {sentence}"));
    }

    private static Prescription Asked(Scheme scheme, IReadOnlyList<int> targets, Mass? load) => new()
    {
        Slot = "slot",
        Motion = Motion.Squat,
        Exercise = "back-squat",
        Scheme = scheme,
        Targets = targets,
        Load = load,
        Rest = Duration.FromMinutes(2),
        Why = new Reason("test", "test"),
    };
}
