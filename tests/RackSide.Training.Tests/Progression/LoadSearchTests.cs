using System.Globalization;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Plans;
using RackSide.Training.Progression;
using static RackSide.Training.Tests.Progression.Lifting;

namespace RackSide.Training.Tests.Progression;

/// <summary>
/// First loads, as a coach would write the climb down: <c>20x5+30</c> is 20 kg for 5 with 30 more good reps told left, and the
/// row says that the rule asked for that 20 kg. <c>=40x5+8</c> was chosen by hand. <c>~</c> is a set whose form slipped. The kit
/// is a home set: 20 kg bar, pairs of 20, 15, 10, 5, 2.5 and 1.25, dumbbells from 2.5 to 15 in steps of 2.5. The search is
/// common practice, no source; that a first session leaves four or more reps too.
/// </summary>
public class LoadSearchTests
{
    private static readonly Exercise Bench = Of("bench-press", Motion.HorizontalPush, LoadType.Barbell);
    private static readonly Exercise Pulldown = Of("lat-pulldown", Motion.VerticalPull, LoadType.MachineStack);

    [Theory]
    // ENTER alone tells four left at the empty bar: the working sets begin there.
    [InlineData("20x5+4", "20 kg", "first time: 20 kg left 4 good reps")]
    [InlineData("20x5+5", "20 kg", "first time: 20 kg left 5 good reps")]
    // At most 10 kg at once, and at most 2 % for each rep left: 30 kg + 15 reps, 30 % of 30 is 9.
    [InlineData("20x5+30 30x5+15 37.5x5+10 45x5+4", "45 kg", "first time: 45 kg left 4 good reps")]
    [InlineData("20x5+12 22.5x5+8 25x5+5", "25 kg", "first time: 25 kg left 5 good reps")]
    // Six left is easy, but 22.5 kg is 12.5 % more than the empty bar, over 6 x 2 %.
    [InlineData("20x5+6", "20 kg", "first time: 20 kg left 6 good reps; the next step is too big")]
    // Fewer than four left, or a set that fell short: back to the load before; nothing is asked of a set that fell short.
    [InlineData("20x5+30 30x5+3", "20 kg", "first time: 30 kg left only 3, so 20 kg")]
    [InlineData("20x5+30 30x5+12 35x5+0", "30 kg", "first time: 35 kg left only 0, so 30 kg")]
    [InlineData("20x5+30 30x4", "20 kg", "first time: 30 kg was too much, so 20 kg")]
    [InlineData("20x5+30 30x5+9~", "20 kg", "first time: 30 kg was too much, so 20 kg")]
    [InlineData("20x5+1", "20 kg", "first time: 20 kg is the lightest there is; take your time with it")]
    [InlineData("20x3", "20 kg", "first time: 20 kg is the lightest there is; take your time with it")]
    // Five tries are enough.
    [InlineData("20x5+99 30x5+99 40x5+99 50x5+99 60x5+99", "60 kg", "first time: 60 kg was easy still; five tries are enough for a day")]
    // A load chosen by hand counts as lifted; one that was too much is not tried again.
    [InlineData("20x5+30 =25x5+12 30x5+5", "30 kg", "first time: 30 kg left 5 good reps")]
    [InlineData("=60x5+1 47.5x5+7 52.5x5+4", "52.5 kg", "first time: 52.5 kg left 4 good reps")]
    [InlineData("=60x5+1 47.5x5+2 37.5x5+2 30x5+2 22.5x5+2", "20 kg", "first time: 22.5 kg left only 2, so 20 kg")]
    [InlineData("=40x5+1 30x5+20 =37.5x5+20", "37.5 kg", "first time: 37.5 kg left 20 good reps; the next step is too big")]
    [InlineData("=100x5+8", "100 kg", "first time: 100 kg was easy, and goes no further today")]
    public void The_squat_climbs_from_the_empty_bar(string climb, string found, string why) => Check(Squat, Fives, climb, found, why);

    [Theory] // At most 5 kg at once on a bar for the upper body, 2.5 kg overhead.
    [InlineData("20x6+40 25x6+20 30x6+12 35x6+5", "35 kg", "first time: 35 kg left 5 good reps")]
    [InlineData("20x6+8 22.5x6+3", "20 kg", "first time: 22.5 kg left only 3, so 20 kg")]
    public void The_bench_press_takes_half_the_step(string climb, string found, string why) => Check(Bench, SixToTwelve, climb, found, why);

    [Theory]
    [InlineData("20x6+40 22.5x6+20 25x6+9 27.5x6+4", "27.5 kg", "first time: 27.5 kg left 4 good reps")]
    public void Overhead_it_is_half_of_that(string climb, string found, string why) => Check(Press, SixToTwelve, climb, found, why);

    [Theory] // One dumbbell at a time; where the next is half as heavy again, only after a set that was next to nothing.
    [InlineData("2.5x6+20 5x6+25 7.5x6+10", "7.5 kg", "first time: 7.5 kg left 10 good reps; the next step is too big")]
    [InlineData("2.5x6+12", "2.5 kg", "first time: 2.5 kg left 12 good reps; the next step is too big")]
    [InlineData("2.5x6+20 5x6+20 7.5x6+17 10x6+13 12.5x6+10", "12.5 kg", "first time: 12.5 kg was easy still; five tries are enough for a day")]
    public void Dumbbells_go_up_one_at_a_time(string climb, string found, string why) => Check(Curl, SixToTwelve, climb, found, why);

