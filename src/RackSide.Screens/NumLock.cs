using System.Runtime.InteropServices;

namespace RackSide.Screens;

/// <summary>
/// NumLock of the Linux console, without which the digits of a numeric pad are arrows. A console begins with it off, unless
/// the keyboard's own firmware switched it on. See ioctl_console(2): KDGKBLED, KDSKBLED.
/// </summary>
public static partial class NumLock
{
    private const int Input = 0;
    private const ulong GetFlags = 0x4B64;
    private const ulong SetFlags = 0x4B65;
    private const byte Num = 0x02;

    /// <summary>Switches it on for the console that is the standard input.</summary>
    /// <returns>Whether it is on now; null where the input is no such console and has no NumLock of its own.</returns>
    public static bool? SwitchOn()
    {
        if (!OperatingSystem.IsLinux() || Read(Input, GetFlags, out var flags) != 0)
        {
            return null;
        }

        // The low half holds the flags, the high half what a reset goes back to.
        _ = Write(Input, SetFlags, (nuint)(flags | Num | (Num << 4)));
        return Read(Input, GetFlags, out flags) == 0 && (flags & Num) != 0;
    }

    [LibraryImport("libc", EntryPoint = "ioctl")]
    private static partial int Read(int descriptor, ulong request, out byte flags);

    [LibraryImport("libc", EntryPoint = "ioctl")]
    private static partial int Write(int descriptor, ulong request, nuint flags);
}
