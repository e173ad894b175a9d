using NodaTime;
using NodaTime.Testing;
using RackSide.Files;
using RackSide.Kiosk;
using RackSide.Logbook;
using RackSide.Pages;
using RackSide.Pages.Settings;
using RackSide.Places;
using RackSide.Tests.Commands;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Tests.Kiosk;

/// <summary>A household at one rack, in process, with a real logbook and a clock that only the test moves.</summary>
public sealed class KioskVisitTests : IDisposable
{
    private static readonly PageSize Size = new(80, 24);
    private readonly PassingFolder folder = new();
    private readonly FakeClock clock = new(Instant.FromUtc(2026, 11, 23, 12, 0));
    private int ticks;

    public KioskVisitTests()
    {
        folder.File("gym.yaml", GymFile.Write(new HouseRules(KitDefaults.For(MassUnit.Kilogram), [IsoDayOfWeek.Monday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Friday], Sound: true)));
        using var gym = Gym();
        gym.Logbook.Keep(new Lifter("first", "Ottoline Marsh", MassUnit.Kilogram, clock.GetCurrentInstant() - Duration.FromDays(2)));
        gym.Logbook.Keep(new Lifter("second", "Bram Okafor-Lind", MassUnit.Pound, clock.GetCurrentInstant() - Duration.FromDays(1)));
    }

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_digit_takes_a_name_and_leaving_comes_back_to_the_names() => Stay(kiosk =>
    {
        Shows(kiosk).Should().Contain("WHO TRAINS?").And.MatchRegex("1  Ottoline Marsh +Strength day").And.MatchRegex("2  Bram Okafor-Lind +Strength day");
        Press(kiosk, "2");
        Shows(kiosk).Should().Contain("STRENGTH DAY  Mon 23 Nov");
        Press(kiosk, "/");
        Shows(kiosk).Should().Contain("WHO TRAINS?");
        kiosk.Ended.Should().BeFalse("there is nothing behind it");
    });

    [Fact]
    public void A_session_that_nobody_touches_is_kept_and_the_names_come_back()
    {
        Stay(kiosk =>
        {
            Press(kiosk, "2E+");
            Pass(kiosk, Duration.FromMinutes(14));
            Shows(kiosk).Should().NotContain("WHO TRAINS?");
            Pass(kiosk, Duration.FromMinutes(1));
            Shows(kiosk).Should().MatchRegex("2  Bram Okafor-Lind +left open, Mon 23 Nov");
            Press(kiosk, "1");
            Shows(kiosk).Should().Contain("STRENGTH DAY", "another may train meanwhile");
            Press(kiosk, "/2");
            Shows(kiosk).Should().Contain("left open").And.Contain("Barbell back squat, finding the load, set 1");
        });

        using var gym = Gym();
        gym.Logbook.Open("second").Should().NotBeNull();
    }

    [Fact]
    public void A_PIN_is_asked_for_before_anything_of_a_lifter_is_shown_and_going_away_does_not_let_go_of_the_brake()
    {
        Stay(kiosk =>
        {
            Press(kiosk, "/22");
            Shows(kiosk).Should().Contain("LIFTER  Bram Okafor-Lind");
            Press(kiosk, "3");
            Press(kiosk, "25802580");
            Shows(kiosk).Should().MatchRegex("PIN +asked for");
        });

        Stay(kiosk =>
        {
            Press(kiosk, "2");
            Shows(kiosk).Should().Contain("PIN of Bram Okafor-Lind?").And.NotContain("STRENGTH");
            Press(kiosk, "000000010002");
            Press(kiosk, "/2");
            Shows(kiosk).Should().Contain("Too many wrong PINs");
            Pass(kiosk, Duration.FromSeconds(10));
            Press(kiosk, "2580");
            Shows(kiosk).Should().Contain("STRENGTH DAY");
            Press(kiosk, "/");
            Press(kiosk, "/22");
            Shows(kiosk).Should().Contain("PIN of Bram", "the settings are behind it too");
        });

        using var gym = Gym();
        gym.Lifter("second")!.Pin.Should().StartWith("pbkdf2-sha256:600000:").And.NotContain("2580");
    }