    [Theory] // Less help is harder; a start that is too hard gets more of it.
    [InlineData("30x6+6 25x6+6 20x6+4", "20 kg", "first time: 20 kg of help left 4 good reps")]
    [InlineData("30x6+8 25x6+2", "30 kg", "first time: 25 kg of help left only 2, so 30 kg of help")]
    [InlineData("30x2 40x6+5", "40 kg", "first time: 40 kg of help left 5 good reps")]
    [InlineData("30x0 40x0 50x0 60x0", "60 kg", "first time: 60 kg of help is the most there is; take your time with it")]
    public void Help_is_taken_off_and_added(string climb, string found, string why) => Check(HelpedChin, SixToTwelve, climb, found, why);

    [Fact]
    public void A_stack_goes_up_one_plate_at_a_time()
    {
        var kit = Garage with { Stack = [.. Enumerable.Range(1, 12).Select(i => Mass.Kg(i * 5))] };
        var span = Span(Pulldown, SixToTwelve, Loads.For(Pulldown, kit)!)!;

        Found(span, "5x6+30 10x6+30 15x6+20 20x6+13 25x6+4").Load.Should().Be(Mass.Kg(25));
    }

    [Fact]
    public void In_pounds_the_steps_are_whole_plates()
    {
        var kit = KitDefaults.For(MassUnit.Pound);
        var span = Span(Squat, Fives, Loads.For(Squat, kit)!)!;

        span.First.Should().Be(Mass.Lb(45));
        LoadSearch.Next(span, [Set(span, Mass.Lb(45), 5, 99)]).Should().Be(new SearchStep.Try(Mass.Lb(65)));
        LoadSearch.Next(span, [Set(span, Mass.Lb(45), 5, 10)]).Should().Be(new SearchStep.Try(Mass.Lb(50)));
    }

    [Fact]
    public void A_search_set_takes_the_low_end_of_the_range_and_five_at_least()
    {
        var loads = Loads.For(Squat, Garage)!;

        Span(Squat, new Scheme.Range(3, 8, 12), loads)!.Reps.Should().Be(8);
        Span(Squat, new Scheme.Fixed(5, 3), loads)!.Reps.Should().Be(5);
    }

    [Fact]
    public void Nothing_is_searched_where_no_load_is_told_or_there_is_no_choice()
    {
        Span(PushUp, SixToTwelve, null).Should().BeNull();
        Span(Plank, Holds, null).Should().BeNull();
        Span(ChinUp, SixToTwelve, Loads.For(ChinUp, Garage)).Should().BeNull("hung weight says little beside the body");
        Span(Squat, Fives, new ReachableLoads([Mass.Kg(20)])).Should().BeNull();
    }

    [Fact]
    public void After_the_first_time_nothing_is_searched() =>
        Next(Slot(Squat, Fives), Squat, "Mon 2 40@5: 5 5 5 5 5", "Fri 6").Search.Should().BeNull();

    [Fact]
    public void Small_plates_do_not_make_a_search_of_a_hundred_loads()
    {
        var kit = Garage with { Plates = [.. Garage.Plates, new(Mass.Kg(0.5m), 1), new(Mass.Kg(0.25m), 1)] };

        Span(Squat, Fives, Loads.For(Squat, kit)!)!.Loads.Should().HaveCountLessThan(20);
    }

    [Fact]
    public void A_load_of_both_units_that_the_logbook_cannot_tell_exactly_is_not_tried()
    {
        var kit = Garage with { Plates = [.. Garage.Plates, new(Mass.Lb(5), 1)] };

        Span(Squat, Fives, Loads.For(Squat, kit)!)!.Loads.Should().OnlyContain(l => decimal.Round(l.Amount, 3) == l.Amount);
    }

    internal static SearchSpan? Span(Exercise exercise, Scheme scheme, ReachableLoads? loads) =>
        Progress.Next(Slot(exercise, scheme), exercise, [], loads, new NodaTime.LocalDate(2026, 11, 2)).Search;

    internal static SearchSet Set(SearchSpan span, Mass load, int done, int? left, bool slipped = false) => new(load, span.Reps, done, left, slipped);

    private static void Check(Exercise exercise, Scheme scheme, string climb, string found, string why)
    {
        var step = Found(Span(exercise, scheme, Loads.For(exercise, Garage))!, climb);

        (step.Load.ToString(), step.Why.Line, step.Why.Code).Should().Be((found, why, Reasons.FirstLoadFound));
    }

    private static SearchStep.Found Found(SearchSpan span, string climb)
    {
        List<SearchSet> sets = [];
        foreach (var text in climb.Split(' '))
        {
            var set = Read(span, text);
            if (!text.StartsWith('='))
            {
                LoadSearch.Next(span, sets).Should().Be(new SearchStep.Try(set.Load), $"{text} is what is asked for");
            }

            if (!set.Short)
            {
                LoadSearch.Next(span, [.. sets, set with { Left = null }]).Should().Be(new SearchStep.Ask());
            }

            sets.Add(set);
        }

        return LoadSearch.Next(span, sets).Should().BeOfType<SearchStep.Found>().Subject;
    }

    private static SearchSet Read(SearchSpan span, string text)
    {
        var parts = text.Trim('=', '~').Split('x', '+');
        return Set(span, Mass.Kg(NumberEntry.Parse(parts[0])!.Value), Number(parts[1]), parts.Length > 2 ? Number(parts[2]) : null, text.EndsWith('~'));
    }

    private static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
