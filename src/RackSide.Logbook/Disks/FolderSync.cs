using System.Runtime.InteropServices;
using System.Text;

namespace RackSide.Logbook.Disks;

/// <summary>
/// fsync of a folder, which makes new and changed names in it lasting (POSIX.1-2017, fsync, rationale). .NET opens no
/// folder, so this asks the C library.
/// </summary>
internal static class FolderSync
{
    private const int ReadOnly = 0;

    /// <summary>Returns when the folder's names are on the device.</summary>
    /// <exception cref="IOException">The folder could not be opened or synced.</exception>
    public static void Run(string folder)
    {
        var handle = Open(Encoding.UTF8.GetBytes(folder + '\0'), ReadOnly);
        if (handle < 0)
        {
            throw Failed(folder);
        }

        try
        {
            if (Fsync(handle) < 0)
            {
                throw Failed(folder);
            }
        }
        finally
        {
            _ = Close(handle);
        }
    }

    private static IOException Failed(string folder) =>
        new($"the folder {folder} could not be synced: {Marshal.GetLastPInvokeErrorMessage()}");

    [DllImport("libc", EntryPoint = "open", SetLastError = true)]
    private static extern int Open(byte[] path, int flags);

    [DllImport("libc", EntryPoint = "fsync", SetLastError = true)]
    private static extern int Fsync(int handle);

    [DllImport("libc", EntryPoint = "close")]
    private static extern int Close(int handle);
}