    [Fact]
    public void Name_unit_and_plan_are_changed_on_the_pad_and_kept()
    {
        Directory.CreateDirectory(Path.Combine(folder.Path, "plans"));
        folder.File("plans/light.yaml", PlanFile.DefaultText.Replace("\nname: ", "\nname: light ", StringComparison.Ordinal));
        Stay(kiosk =>
        {
            Press(kiosk, "/222");
            Shows(kiosk).Should().MatchRegex("unit +kilograms");
            Press(kiosk, "4");
            Shows(kiosk).Should().MatchRegex("plan +light");
            Press(kiosk, "1................++*E");
            Shows(kiosk).Should().Contain("LIFTER  Ba");
            Press(kiosk, "555");
            Shows(kiosk).Should().MatchRegex("look +high contrast");
            kiosk.Look.Should().Be("contrast", "it is seen at once");
            Looks.Of(null, kiosk.Look).Tint.Should().Be(Tint.Contrast);
            Looks.Of(null, "a look of a later version").Tint.Should().Be(Tint.Hues);
            Press(kiosk, "6");
            kiosk.Look.Should().BeNull("the names have the gym's own look");
            Shows(kiosk).Should().MatchRegex("2  Ba +Strength day");
        });

        using var gym = Gym();
        var bram = gym.Lifter("second")!;
        (bram.Name, bram.Unit, bram.Plan, bram.Look).Should().Be(("Ba", MassUnit.Kilogram, "light", "contrast"));
        gym.TrainBy(bram).Should().BeNull();
        gym.Plan.Name.Should().StartWith("light ");
        gym.TrainBy(gym.Lifter("first")!).Should().BeNull();
        gym.Plan.Name.Should().NotStartWith("light ");
        gym.TrainBy(bram with { Plan = "gone" }).Should().Contain("Ba's plan gone cannot be used, so the gym's is");
        gym.Plan.Name.Should().NotStartWith("light ");
    }

    [Fact]
    public void Somebody_new_joins_with_the_pad_alone_and_the_gym_stays_as_it_is()
    {
        var rules = File.ReadAllText(Path.Combine(folder.Path, "gym.yaml"));
        Stay(kiosk =>
        {
            Press(kiosk, "/1");
            for (var page = 1; page <= 5; page++)
            {
                Shows(kiosk).Should().Contain($"page {page} of 5");
                Press(kiosk, page == 2 ? "++*E" : "E");
            }

            Shows(kiosk).Should().Contain("STRENGTH DAY");
            Press(kiosk, "/");
            Shows(kiosk).Should().MatchRegex("3  Ba +Strength day");
        });

        using var gym = Gym();
        gym.Logbook.Lifters().Select(l => l.Key).Should().Equal("first", "second", "lifter-3");
        File.ReadAllText(Path.Combine(folder.Path, "gym.yaml")).Should().Be(rules);
    }

    [Fact]
    public void Shutting_down_is_the_only_way_out_and_every_tick_is_told_to_whoever_watches() => Stay(kiosk =>
    {
        Pass(kiosk, Duration.FromSeconds(1));
        ticks.Should().Be(1);
        Press(kiosk, "/4");
        Shows(kiosk).Should().Contain("SHUT DOWN?");
        kiosk.ShutDown.Should().BeFalse();
        Press(kiosk, "1");
        (kiosk.ShutDown, kiosk.Ended).Should().Be((true, true));
    });

    [Fact]
    public void Two_train_on_one_bar_from_the_names_and_who_cannot_is_told_why()
    {
        Stay(kiosk =>
        {
            Press(kiosk, "/311");
            Shows(kiosk).Should().Contain("WHO TRAINS?").And.Contain("name another lifter");
            Press(kiosk, "/312");
            Shows(kiosk).Should().Contain("Ottoline Marsh").And.Contain("Bram Okafor-Lind").And.NotContain("WHO TRAINS?");
        });
        clock.AdvanceDays(1);
        Stay(kiosk =>
        {
            Press(kiosk, "/312");
            Shows(kiosk).Should().Contain("WHO TRAINS?").And.Contain("has no strength day today");
        });
    }

