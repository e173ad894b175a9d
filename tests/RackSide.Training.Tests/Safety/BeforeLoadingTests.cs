using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using RackSide.Training.Measures;
using RackSide.Training.Plans;
using RackSide.Training.Safety;

namespace RackSide.Training.Tests.Safety;

// What is confirmed before loading: common practice, no source.
public class BeforeLoadingTests
{
    private static readonly Exercise Squat = Of("back-squat", Motion.Squat, LoadType.Barbell, ["barbell", "rack", "safety bars"]);
    private static readonly Exercise Row = Of("bb-row", Motion.HorizontalPull, LoadType.Barbell, ["barbell"]);
    private static readonly Exercise Raise = Of("lateral-raise", Motion.VerticalPush, LoadType.DumbbellPair, ["dumbbells"]);
    private static readonly Exercise Hollow = Of("hollow-hold", Motion.CoreBrace, LoadType.Bodyweight, ["mat"]);
    private static readonly Exercise Handstand =
        Of("wall-handstand-hold", Motion.VerticalPush, LoadType.Bodyweight, ["wall"]) with { Inverted = true };

    [Fact]
    public void A_strength_day_with_safety_bars_begins_with_them() =>
        Keys(DayKind.Strength, With("safety bars"), Squat, Row).Should().Equal("safety-bars-set", "collars-on", "warm-and-clear");

    [Fact]
    public void Without_safety_bars_the_lifter_is_told_not_to_go_heavy_alone()
    {
        var items = BeforeLoading.For(DayKind.Strength, [Squat, Row], With());
        items.Select(i => i.Key).Should().Equal("no-heavy-alone", "collars-on", "warm-and-clear");
        items[0].Text.Should().Contain("no heavy squat or bench press alone");
    }

    [Fact]
    public void Safety_bars_are_not_asked_for_where_no_lift_needs_them() =>
        Keys(DayKind.Strength, With("safety bars"), Row).Should().Equal("collars-on", "warm-and-clear");

    [Fact]
    public void A_strength_day_without_a_bar_looks_to_bench_bands_and_mounts() =>
        Keys(DayKind.Strength, With(), Raise).Should().Equal("kit-sound", "warm-and-clear");

    [Fact]
    public void A_skills_day_wants_a_clear_floor_and_a_firm_hold() =>
        Keys(DayKind.Skills, With("safety bars"), Hollow).Should().Equal("floor-clear", "wall-or-bar-firm");

    [Fact]
    public void A_skills_day_with_head_down_holds_asks_after_stomach_and_dizziness() =>
        Keys(DayKind.Skills, With(), Hollow, Handstand).Should().Equal("floor-clear", "wall-or-bar-firm", "fit-for-head-down");

    [Fact]
    public void Every_day_has_two_or_three_items_of_at_most_sixty_characters()
    {
        Exercise[][] days = [[], [Squat], [Row], [Raise], [Hollow], [Handstand], [Squat, Row, Raise, Hollow, Handstand]];
        var lists =
            from kind in Enum.GetValues<DayKind>()
            from kit in new[] { With(), With("safety bars") }
            from day in days
            select BeforeLoading.For(kind, day, kit);

        lists.Should().OnlyContain(items => items.Count >= 2 && items.Count <= 3);
        lists.SelectMany(items => items).Should().OnlyContain(i => i.Text.Length <= 60);
    }

    [Fact]
    public void A_lift_over_safety_bars_has_its_reminder() =>
        BeforeLoading.Reminder(Squat, With("safety bars")).Should().StartWith("Safety bars just under");

    [Fact]
    public void Without_safety_bars_the_reminder_is_a_warning() =>
        BeforeLoading.Reminder(Squat, With()).Should().StartWith("No safety bars").And.Contain("spotter");

    [Fact]
    public void Other_exercises_have_no_reminder()
    {
        Exercise[] others = [Row, Raise, Hollow, Handstand];
        others.Select(e => BeforeLoading.Reminder(e, With())).Should().AllSatisfy(line => line.Should().BeNull());
    }

    private static IEnumerable<string> Keys(DayKind kind, GymKit kit, params Exercise[] exercises) =>
        BeforeLoading.For(kind, exercises, kit).Select(item => item.Key);

    private static GymKit With(params string[] equipment) =>
        KitDefaults.For(MassUnit.Kilogram) with { Equipment = equipment.ToHashSet() };

    private static Exercise Of(string id, Motion motion, LoadType load, string[] equipment) => new()
    {
        Id = id,
        Name = id,
        ShortName = id,
        Motion = motion,
        LoadType = load,
        Equipment = equipment,
        Cues = new CueCard("", "", "", "", ""),
    };
}
