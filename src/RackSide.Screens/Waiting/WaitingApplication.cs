using System.Runtime.CompilerServices;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;

namespace RackSide.Screens.Waiting;

/// <summary>The library's application over readers that sleep until a key comes.</summary>
/// <remarks>
/// The library builds its readers itself and offers no place to give it others but one constructor, which is not public.
/// It is named here, checked by the compiler's own means (no reflection), and by a test that fails when another version of
/// the library has none.
/// </remarks>
internal static class WaitingApplication
{
    /// <summary>An application whose reader stirs the screen's thread.</summary>
    /// <param name="linuxConsole">
    /// Whether to read through the runtime. The other driver does not know what the Linux console sends for its first five
    /// function keys, nor all of its pad.
    /// </param>
    /// <param name="stir">Stirred when keys were read.</param>
    public static IApplication Create(bool linuxConsole, Stir stir) => linuxConsole
        ? (IApplication)New(new ConsoleFactory(stir))
        : (IApplication)New(new AnsiFactory(stir));

    [UnsafeAccessor(UnsafeAccessorKind.Constructor)]
    [return: UnsafeAccessorType("Terminal.Gui.App.ApplicationImpl, Terminal.Gui")]
    private static extern object New(IComponentFactory factory);

    // The input is made on the thread that reads, as the library wants it.
    private sealed class AnsiFactory(Stir stir) : AnsiComponentFactory
    {
        public override IInput<char> CreateInput() => new WaitingAnsiInput(stir);
    }

    private sealed class ConsoleFactory(Stir stir) : NetComponentFactory
    {
        public override IInput<ConsoleKeyInfo> CreateInput() => new WaitingConsoleInput(stir);
    }
}
