using NodaTime;
using NodaTime.Testing;
using RackSide.Files;
using RackSide.Logbook;
using RackSide.Pages;
using RackSide.Places;
using RackSide.Tests.Commands;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Sessions;
using RackSide.Visits;

namespace RackSide.Tests.Visits;

/// <summary>Two lifters of a household on one bar, in process, with a real logbook and a clock that only the test moves.</summary>
public sealed class SharedVisitTests : IDisposable
{
    private static readonly PageSize Size = new(80, 24);
    private readonly PassingFolder folder = new();
    private readonly FakeClock clock = new(Instant.FromUtc(2026, 11, 23, 18, 0));
    private IClock onTheWall = new FakeClock(NodaConstants.UnixEpoch);

    public SharedVisitTests()
    {
        File.WriteAllText(Places.GymFile, GymFile.Write(RackSide.Demo.Tollbooth.Rules(new LocalDate(2026, 11, 23))));
        using var logbook = LiteLogbook.Open(folder.Path, clock.GetCurrentInstant());
        logbook.Keep(new Lifter("ottoline", "Ottoline Marsh", MassUnit.Kilogram, clock.GetCurrentInstant()));
        logbook.Keep(new Lifter("bram", "Bram Okafor-Lind", MassUnit.Pound, clock.GetCurrentInstant()));
    }

    private Folders Places => new(folder.Path, folder.Path, "the test");

    public void Dispose() => folder.Dispose();

    [Fact]
    public void The_list_behind_todays_plan_offers_the_other_and_both_sessions_begin_with_one_key()
    {
        Stay(visit =>
        {
            Press(visit, "*");
            Shows(visit).Should().Contain("share the bar with Bram Okafor-Lind");
            Press(visit, "2");
            Shows(visit).Should().Contain("TWO ON ONE BAR").And.Contain("Ottoline Marsh: ").And.Contain("Bram Okafor-Lind: ");
            Press(visit, "E");
            Shows(visit).Should().Contain("OTTOLINE").And.Contain("Bram ready");
        });

        var both = Sessions();
        both.Should().HaveCount(2);
        both[0].SharedWith.Should().Be(both[1].Head.Id);
        both[1].SharedWith.Should().Be(both[0].Head.Id);
    }

    [Fact]
    public void Both_logs_are_kept_through_a_miss_a_stop_and_one_who_leaves()
    {
        Stay(
            visit =>
            {
                Begin(visit);
                Train(visit, () => Shared(visit).Both.All(s => s.Place.Work("squat").Any()));
                Until(visit, () => Shared(visit).InTurn.Phase is Lifting);
                clock.AdvanceSeconds(30);
                Press(visit, "3E");
            },
            with: "bram");
        var before = Sessions();
        before.Should().OnlyContain(s => !s.Closed && s.Sets.Count > 1);
        before.SelectMany(s => s.Sets).Count(s => s.Set is { Kind: SetKind.Working, Done: 3 }).Should().Be(1);

        Stay(visit =>
        {
            Shows(visit).Should().Contain("The bar is shared with Bram Okafor-Lind.");
            Press(visit, "E");
            Shared(visit).Alone.Should().BeFalse();
            Press(visit, "/*4");
            Shows(visit).Should().Contain("Bram has left the bar");
            Train(visit, () => Shared(visit).InTurn.Place.Work("squat").Count() == 5);
        });

        var (ottoline, bram) = (Sessions()[0], Sessions()[1]);
        ottoline.Sets.Count(s => s.Set is { Slot: "squat", Kind: SetKind.Working }).Should().Be(5);
        bram.Sets.Select(s => s.Set.Id).Should().Equal(before[1].Sets.Select(s => s.Set.Id));
        bram.SharedWith.Should().BeNull();
        ottoline.Facts.Concat(bram.Facts).Select(f => f.Id).Should().OnlyHaveUniqueItems();

        Stay(visit => Shows(visit).Should().Contain("This session was left open").And.NotContain("shared"));
        Stay(visit => Shows(visit).Should().Contain("This session was left open"), lifter: "bram");
    }

    [Fact]
    public void A_shared_session_left_open_is_closed_for_both()
    {
        Stay(Begin, with: "bram");
        Stay(visit => Press(visit, "5"));

        Sessions().Should().HaveCount(2).And.OnlyContain(s => s.Closed);
    }

    [Fact]
    public void Somebody_who_trains_already_is_joined_by_the_other()
    {
        Stay(visit =>
        {
            Press(visit, "E+");
            clock.AdvanceSeconds(30);
            Press(visit, "EE/8E");
        });
        Stay(
            visit =>
            {
                Shows(visit).Should().Contain("goes on with the session left open");
                Press(visit, "E");
                Shared(visit).Both[0].Place.Sets.Should().ContainSingle();
                Shared(visit).Both[1].Place.Sets.Should().BeEmpty();
            },
            with: "bram");
    }

    [Theory]
    [InlineData("nobody", "--with: nobody here is called \"nobody\"; here train: Ottoline Marsh, Bram Okafor-Lind")]
    [InlineData("ottoline", "--with: Ottoline Marsh is who trains; name another lifter")]
    public void Who_cannot_share_is_told_before_a_screen_is_shown(string with, string sentence)
    {
        var stay = () => Stay(_ => { }, with: with);

        stay.Should().Throw<Refusal>().WithMessage(sentence);
    }

    [Fact]
    public void On_a_rest_day_nobody_shares()
    {
        clock.AdvanceDays(1);
        var stay = () => Stay(_ => { }, with: "bram");

        stay.Should().Throw<Refusal>().WithMessage("--with: * has no strength day today; next is *");
    }

    private static TwoOnOneBar Shared(RackVisit visit) => visit.Shared!;

    private void Begin(RackVisit visit)
    {
        Press(visit, "E+");
        Shows(visit).Should().Contain("BRAM");
        Press(visit, "+");
    }

    /// <summary>Does the obvious next thing of whoever is in turn.</summary>
    private void Train(RackVisit visit, Func<bool> there)
    {
        for (var i = 0; i < 300 && !there(); i++)
        {
            clock.AdvanceSeconds(10);
            visit.Tick(onTheWall.GetCurrentInstant());
            if (Shared(visit).InTurn.Phase is Lifting or Asking)
            {
                clock.AdvanceSeconds(10);
                Press(visit, "E");
            }
        }

        there().Should().BeTrue();
    }

    private void Until(RackVisit visit, Func<bool> there)
    {
        for (var i = 0; i < 60 && !there(); i++)
        {
            clock.AdvanceSeconds(5);
            visit.Tick(onTheWall.GetCurrentInstant());
        }
    }

    private void Stay(Action<RackVisit> during, string? with = null, string? lifter = null)
    {
        using var gym = Gym.Open(Places, null, clock);
        onTheWall = gym.Clock;
        using var visit = new RackVisit(gym, lifter, with: with);
        during(visit);
    }

    private IReadOnlyList<SessionRecord> Sessions()
    {
        using var gym = Gym.Open(Places, null, clock);
        return [.. gym.Logbook.Lifters().SelectMany(l => gym.Logbook.Sessions(l.Key))];
    }

    private string Shows(RackVisit visit) => visit.Draw(Size, onTheWall.GetCurrentInstant()).Text;

    private void Press(RackVisit visit, string keys)
    {
        foreach (var key in keys)
        {
            clock.AdvanceMilliseconds(400);
            visit.Press(key == 'E' ? KeyPress.Enter : KeyPress.Of(key), onTheWall.GetCurrentInstant());
        }
    }
}
