using NodaTime;
using NodaTime.Testing;
using RackSide.Pages;
using RackSide.Places;
using RackSide.Tests.Commands;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Visits;

namespace RackSide.Tests.Visits;

/// <summary>A stay beside the rack from the set-up on, in process, with a real logbook and a clock that only the test moves.</summary>
public sealed class RackVisitTests : IDisposable
{
    private static readonly PageSize Size = new(80, 24);
    private readonly PassingFolder folder = new();
    private readonly FakeClock clock = new(Instant.FromUtc(2026, 11, 23, 12, 0));

    // The gym's clock goes by the test's, and may have been told another date.
    private IClock onTheWall = new FakeClock(NodaConstants.UnixEpoch);

    public void Dispose() => folder.Dispose();

    [Fact]
    public void ENTER_all_the_way_sets_up_a_gym_that_trains_today()
    {
        Stay(visit =>
        {
            SetUp(visit);
            Shows(visit).Should().Contain("STRENGTH DAY  Mon 23 Nov").And.Contain("first time: start with the empty bar");
        });

        folder.Entries.Should().Contain(e => e.EndsWith("gym.yaml", StringComparison.Ordinal));
        Stay(visit => Shows(visit).Should().Contain("STRENGTH DAY  Mon 23 Nov", "the set-up is asked once"));
    }

    [Fact]
    public void A_session_left_open_goes_on_at_its_set_and_can_be_closed_as_it_is()
    {
        Stay(visit =>
        {
            SetUp(visit);
            BeginAndLift(visit);
            Press(visit, "/8");
            Press(visit, "E");
            visit.Ended.Should().BeTrue();
        });

        Stay(visit =>
        {
            Shows(visit).Should().Contain("working set 2 of 5").And.Contain("left open");
            Press(visit, "E");
            Shows(visit).Should().Contain("REST");
        });

        Stay(visit =>
        {
            Press(visit, "5");
            Shows(visit).Should().Contain("DONE FOR TODAY");
        });
        Sessions().Should().ContainSingle().Which.Closed.Should().BeTrue();
        Sessions()[0].LeftOut.Should().HaveCount(8);
    }

    [Fact]
    public void The_kit_is_changed_on_the_screen_and_today_goes_by_what_there_is_now()
    {
        FirstDay();
        clock.AdvanceDays(1);
        var file = Path.Combine(folder.Path, "gym.yaml");
        File.AppendAllText(file, "# Ottoline wrote this.\n");

        Stay(visit =>
        {
            Press(visit, "62");
            Shows(visit).Should().Contain("THIS GYM'S KIT").And.Contain("bar 20 kg");
            Press(visit, "1132.5E//");
            Shows(visit).Should().Contain("not written yet");
            Press(visit, "/1");
            Shows(visit).Should().Contain("REST DAY");
        });

        File.ReadAllText(file).Should().Contain("mass: 20 kg").And.Contain("# Ottoline wrote this.");
        File.ReadAllText(file).Should().Contain("collars: 2.5 kg");
        File.Exists(file + ".old").Should().BeTrue();
    }

    [Fact]
    public void A_kit_file_broken_by_hand_meanwhile_is_not_written_over()
    {
        FirstDay();
        clock.AdvanceDays(1);
        var file = Path.Combine(folder.Path, "gym.yaml");

        Stay(visit =>
        {
            Press(visit, "62223/");
            var broken = File.ReadAllText(file).Replace("sound: on", "sound: loud", StringComparison.Ordinal);
            File.WriteAllText(file, broken);
            Press(visit, "/1");
            Shows(visit).Should().Contain("Not written. gym.yaml:").And.Contain("not written yet");
            File.ReadAllText(file).Should().Be(broken);
            Press(visit, "/3");
            Shows(visit).Should().Contain("REST DAY");
        });
    }

