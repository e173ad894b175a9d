using RackSide;
using RackSide.Commands;
using RackSide.Places;

return Entry.Run(args, new Surroundings(Environment.GetEnvironmentVariable, Console.Out, Console.Error)
{
    Ask = question =>
    {
        if (Console.IsInputRedirected)
        {
            return null;
        }

        Console.Error.Write(question);
        return Console.In.ReadLine() ?? "";
    },
    Sticks = () => Sticks.Mounted(Environment.GetEnvironmentVariable),
    In = Console.In,
    TerminalSize = () => Console.IsOutputRedirected ? null : (Console.WindowWidth, Console.WindowHeight),
});
