using RackSide.EndToEnd.Driving;

namespace RackSide.EndToEnd.Screens;

/// <summary>Starts the probe and waits for its page.</summary>
internal static class Probe
{
    public static async Task<Tmux> Start(TerminalSetting? setting = null, params string[] arguments)
    {
        var tmux = Tmux.Start([.. ProgramUnderTest.Probe, .. arguments], setting);
        try
        {
            await tmux.WaitFor(Page);
            return tmux;
        }
        catch
        {
            tmux.Dispose();
            throw;
        }
    }

    /// <summary>Whether the whole page is there: its last row is painted last.</summary>
    public static bool Shown(string screen) => screen.Contains("PROBE", StringComparison.Ordinal) && screen.Contains("count down", StringComparison.Ordinal);

    private static string Page => "count down";
}
