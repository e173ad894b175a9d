using System.Diagnostics;

namespace RackSide.EndToEnd.Sessions;

/// <summary>A test on a disk of its own, which the kernel lets any user make in a name space of their own; skipped where it does not.</summary>
public sealed class SmallDiskFactAttribute : FactAttribute
{
    private static readonly bool Possible = Try();

    public SmallDiskFactAttribute() => Skip = Possible ? null : "this machine lets nobody mount a disk in a name space of their own (unshare -rm)";

    private static bool Try()
    {
        try
        {
            using var tried = Process.Start(new ProcessStartInfo("unshare", ["-rm", "sh", "-c", "mount -t tmpfs tmpfs /mnt"]) { RedirectStandardError = true })!;
            tried.WaitForExit();
            return tried.ExitCode == 0;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }
}