    [Fact]
    public void A_rack_where_nobody_has_joined_begins_with_the_set_up_and_can_still_be_shut_down()
    {
        using var empty = new PassingFolder();
        using var gym = RackSide.Gym.Open(new Folders(empty.Path, empty.Path, "the test"), null, clock);
        using var kiosk = new KioskVisit(gym, KioskSettings.Read(_ => null), () => { });
        Shows(kiosk).Should().Contain("page 1 of 9");
        Press(kiosk, "q2");
        Shows(kiosk).Should().Contain("SHUT DOWN?");
        Press(kiosk, "2");
        Shows(kiosk).Should().Contain("page 1 of 9");
    }

    [Fact]
    public void A_forgotten_PIN_is_removed_from_a_command_line_and_no_other()
    {
        using (var gym = Gym())
        {
            gym.Logbook.Keep(gym.Lifter("second")! with { Pin = PinProof.Of("2580") });
        }

        var here = CommandLine.In(folder.Path, "2026-11-23T12:00");
        here.Run("lifters").Lines.Should().Equal("Ottoline Marsh    kg  no PIN  plan: the gym's own", "Bram Okafor-Lind  lb  PIN     plan: the gym's own");
        here.Run("lifters --json").Out.Should().Contain("\"pin\": true").And.NotContain("pbkdf2");
        here.Run("lifters --remove-pin Ottoline").ErrorLines.Should().Equal("rackside: --remove-pin: Ottoline Marsh has no PIN");
        here.Run("lifters --remove-pin Bram").Lines[0].Should().Be("the PIN of Bram Okafor-Lind is removed");
        here.Run("lifters").Lines.Should().OnlyContain(l => l.Contains("no PIN", StringComparison.Ordinal));
    }

    [Fact]
    public void A_stick_takes_a_backup_and_gives_it_back_and_the_logbook_of_now_is_kept()
    {
        using var stick = new PassingFolder();
        Stay(
            kiosk =>
            {
                Press(kiosk, "/4");
                Shows(kiosk).Should().Contain("No backup is on it yet.").And.NotContain("restore from it").And.NotContain("safe to pull");
                Press(kiosk, "1");
                SpinWait.SpinUntil(() => Ticked(kiosk).Contains("read back and found whole", StringComparison.Ordinal), TimeSpan.FromSeconds(20)).Should().BeTrue();
            },
            stick.Path);
        stick.Entries.Select(Path.GetFileName).Should().BeEquivalentTo("logbook-2026-11-23.db", "gym.yaml");

        using (var gym = Gym())
        {
            gym.Logbook.Keep(new Lifter("third", "Juno Petrov", MassUnit.Kilogram, clock.GetCurrentInstant()));
        }

        Stay(
            kiosk =>
            {
                Press(kiosk, "/421");
                Shows(kiosk).Should().Contain("1 lifter fewer: 2, not 3");
                Press(kiosk, "E");
                Shows(kiosk).Should().Contain("Nothing was changed.", "the mark stands on the way back");
                Press(kiosk, "211");
                kiosk.Ended.Should().BeTrue("it begins anew with that logbook");
                kiosk.ShutDown.Should().BeFalse();
            },
            stick.Path);

        using var after = Gym();
        after.Logbook.Lifters().Select(l => l.Name).Should().Equal("Ottoline Marsh", "Bram Okafor-Lind");
        folder.Entries.Should().ContainSingle(e => e.Contains("before-restore", StringComparison.Ordinal));
    }

