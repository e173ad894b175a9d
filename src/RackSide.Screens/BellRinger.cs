using RackSide.Pages;
using Terminal.Gui.App;

namespace RackSide.Screens;

/// <summary>Rings the terminal's bell. The second of two follows later: terminals make one sound of two at once.</summary>
internal sealed class BellRinger(IApplication app, bool sound, Action<Bell>? alarm)
{
    private const string Bel = "\a";
    private static readonly TimeSpan Apart = TimeSpan.FromMilliseconds(300);

    public void Ring(Bell bell)
    {
        if (!sound || bell is Bell.None)
        {
            return;
        }

        alarm?.Invoke(bell);
        Strike();
        if (bell is Bell.Twice)
        {
            app.AddTimeout(Apart, () =>
            {
                Strike();
                return false;
            });
        }
    }

    private void Strike() => app.Driver?.WriteRaw(Bel);
}
