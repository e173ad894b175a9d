namespace RackSide.Logbook.Tests.Harness;

/// <summary>
/// How often a fault is tried: seldom in the suite, often where <c>RACKSIDE_LONG_RUN=1</c> asks for it. The long run is what
/// docs/durability.md has its figures from.
/// </summary>
internal static class LongRun
{
    public static int Or(int usual, int often) => Environment.GetEnvironmentVariable("RACKSIDE_LONG_RUN") == "1" ? often : usual;
}
