namespace RackSide.House;

public class RoomsTests
{
    private static readonly Source Fact = Made("History", "public sealed record Fact(int Id);");

    [Fact]
    public void A_room_names_only_rooms_that_stand_before_it()
    {
        var sources = Repository.Sources("src/RackSide.Training");
        sources.Should().HaveCountGreaterThan(20, "the check must have found the domain");
        Rooms.Violations(sources).Should().BeEmpty();
    }

    [Theory]
    [InlineData("using RackSide.Training.History;\n{0}")]
    [InlineData("using static RackSide.Training.History.Fact;\n{0}")]
    [InlineData("using Kept = RackSide.Training.History.Fact;\n{0}")]
    [InlineData("{0}class Step {{ RackSide.Training.History.Fact? last; }}")]
    [InlineData("{0}class Step {{ global::RackSide.Training.History.Fact? last; }}")]
    [InlineData("{0}class Step {{ History.Fact? last; }}")]
    [InlineData("{0}class Step {{ Training.History.Fact? last; }}")]
    [InlineData("{0}class Step {{ string S => $\"{{new History.Fact(1)}}\"; }}")]
    public void A_look_upward_is_found_however_it_is_written(string text)
    {
        var low = new Source("src/RackSide.Training/Plans/Step.cs", string.Format(null, text, "namespace RackSide.Training.Plans;\n"));
        Rooms.Violations([Fact, low]).Should().ContainSingle()
            .Which.Should().StartWith("src/RackSide.Training/Plans/Step.cs:").And.Contain("Plans may not name History");
    }

    [Fact]
    public void Looking_down_and_speaking_of_a_room_are_allowed()
    {
        var high = new Source(
            "src/RackSide.Training/Summary/Week.cs",
            "using RackSide.Training.History;\nnamespace RackSide.Training.Summary;\nclass Week { History.Fact? first; }");
        var low = Made("Plans", "/// <c>History.Fact</c>\nclass Step { string s = \"RackSide.Training.History\"; /* History.Fact */ }");
        var property = Made("Exercises", "class Step { object Of(dynamic History) => History.Where(1); }");
        Rooms.Violations([Fact, high, low, property]).Should().BeEmpty();
    }

    [Theory]
    [InlineData("src/RackSide.Training/Plans/Step.cs", "namespace RackSide.Training.Attic;", "no known room")]
    [InlineData("src/RackSide.Training/Plans/Step.cs", "namespace RackSide.Training;", "no known room")]
    [InlineData("src/RackSide.Training/Plans/Step.cs", "class Step;", "no known room")]
    [InlineData("src/RackSide.Training/Kit/Step.cs", "namespace RackSide.Training.Plans;", "its folder is another")]
    [InlineData("src/RackSide.Training/Plans/Step.cs", "global using RackSide.Training.Kit;\nnamespace RackSide.Training.Plans;", "a global using")]
    public void A_file_outside_the_rooms_is_found(string file, string text, string because) =>
        Rooms.Violations([new Source(file, text)]).Should().ContainSingle().Which.Should().Contain(because);

    [Fact]
    public void The_screen_knows_no_rule_of_training()
    {
        string[] rules = ["Schedule", "Loading", "Progression", "Strength", "Skills", "Body", "Safety", "Planning", "Summary"];
        rules.Should().BeSubsetOf(Rooms.Order);
        Repository.Sources("src/RackSide.Screens").SelectMany(s => Rooms.Named(s, rules)).Should().BeEmpty();
        Rooms.Named(new Source("x.cs", "using RackSide.Training.Loading;"), rules).Should().ContainSingle();
    }

    private static Source Made(string room, string text) =>
        new($"src/RackSide.Training/{room}/Made.cs", $"namespace RackSide.Training.{room};\n{text}");
}
