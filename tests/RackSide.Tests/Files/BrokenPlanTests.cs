using CsCheck;
using RackSide.Files;
using RackSide.Training.Exercises;
using RackSide.Training.Plans;

namespace RackSide.Tests.Files;

public class BrokenPlanTests
{
    private static readonly Catalogue Catalogue = CatalogueFile.Read();

    // The number at the end of each line is the line itself, so that the table below can be checked by eye.
    private const string Good = """
        name: Canal side                      # 1
        week:                                 # 2
          monday: heavy                       # 3
          thursday: heavy                     # 4
        days:                                 # 5
          heavy:                              # 6
            name: Heavy day                   # 7
            kind: strength                    # 8
            slots:                            # 9
              - key: squat                    # 10
                motion: squat                 # 11
                exercises: [back-squat]       # 12
                sets: 5                       # 13
                reps: 5                       # 14
                rest: 2 min                   # 15
                ramp: full                    # 16
                progress: step when all met   # 17
                step: 2.5 kg                  # 18
              - key: curl                     # 19
                motion: elbow_flexion         # 20
                exercises: [db-curl]          # 21
                sets: 3                       # 22
                reps: 8-12                    # 23
                rest: 75 s                    # 24
                group: arms                   # 25
              - key: extension                # 26
                motion: elbow_extension       # 27
                exercises: [band-pushdown]    # 28
                sets: 3                       # 29
                reps: 8-12                    # 30
                rest: 75 s                    # 31
                group: arms                   # 32
              - key: plank                    # 33
                motion: core_brace            # 34
                exercises: [plank-forearm]    # 35
                sets: 3                       # 36
                hold: 20-60 s                 # 37
                rest: 60 s                    # 38
        """;

    private static string With(params (int Line, string Text)[] changes)
    {
        var lines = Good.Split('\n');
        foreach (var (line, text) in changes)
        {
            var indentation = lines[line - 1].Length - lines[line - 1].TrimStart().Length;
            lines[line - 1] = new string(' ', indentation) + text;
        }

        return string.Join('\n', lines);
    }

    private static IEnumerable<string> Sentences(string text) =>
        PlanFile.Read(text, "plan.yaml", Catalogue).Mistakes.Select(m => m.ToString());

    [Fact]
    public void The_plan_that_the_table_breaks_is_good() => Sentences(Good).Should().BeEmpty();