    [Fact]
    public void Settings_are_changed_over_a_session_whose_clock_goes_on_and_are_kept()
    {
        Stay(visit =>
        {
            SetUp(visit);
            BeginAndLift(visit);
            Shows(visit).Should().Contain(" REST ");
            Press(visit, "/*5");
            Shows(visit).Should().Contain("SETTINGS");
            Press(visit, "14");
            clock.AdvanceSeconds(200);
            visit.Tick(clock.GetCurrentInstant()).Should().Be(Bell.None, "the bell was just turned off");
            Press(visit, "/");
            Shows(visit).Should().Contain(" LIFT ");
        });

        var file = File.ReadAllText(folder.Entries.Single(e => e.EndsWith("gym.yaml", StringComparison.Ordinal)));
        file.Should().Contain("\nlook: grey\n").And.Contain("\nsound: off\n").And.Contain("# House rules of this gym.");
    }

    [Fact]
    public void A_key_given_to_a_verb_works_at_once_and_not_where_letters_are_typed()
    {
        Stay(visit =>
        {
            SetUp(visit);
            var file = folder.Entries.Single(e => e.EndsWith("gym.yaml", StringComparison.Ordinal));
            File.AppendAllText(file, "keys: { menu: [k], accept: [g] }\n");
        });

        Stay(visit =>
        {
            Press(visit, "g");
            Shows(visit).Should().Contain("BEFORE THE FIRST SET");
            Press(visit, "k");
            Shows(visit).Should().Contain("MENU");
            Press(visit, "*29kgm");
            Shows(visit).Should().Contain("> [kgm");
            Press(visit, "E");
            Press(visit, "m");
            Shows(visit).Should().NotContain("MENU");
        });
    }

    [Fact]
    public void On_a_rest_day_a_check_in_is_kept_and_the_week_and_the_body_can_be_looked_at()
    {
        FirstDay();
        clock.AdvanceDays(1);

        Stay(visit =>
        {
            Shows(visit).Should().Contain("REST DAY  Tue 24 Nov").And.Contain("Wed 25 Nov, Skills day");
            Press(visit, "2");
            Press(visit, "72,4E7.5EEE2");
            Shows(visit).Should().Contain("check-in written");
            Press(visit, "3");
            Shows(visit).Should().Contain("WEEK 48").And.Contain("72.4 kg");
            Press(visit, "E");
            Shows(visit).Should().Contain("REST DAY");
            Press(visit, "61");
            Shows(visit).Should().Contain("BODY  Tue 24 Nov").And.Contain("slept 7 h 30, a little sore").And.Contain("not told yet: height");
            Press(visit, "2");
            Press(visit, "1168E218.E");
            Shows(visit).Should().Contain("Type the year you were born in");
            Press(visit, "/38");
            Shows(visit).Should().Contain("not told yet: age");
            Press(visit, "27");
            Press(visit, "8");
            Shows(visit).Should().Contain("REST DAY").And.NotContain("body,");
            Press(visit, "E");
            visit.Ended.Should().BeTrue();
        });
    }

    [Fact]
    public void An_extra_session_on_a_rest_day_is_given_with_a_caution()
    {
        FirstDay();
        clock.AdvanceDays(1);

        Stay(visit =>
        {
            Press(visit, "1");
            Shows(visit).Should().Contain("asked for: you trained yesterday; keep it light");
            Press(visit, "E");
            Shows(visit).Should().Contain("BEFORE THE FIRST SET");
        });
    }

    [Fact]
    public void Two_strength_days_on_the_second_is_heavier_and_says_why()
    {
        Stay(visit =>
        {
            SetUp(visit);
            Press(visit, "E");
            Press(visit, "+");
            FindLoad(visit);
            for (var set = 0; set < 5; set++)
            {
                clock.AdvanceSeconds(60);
                Press(visit, "7E");
                clock.AdvanceSeconds(125);
                visit.Tick(clock.GetCurrentInstant());
            }

            Press(visit, "/53");
            Press(visit, "E");
        });
        clock.AdvanceDays(4);

        Stay(visit => Shows(visit).Should().MatchRegex(@"Barbell back squat +5x5 +22\.5 kg").And.Contain("all 5x5 done on Mon 23 Nov: 2.5 kg more"));
    }

