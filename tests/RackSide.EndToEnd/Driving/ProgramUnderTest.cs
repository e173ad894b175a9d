namespace RackSide.EndToEnd.Driving;

/// <summary>
/// How to start what is tested. An environment variable can name a published binary, so that the same tests run on what
/// is shipped; otherwise what was built with the tests is run.
/// </summary>
internal static class ProgramUnderTest
{
    /// <summary>The program itself; <c>RACKSIDE_PROGRAM</c> names another build of it.</summary>
    public static string[] RackSide => Command("RACKSIDE_PROGRAM", "rackside.dll");

    /// <summary>The small program that shows what reaches a screen; <c>RACKSIDE_PROBE</c> names another build of it.</summary>
    public static string[] Probe => Command("RACKSIDE_PROBE", "screens-probe.dll");

    private static string[] Command(string variable, string built) =>
        Environment.GetEnvironmentVariable(variable) is { Length: > 0 } published
            ? [published]
            : ["dotnet", Path.Combine(AppContext.BaseDirectory, built)];
}
