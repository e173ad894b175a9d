using NodaTime;
using NodaTime.Testing;
using RackSide.Files;
using RackSide.Kiosk;
using RackSide.Pages;
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
            Press(kiosk, "5");
            Shows(kiosk).Should().MatchRegex("2  Ba +Strength day");
        });

        using var gym = Gym();
        var bram = gym.Lifter("second")!;
        (bram.Name, bram.Unit, bram.Plan).Should().Be(("Ba", MassUnit.Kilogram, "light"));
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
        Press(kiosk, "/3");
        Shows(kiosk).Should().Contain("SHUT DOWN?");
        kiosk.ShutDown.Should().BeFalse();
        Press(kiosk, "1");
        (kiosk.ShutDown, kiosk.Ended).Should().Be((true, true));
    });

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

    private void Stay(Action<KioskVisit> during)
    {
        using var gym = Gym();
        using var kiosk = new KioskVisit(gym, KioskSettings.Read(_ => null), () => ticks++);
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
