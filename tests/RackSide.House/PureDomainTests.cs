using System.Reflection;

namespace RackSide.House;

public class PureDomainTests
{
    [Fact]
    public void The_domain_names_no_clock_file_console_culture_or_chance() =>
        Repository.Sources("src/RackSide.Training").SelectMany(PureDomain.Violations).Should().BeEmpty();

    [Fact]
    public void The_domain_keeps_nothing_that_can_be_set_again() =>
        PureDomain.Settable(Assembly.Load("RackSide.Training").GetTypes()).Should().BeEmpty();

    [Theory]
    [InlineData("var now = SystemClock.Instance.GetCurrentInstant();")]
    [InlineData("IClock clock;")]
    [InlineData("var now = DateTime.UtcNow;")]
    [InlineData("var now = DateTimeOffset.Now;")]
    [InlineData("var day = DateTime.Today;")]
    [InlineData("var text = File.ReadAllText(name);")]
    [InlineData("var text = System.IO.File.ReadAllText(name);")]
    [InlineData("using var file = new FileStream(name, mode);")]
    [InlineData("Console.WriteLine(1);")]
    [InlineData("var culture = CultureInfo.CurrentCulture;")]
    [InlineData("var culture = new CultureInfo(\"de-DE\");")]
    [InlineData("var chance = Random.Shared.Next();")]
    [InlineData("var chance = new Random(7);")]
    [InlineData("var id = Guid.NewGuid();")]
    [InlineData("var home = Environment.GetEnvironmentVariable(\"HOME\");")]
    [InlineData("var text = $\"{DateTime.Now}\";")]
    public void Reaching_out_of_the_domain_is_found(string text) =>
        PureDomain.Violations(new Source("made.cs", "// fine\n" + text)).Should().ContainSingle().Which.Should().StartWith("made.cs:2: ");

    [Theory]
    [InlineData("var text = number.ToString(CultureInfo.InvariantCulture);")]
    [InlineData("// DateTime.Now is banned here")]
    [InlineData("var word = \"Console\"; /* File.Open */")]
    [InlineData("catch (IOException) { }")]
    [InlineData("var task = Processed.Environmental;")]
    public void What_only_sounds_like_it_is_allowed(string text) =>
        PureDomain.Violations(new Source("made.cs", text)).Should().BeEmpty();

    [Fact]
    public void A_static_that_can_be_set_is_found_and_one_that_cannot_is_not() =>
        PureDomain.Settable([typeof(Made)]).Should().BeEquivalentTo(
            [$"{typeof(Made).FullName}.<Settable>k__BackingField", $"{typeof(Made).FullName}.counter"]);

    private static class Made
    {
        private const int Fixed = 1;
        private static readonly int Once = Fixed;
        private static int counter = Once;

        public static int Settable { get; set; } = counter++;

        public static int Fresh { get; } = 3;
    }
}