    [Theory]
    // Values of the wrong kind.
    [InlineData(15, "rest: two minutes", "15: rest: \"two minutes\" is not a length of time; write seconds or minutes, such as 120 s or 2 min")]
    [InlineData(15, "rest: 120", "15: rest: \"120\" is not a length of time; write seconds or minutes, such as 120 s or 2 min")]
    [InlineData(15, "rest: 0.5 s", "15: rest: \"0.5 s\" is not a length of time; write seconds or minutes, such as 120 s or 2 min")]
    [InlineData(15, "rest: 20 min", "15: rest: \"20 min\" is outside 0 s to 10 min; write seconds or minutes, such as 120 s or 2 min")]
    [InlineData(15, "rest:", "15: rest: nothing is written here; write seconds or minutes, such as 120 s or 2 min")]
    [InlineData(13, "sets: five", "13: sets: \"five\" is not a whole number; write a whole number, such as 3")]
    [InlineData(13, "sets: 50", "13: sets: \"50\" is outside 1 to 10; write a whole number, such as 3")]
    [InlineData(13, "sets: [5]", "13: sets: a list stands where a single value should be; write a whole number, such as 3")]
    [InlineData(14, "reps: some", "14: reps: \"some\" is not a number of reps; write reps such as 5, or a range such as 6-12")]
    [InlineData(14, "reps: 500", "14: reps: \"500\" is outside 1 to 50 reps; write reps such as 5, or a range such as 6-12")]
    [InlineData(14, "reps: 6-8-12", "14: reps: \"6-8-12\" is not a number of reps; write reps such as 5, or a range such as 6-12")]
    [InlineData(23, "reps: 12-8", "23: reps: 12-8 runs backwards; write the lower number first: 8-12")]
    [InlineData(37, "hold: 60-20 s", "37: hold: 60-20 s runs backwards; write the lower number first: 20-60 s")]
    [InlineData(37, "hold: 20-60", "37: hold: \"20-60\" is not a length of hold; write seconds such as 30 s, or a range such as 20-60 s")]
    [InlineData(37, "hold: 20 min", "37: hold: \"20 min\" is outside 5 s to 300 s; write seconds such as 30 s, or a range such as 20-60 s")]
    [InlineData(18, "step: 2.5", "18: step: \"2.5\" is not a mass; write a number and kg or lb, such as 2.5 kg or 45 lb")]
    [InlineData(18, "step: 2,5,0 kg", "18: step: \"2,5,0 kg\" is not a mass; write a number and kg or lb, such as 2.5 kg or 45 lb")]
    [InlineData(18, "step: 200 kg", "18: step: \"200 kg\" is outside 0.1 kg to 20 kg; write a number and kg or lb, such as 2.5 kg or 45 lb")]
    [InlineData(18, "lighter_by: 0.1", "18: lighter_by: \"0.1\" is not a percentage; write a whole number and %, such as 10 %")]
    [InlineData(18, "misses_before_lighter: 0", "18: misses_before_lighter: \"0\" is outside 1 to 10; write a whole number, such as 3")]
    [InlineData(8, "kind: heavy", "8: kind: \"heavy\" is not a kind of day; write strength or skills")]
    [InlineData(16, "ramp: long", "16: ramp: \"long\" is not a kind of ramp; write full, short or none")]
    [InlineData(10, "- key: Squat 1", "10: key: \"Squat 1\" is not a key; write lower-case letters, digits and hyphens, such as vertical-pull")]
    // Fields unknown, missing, or written twice.
    [InlineData(15, "rset: 2 min", "10: rest: missing; write seconds or minutes, such as 120 s or 2 min", "15: rset: there is no such field here; did you mean rest?")]
    [InlineData(18, "colour: red", "18: colour: there is no such field here; the fields are key, ladder, begin_with, motion, sets, reps, hold, total, accumulate, tick, exercises, rest, progress, step, misses_before_lighter, lighter_by, reps_first, grow_by, up_to, ramp, group, change_over")]
    [InlineData(15, "", "10: rest: missing; write seconds or minutes, such as 120 s or 2 min")]
    [InlineData(13, "", "10: sets: missing; write a whole number, such as 3")]
    [InlineData(14, "", "10: reps: missing; write reps, hold, total, accumulate or tick")]
    [InlineData(1, "", "2: name: missing; write the plan's name")]
    [InlineData(16, "sets: 4", "16: sets: written twice, first on line 13; keep one of them")]
    [InlineData(4, "monday: heavy", "4: monday: written twice, first on line 3; keep one of them")]
    [InlineData(4, "Monday: heavy", "4: Monday: written twice, first on line 3; keep one of them")]
    [InlineData(26, "- key: curl", "26: key: curl is used twice in this day; give each slot a key of its own")]
    // The week.
    [InlineData(4, "tuesday: heavy", "4: tuesday: follows monday without a day of rest; leave at least one day between training days")]
    [InlineData(4, "sunday: heavy", "4: monday: follows sunday without a day of rest; leave at least one day between training days")]
    [InlineData(4, "thursday: haevy", "4: thursday: days has no \"haevy\"; did you mean heavy?")]
    [InlineData(4, "thursday: off", "4: thursday: days has no \"off\"; write heavy, or take the line out for a day off")]
    [InlineData(4, "someday: heavy", "4: week: \"someday\" is not a day of the week; write monday, tuesday, wednesday, thursday, friday, saturday or sunday")]
    // Exercises.
    [InlineData(12, "exercises: [back-sqat]", "12: exercises: the catalogue has no exercise \"back-sqat\"; did you mean back-squat?")]
    [InlineData(12, "exercises: [somersault-in-the-canal]", "12: exercises: the catalogue has no exercise \"somersault-in-the-canal\"; choose an id from docs/plan-files.md")]
    [InlineData(12, "exercises: [bench-press]", "12: exercises: the motion of bench-press is horizontal_push, not squat; choose another exercise, such as back-squat")]
    [InlineData(12, "exercises: [wall-sit]", "12: exercises: wall-sit is held, but the slot asks for reps; write hold in place of reps, or choose an exercise done in reps")]
    [InlineData(35, "exercises: [dead-bug]", "35: exercises: dead-bug is done in reps, but the slot asks for a hold; write reps in place of hold, or choose a held exercise")]
    [InlineData(12, "exercises: [back-squat, back-squat]", "12: exercises: back-squat is listed twice; keep it once")]
    [InlineData(12, "exercises: []", "12: exercises: the list is empty; list exercises by id, the one preferred first, such as [back-squat, goblet-squat]")]
    // Parts that do not fit each other.
    [InlineData(16, "hold: 30 s", "16: reps and hold stand in one slot; keep one of reps, hold, total, accumulate and tick")]
    [InlineData(37, "total: 50", "35: exercises: plank-forearm is held, but the slot asks for a total of reps; choose an exercise done in reps", "36: sets: sets do not go with total; leave sets out")]
    [InlineData(23, "reps: 8-12\n        progress: 2 for 2", "24: progress: 2 for 2 does not fit 3x8-12; write work up the range or none")]
    [InlineData(18, "reps_first: maybe", "18: reps_first: \"maybe\" is not yes or no; write yes or no")]
    [InlineData(17, "progress: 2 for 2\n        reps_first: no", "18: reps_first: has no effect with progress: 2 for 2; leave it out")]
    [InlineData(18, "grow_by: 10", "18: grow_by: has no effect with progress: step when all met; leave it out")]
    [InlineData(18, "up_to: 100", "18: up_to: has no effect with progress: step when all met; leave it out")]
    [InlineData(17, "progress: none", "18: step: has no effect with progress: none; leave it out")]
    [InlineData(16, "change_over: 15 s", "16: change_over: this slot stands in no group; leave it out, or write group")]
    [InlineData(25, "ramp: none", "26: group: arms has only this slot; give another slot the same group, or leave it out")]
    [InlineData(22, "sets: 4", "26: group: 3 sets here, but 4 in the group's first slot; give every slot of a group the same number of sets")]
    [InlineData(38, "rest: 60 s\n        ramp: full", "39: ramp: warm-up sets do not go with 3 x 20-60 s; leave it out")]
    // What is no plan at all, or no YAML.
    [InlineData(12, "exercises: [*squats]", "12: *squats refers to another place; write the value out here")]
    public void A_broken_line_is_told_in_one_sentence(int line, string text, params string[] expected) =>
        Sentences(With((line, text))).Should().Equal(expected.Select(e => "plan.yaml:" + e));

