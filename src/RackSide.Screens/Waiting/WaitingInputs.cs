using System.Collections.Concurrent;
using Terminal.Gui.Drivers;

namespace RackSide.Screens.Waiting;

/// <summary>The library's reader of escape sequences, which sleeps until there is something to read.</summary>
internal sealed class WaitingAnsiInput(Stir stir) : AnsiInput, IInput<char>
{
    private ConcurrentQueue<char>? queue;

    void IInput<char>.Initialize(ConcurrentQueue<char> inputQueue) => Initialize(queue = inputQueue);

    void IInput<char>.Run(CancellationToken token) => ReadingLoop.Run(this, Peek, queue!, stir, token);
}

/// <summary>The library's reader through the runtime's console, which sleeps until there is something to read.</summary>
internal sealed class WaitingConsoleInput(Stir stir) : NetInput, IInput<ConsoleKeyInfo>
{
    private ConcurrentQueue<ConsoleKeyInfo>? queue;

    void IInput<ConsoleKeyInfo>.Initialize(ConcurrentQueue<ConsoleKeyInfo> inputQueue) => Initialize(queue = inputQueue);

    void IInput<ConsoleKeyInfo>.Run(CancellationToken token) => ReadingLoop.Run(this, Peek, queue!, stir, token);
}

/// <summary>What a reader does on its own thread until the application ends.</summary>
internal static class ReadingLoop
{
    /// <summary>Reads what there is, stirs the screen's thread, and sleeps until there is more.</summary>
    public static void Run<T>(InputImpl<T> input, Func<bool> any, ConcurrentQueue<T> queue, Stir stir, CancellationToken token)
    {
        using var wait = new KeyWait(token);
        while (!token.IsCancellationRequested)
        {
            while (any())
            {
                foreach (var one in input.Read())
                {
                    queue.Enqueue(one);
                }

                stir.Up();
            }

            wait.ForKeys(token);
        }
    }
}
