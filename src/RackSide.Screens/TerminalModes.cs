using Terminal.Gui.Drivers;

namespace RackSide.Screens;

/// <summary>What a terminal is told besides cells.</summary>
internal static class TerminalModes
{
    /// <summary>
    /// Sent after the library has set the terminal up, and again whenever it or the runtime may have done so afresh.
    /// The runtime switches the numeric pad to application mode, in which the library loses most of its keys; the library
    /// asks for every motion of the mouse, which nothing here uses.
    /// </summary>
    public const string Settle = "\e[?1l\e>" + MouseOff;

    /// <summary>Sent before the library gives the terminal back: the runtime leaves the cursor keys in application mode.</summary>
    public const string Leave = "\e[0m\e[?1l\e>";

    /// <summary>
    /// Sent after <see cref="Leave"/> to the Linux console, which has no second screen to return from: without it the last
    /// page would stay under whatever the program prints.
    /// </summary>
    public const string Clear = "\e[H\e[2J\e[?25h";

    private const string MouseOff = "\e[?1003l\e[?1015l\e[?1006l";

    /// <summary>
    /// Makes the library ignore the answer to a question it asks at its start: whether the terminal speaks a richer keyboard
    /// protocol. It would turn that protocol on, but has no names for the numeric pad in it, and those keys would be lost.
    /// </summary>
    public static void KeepPlainKeyboard(IDriver driver)
    {
        var question = EscSeqUtils.CSI_QueryKittyKeyboardFlags;
        driver.GetInputProcessor().GetParser().StopExpecting(question.Terminator, question.Value, persistent: false);
    }
}