    [Fact]
    public void House_rules_come_back_from_a_stick_and_a_command_on_it_is_never_taken_over()
    {
        using var stick = new PassingFolder();
        var then = File.ReadAllText(Path.Combine(folder.Path, "gym.yaml"));
        Stay(BackUpToStick, stick.Path);
        folder.File("gym.yaml", then.Replace("sound: on", "sound: off", StringComparison.Ordinal));
        Stay(
            kiosk =>
            {
                Press(kiosk, "/421");
                Shows(kiosk).Should().Contain("another than the one here").And.Contain("Put it and its gym.yaml in place");
                Press(kiosk, "2");
                kiosk.Ended.Should().BeTrue();
            },
            stick.Path);
        File.ReadAllText(Path.Combine(folder.Path, "gym.yaml")).Should().Be(then);

        folder.File("gym.yaml", then.Replace("alarm_command: []", "alarm_command: [ring]", StringComparison.Ordinal));
        clock.Advance(Duration.FromDays(1));
        Stay(BackUpToStick, stick.Path);
        folder.File("gym.yaml", then);
        Stay(
            kiosk =>
            {
                Press(kiosk, "/421");
                Shows(kiosk).Should().Contain("names a command to run").And.NotContain("Put it and its");
            },
            stick.Path);

        void BackUpToStick(KioskVisit kiosk)
        {
            Press(kiosk, "/41");
            SpinWait.SpinUntil(() => Ticked(kiosk).Contains("read back and found whole", StringComparison.Ordinal), TimeSpan.FromSeconds(20)).Should().BeTrue();
        }
    }

    [Fact]
    public void A_visit_that_wrote_something_leaves_a_backup_when_the_names_come_back_and_one_that_did_not_leaves_none()
    {
        Directory.Delete(Path.Combine(folder.Path, "backups"), recursive: true);
        Stay(kiosk =>
        {
            Backups().Should().BeEmpty("opening makes none");
            Press(kiosk, "2/");
            Shows(kiosk).Should().Contain("WHO TRAINS?");
            Backups().Should().BeEmpty("Bram looked and went");

            Press(kiosk, "2E+");
            Pass(kiosk, Duration.FromMinutes(15));
            Shows(kiosk).Should().Contain("WHO TRAINS?");
            Backups().Should().ContainSingle("the program runs on, and what was written is in a backup");
            LogbookSnapshot.Of(new FileInfo(Backups().Single())).Open("second").Should().NotBeNull();

            Press(kiosk, "1/");
            Backups().Should().ContainSingle("nothing was written since");
        });

        IEnumerable<string> Backups() => folder.Entries.Where(e => Path.GetFileName(e).StartsWith("logbook-", StringComparison.Ordinal));
    }

    [Fact]
    public void A_stick_that_comes_or_goes_is_seen_without_a_key_and_a_bad_file_on_it_does_no_harm()
    {
        using var stick = new PassingFolder();
        var place = Path.Combine(stick.Path, "mounted");
        Stay(
            kiosk =>
            {
                Press(kiosk, "/4");
                Shows(kiosk).Should().Contain("Plug a memory stick in");
                Directory.CreateDirectory(place);
                File.WriteAllText(Path.Combine(place, "logbook-2026-11-20.db"), "no logbook");
                Ticked(kiosk).Should().Contain("The newest backup on it: logbook-2026-11-20.db.");
                Press(kiosk, "21");
                Shows(kiosk).Should().Contain("logbook-2026-11-20.db").And.Contain("back up to it");
                Directory.Delete(place, recursive: true);
                Ticked(kiosk).Should().Contain("Plug a memory stick in");
                Press(kiosk, "/");
                Shows(kiosk).Should().Contain("WHO TRAINS?");
            },
            place);
    }

    private string Ticked(KioskVisit kiosk)
    {
        kiosk.Tick(clock.GetCurrentInstant());
        return Shows(kiosk);
    }

    private void Stay(Action<KioskVisit> during, string? stick = null)
    {
        using var gym = Gym();
        using var kiosk = new KioskVisit(gym, KioskSettings.Read(name => name == "RACKSIDE_STICK" ? stick : null), () => ticks++);
        during(kiosk);
    }

    private Gym Gym() => RackSide.Gym.Open(new Folders(folder.Path, folder.Path, "the test"), null, clock);

    private string Shows(KioskVisit kiosk) => kiosk.Draw(Size, clock.GetCurrentInstant()).Text;

    private void Pass(KioskVisit kiosk, Duration time)
    {
        clock.Advance(time);
        kiosk.Tick(clock.GetCurrentInstant());
    }

    private void Press(KioskVisit kiosk, string keys)
    {
        foreach (var key in keys)
        {
            clock.AdvanceMilliseconds(400);
            kiosk.Press(key == 'E' ? KeyPress.Enter : KeyPress.Of(key), clock.GetCurrentInstant());
        }
    }
}
