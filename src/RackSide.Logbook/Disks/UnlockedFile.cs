using System.Runtime.InteropServices;
using System.Text;
using Microsoft.Win32.SafeHandles;

namespace RackSide.Logbook.Disks;

/// <summary>
/// Reads a file that another process holds for itself, without a lock of its own: the runtime lets nobody open such a file,
/// so this asks the C library. Only for files whose bytes say by themselves how far they are whole.
/// </summary>
internal static class UnlockedFile
{
    // O_RDONLY, and O_CLOEXEC as Linux and macOS number it.
    private static readonly int Flags = OperatingSystem.IsLinux() ? 0x80000 : 0x1000000;

    /// <summary>Every byte of a file, or null where there is none.</summary>
    /// <exception cref="IOException">It could not be read.</exception>
    public static byte[]? ReadAll(string path)
    {
        if (!File.Exists(path))
        {
            return null;
        }

        using var handle = Open(path);
        var bytes = new byte[RandomAccess.GetLength(handle)];
        for (var done = 0; done < bytes.Length;)
        {
            var read = RandomAccess.Read(handle, bytes.AsSpan(done), done);
            if (read == 0)
            {
                return bytes[..done];
            }

            done += read;
        }

        return bytes;
    }

    private static SafeFileHandle Open(string path)
    {
        if (OperatingSystem.IsWindows())
        {
            return File.OpenHandle(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        }

        var handle = Open(Encoding.UTF8.GetBytes(path + '\0'), Flags);
        return handle >= 0
            ? new SafeFileHandle(handle, ownsHandle: true)
            : throw new IOException($"{path} could not be read: {Marshal.GetLastPInvokeErrorMessage()}");
    }

    [DllImport("libc", EntryPoint = "open", SetLastError = true)]
    private static extern int Open(byte[] path, int flags);
}