    [Fact]
    public void Days_away_are_told_on_the_screen_and_taken_back_there()
    {
        FirstDay();
        clock.AdvanceDays(1);

        Stay(visit =>
        {
            Press(visit, "5");
            Press(visit, "1");
            Press(visit, "25.11E");
            Press(visit, "6.12E");
            Press(visit, "1");
            Shows(visit).Should().Contain("written").And.Contain("take back: Wed 25 Nov to Sun 6 Dec 2026, holiday");
            Press(visit, "/");
            Shows(visit).Should().Contain("Next: Mon 7 Dec, Strength day");
            Press(visit, "4");
            Shows(visit).Should().Contain("away");
            Press(visit, "/");
            Press(visit, "5");
            Press(visit, "2");
            Shows(visit).Should().Contain("taken back");
            Press(visit, "/");
            Shows(visit).Should().Contain("Next: Wed 25 Nov, Skills day");
        });
    }

    [Fact]
    public void With_less_time_the_plan_is_shown_shorter_can_be_had_back_and_keeps_what_is_left_out()
    {
        Stay(visit =>
        {
            SetUp(visit);
            Press(visit, "*1");
            Press(visit, "35E");
            Shows(visit).Should().Contain("no time for").And.Contain("about 3");
            Press(visit, "*2");
            Shows(visit).Should().NotContain("no time for");
            Press(visit, "*1");
            Press(visit, "35E");
            BeginAndLift(visit);
            Press(visit, "/53");
            Press(visit, "E");
        });

        var session = Sessions().Should().ContainSingle().Which;
        session.Head.Prescriptions.Should().HaveCount(8);
        session.Head.Prescriptions.Should().Contain(p => p.SetsLeftOut > 0);
        session.Facts.Take(3).Should().AllBeOfType<SlotLeftOut>();
        session.LeftOut.Should().Contain("core");
    }

    [Fact]
    public void A_page_left_standing_over_midnight_shows_the_new_day_and_a_session_keeps_its_own()
    {
        Stay(visit =>
        {
            SetUp(visit);
            clock.Reset(Instant.FromUtc(2026, 11, 24, 0, 30));
            visit.Tick(clock.GetCurrentInstant());
            Shows(visit).Should().Contain("Tue 24 Nov");
        });
        clock.Reset(Instant.FromUtc(2026, 11, 25, 23, 50));
        Stay(visit =>
        {
            BeginAndLift(visit);
            clock.AdvanceMinutes(30);
            visit.Tick(clock.GetCurrentInstant());
            Shows(visit).Should().NotContain("Thu 26 Nov");
            Press(visit, "/53");
            Press(visit, "E");
        });
        Sessions().Should().ContainSingle().Which.Head.Date.Should().Be(new LocalDate(2026, 11, 25));
    }

    [Fact]
    public void A_clock_that_wakes_in_the_past_is_told_the_date_before_anything_is_dated_by_it()
    {
        FirstDay();
        clock.Reset(Instant.FromUtc(1970, 1, 1, 0, 5));

        Stay(visit =>
        {
            Shows(visit).Should().Contain("WHAT IS THE DATE?").And.Contain("the last entry in the logbook is of Mon");
            Press(visit, "27.11E");
            Shows(visit).Should().Contain("STRENGTH DAY  Fri 27 Nov");
            BeginAndLift(visit);
            Press(visit, "/53");
            Press(visit, "E");
        });

        clock.Reset(Instant.FromUtc(2026, 11, 28, 12, 0));
        Sessions().Select(s => s.Date).Should().Equal(new LocalDate(2026, 11, 23), new LocalDate(2026, 11, 27));
        Sessions()[1].Facts.Should().OnlyContain(f => f.At.InUtc().Date == new LocalDate(2026, 11, 27));
        Stay(visit => Shows(visit).Should().Contain("REST DAY  Sat 28 Nov"));
    }

    [Fact]
    public void A_first_start_in_1970_asks_for_the_date_before_the_set_up()
    {
        clock.Reset(NodaConstants.UnixEpoch);

        Stay(visit =>
        {
            Shows(visit).Should().Contain("which cannot be");
            Press(visit, "23.11.2026E");
            SetUp(visit);
            Shows(visit).Should().Contain("STRENGTH DAY  Mon 23 Nov");
        });
    }