    [Fact]
    public void The_rules_beyond_the_natural_ones_are_read()
    {
        var twoForTwo = Rule(With((17, "progress: 2 for 2")), "squat");
        var atOnce = Rule(With((18, "reps_first: no")), "squat");
        var total = Rule(With((29, "total: 30"), (30, "progress: grow total"), (32, "grow_by: 10\n        up_to: 60"), (25, "")), "extension");

        twoForTwo.Should().Be(new ProgressRule(ProgressKind.TwoForTwo, Training.Measures.Mass.Kg(2.5m)));
        atOnce.RepsFirst.Should().BeFalse();
        (total.Kind, total.GrowBy, total.UpTo).Should().Be((ProgressKind.GrowTotal, 10, 60));
    }

    [Fact]
    public void A_total_that_cannot_grow_is_told() =>
        Sentences(With((29, "total: 30"), (30, "progress: grow total"), (32, "up_to: 30"), (25, "")))
            .Should().Equal("plan.yaml:32: up_to: 30 is not above the total of 30; write a larger number, or leave it out");

    private static ProgressRule Rule(string text, string slot)
    {
        var reading = PlanFile.Read(text, "plan.yaml", Catalogue);
        reading.Mistakes.Select(m => m.ToString()).Should().BeEmpty();
        return reading.Value!.Days[0].Slots.Single(s => s.Key == slot).Progress;
    }

    [Fact]
    public void Slots_of_a_group_that_are_parted_are_told() =>
        Sentences(With((25, "change_over: 10 s"), (24, "rest: 60 s\n        group: arms"), (26, "- key: between"), (32, "ramp: none"), (38, "rest: 60 s\n        group: arms")))
            .Should().Equal("plan.yaml:34: group: another slot stands between this one and the rest of arms; put the slots of a group next to each other");

    [Fact]
    public void All_mistakes_are_told_at_once_in_the_order_of_their_lines() =>
        Sentences(With((4, "tuesday: heavy"), (8, "kind: hard"), (12, "exercises: [bak-squat]"), (15, "rest: long"), (23, "reps: 12-6"), (37, "hold: 20-60 min")))
            .Should().Equal(
                "plan.yaml:4: tuesday: follows monday without a day of rest; leave at least one day between training days",
                "plan.yaml:8: kind: \"hard\" is not a kind of day; write strength or skills",
                "plan.yaml:12: exercises: the catalogue has no exercise \"bak-squat\"; did you mean back-squat?",
                "plan.yaml:15: rest: \"long\" is not a length of time; write seconds or minutes, such as 120 s or 2 min",
                "plan.yaml:23: reps: 12-6 runs backwards; write the lower number first: 6-12",
                "plan.yaml:37: hold: \"20-60 min\" is outside 5 s to 300 s; write seconds such as 30 s, or a range such as 20-60 s");

    [Theory]
    [InlineData("")]
    [InlineData("\n\n")]
    [InlineData("# only a comment\n")]
    [InlineData("---\n...\n")]
    public void An_empty_file_is_told_as_empty(string text) =>
        Sentences(text).Should().Equal("plan.yaml: the file is empty; write name, week and days, as docs/plan-files.md shows");

