namespace RackSide.House;

public class DataCopiesTests
{
    private const string Shown = "demo/plan.yaml";
    private const string Shipped = "src/RackSide/Data/plan.yaml";

    [Fact]
    public void The_plan_that_is_shown_is_the_plan_that_is_shipped() =>
        Repository.Read(Shown).Should().Be(Repository.Read(Shipped), $"{Shown} and {Shipped} are one plan in two places");
}