    [Fact]
    public void A_load_found_by_a_search_is_where_the_next_session_goes_on()
    {
        Stay(visit =>
        {
            SetUp(visit);
            Press(visit, "E");
            Press(visit, "+");
            FindLoad(visit, "25", "15", "5");
            Shows(visit).Should().Contain("first time: 37.5 kg left 5 good reps");
            for (var set = 0; set < 5; set++)
            {
                clock.AdvanceSeconds(60);
                Press(visit, "E");
                clock.AdvanceSeconds(125);
                visit.Tick(clock.GetCurrentInstant());
            }

            Press(visit, "/53");
            Press(visit, "E");
        });
        clock.AdvanceDays(4);

        Stay(visit => Shows(visit).Should().MatchRegex(@"Barbell back squat +5x5 +40 kg").And.Contain("all 5x5 done on Mon 23 Nov: 2.5 kg more"));
    }

    [Fact]
    public void A_set_told_on_todays_page_is_begun_from_and_a_load_that_cannot_be_is_refused()
    {
        Stay(visit =>
        {
            SetUp(visit);
            Press(visit, ".");
            Press(visit, "625E");
            Shows(visit).Should().Contain("tell a load over 0 and up to 300 kg, the bar counted");
            Press(visit, "/");
            Shows(visit).Should().Contain("ENTER begin").And.Contain("start with the empty bar", "nothing was kept");

            Press(visit, ".");
            Press(visit, "62,5E");
            Shows(visit).Should().Contain("62.5 kg for how many reps?");
            Press(visit, "13E");
            Shows(visit).Should().Contain("tell a set of 1 to 12 reps");
        });

        Stay(visit =>
        {
            Press(visit, ".62,5E8E");
            Shows(visit).Should().MatchRegex(@"Barbell back squat +5x5 +60 kg").And.Contain("you know 62.5 kg x 8, so 60 kg");
            Press(visit, "E+");
            Shows(visit).Should().Contain("warm-up 1 of 4");
        });
    }

    private void FirstDay() => Stay(visit =>
    {
        SetUp(visit);
        BeginAndLift(visit);
        Press(visit, "/53");
        Press(visit, "E");
        visit.Ended.Should().BeTrue();
    });

    private void BeginAndLift(RackVisit visit)
    {
        Press(visit, "E");
        Press(visit, "+");
        FindLoad(visit);
        clock.AdvanceSeconds(60);
        Press(visit, "E");
        Shows(visit).Should().Contain("REST");
    }

    /// <summary>Search sets of the exercise in hand, each with its answer, until the working sets; ENTER alone stays at the lightest.</summary>
    private void FindLoad(RackVisit visit, params string[] answers)
    {
        if (!Shows(visit).Contains("finding the load", StringComparison.Ordinal))
        {
            return;
        }

        foreach (var answer in answers.DefaultIfEmpty(""))
        {
            clock.AdvanceSeconds(60);
            Press(visit, "E");
            Shows(visit).Should().Contain("HOW MANY LEFT?");
            Press(visit, answer + "E");
        }

        clock.AdvanceSeconds(125);
        visit.Tick(clock.GetCurrentInstant());
        Shows(visit).Should().Contain("working set 1 of 5");
    }

    private void SetUp(RackVisit visit)
    {
        for (var page = 1; page <= 9; page++)
        {
            Shows(visit).Should().Contain($"page {page} of 9");
            Press(visit, "E");
        }
    }

    private void Stay(Action<RackVisit> during)
    {
        using var gym = Gym.Open(new Folders(folder.Path, folder.Path, "the test"), null, clock);
        onTheWall = gym.Clock;
        using var visit = new RackVisit(gym, null);
        during(visit);
    }

    private IReadOnlyList<SessionRecord> Sessions()
    {
        using var gym = Gym.Open(new Folders(folder.Path, folder.Path, "the test"), null, clock);
        return gym.Logbook.Sessions(gym.Lifter()!.Key);
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