    [Fact]
    public void A_file_that_holds_no_fields_is_told() =>
        Sentences("- squat\n- row\n").Should().Equal("plan.yaml:1: a list stands where fields should be; write name, week and days, as docs/plan-files.md shows");

    [Fact]
    public void Every_line_indented_with_a_tab_is_told() =>
        Sentences("name: Canal side\nweek:\n\tmonday: heavy\n  \tthursday: heavy\n").Should().Equal(
            "plan.yaml:3: a tab stands in the indentation; indent with spaces, two for each level",
            "plan.yaml:4: a tab stands in the indentation; indent with spaces, two for each level");

    [Theory]
    [InlineData("name: \"Canal side\nweek: {}\n")]
    [InlineData("name: Canal side\nweek: [monday\ndays: {}\n")]
    [InlineData("name: Canal side\n  week: {}\n")]
    [InlineData("name: @\n")]
    public void Text_that_is_no_yaml_is_told_once_with_its_line(string text) =>
        Sentences(text).Should().ContainSingle().Which.Should()
            .MatchRegex("^plan\\.yaml:[1-4]: cannot be read as YAML \\([a-z].*\\); look here and on the line before for a missing colon, quote or bracket, or an indentation out of step$");

    [Fact]
    public void A_single_word_where_fields_should_be_is_told() =>
        Sentences("name: Canal side\nweek: monday\ndays: {}\n").Should().Equal(
            "plan.yaml:2: week: a single value stands where a set of fields should be; write weekdays with a training day each, such as monday: strength-day",
            "plan.yaml:3: days: no training day stands in it; write each training day under a key of its own, such as strength-day");

    [Fact]
    public void A_second_document_is_told() =>
        Sentences(Good + "\n---\nname: another\n").Should().Equal("plan.yaml:39: a second document begins here; keep one in a file and take out the line ---");

    [Fact]
    public void Nesting_without_end_is_refused_and_not_followed() =>
        Sentences("name: " + new string('[', 100_000)).Should().ContainSingle();

    [Fact]
    public void No_control_character_of_the_file_reaches_the_sentence() =>
        Sentences(With((15, "rest: \"\\e[2J\""))).Should().ContainSingle().Which.Should().Contain("\"?[2J\"");

    [Fact]
    public void A_file_that_is_not_there_or_is_a_folder_or_is_no_text_is_told()
    {
        var folder = Directory.CreateTempSubdirectory("rackside-plan-");
        try
        {
            var missing = Path.Combine(folder.FullName, "none.yaml");
            var binary = Path.Combine(folder.FullName, "binary.yaml");
            File.WriteAllBytes(binary, [0xC3, 0x28, 0xFF]);

            Told(missing).Should().Be($"{missing}: there is no such file; check the name and the folder");
            Told(folder.FullName).Should().Be($"{folder.FullName}: may not be read; check that it is a file and that you are allowed to read it");
            Told(binary).Should().Be($"{binary}: is not UTF-8 text; save it as plain UTF-8 text");
        }
        finally
        {
            folder.Delete(recursive: true);
        }

        static string Told(string path) => PlanFile.ReadFrom(path, Catalogue).Mistakes.Single().ToString();
    }

    [Fact]
    public void Whatever_a_slip_of_the_hand_does_to_a_plan_the_answer_is_a_plan_or_sentences()
    {
        var slip = Gen.Select(Gen.Int[0, Good.Length - 1], Gen.Int[0, 5], Gen.Char[" -:[]{}#\"'|>&*!%@\t\n0aé\0"]);
        slip.Array[1, 4].Sample(slips =>
        {
            var text = Good;
            foreach (var (at, length, letter) in slips)
            {
                var start = Math.Min(at, text.Length);
                text = string.Concat(text.AsSpan(0, start), letter.ToString(), text.AsSpan(Math.Min(text.Length, start + length)));
            }

            var reading = PlanFile.Read(text, "plan.yaml", Catalogue);
            return (reading.Value is null) == (reading.Mistakes.Count > 0)
                && reading.Mistakes.All(m => m.Line <= text.Count(c => c == '\n') + 2);
        }, iter: 3000);
    }

    [Fact]
    public void A_good_plan_says_what_was_written()
    {
        var plan = PlanFile.Read(Good, "plan.yaml", Catalogue).OrThrow();

        plan.Name.Should().Be("Canal side");
        plan.Days.Single().Slots.Select(s => s.Scheme.Text).Should().Equal("5x5", "3x8-12", "3x8-12", "3 x 20-60 s");
        plan.Days.Single().Slots[0].Progress.Step.Should().Be(Training.Measures.Mass.Kg(2.5m));
        plan.Days.Single().Slots[3].Progress.Kind.Should().Be(ProgressKind.LongerHold);
    }
}
