using RackSide;
using RackSide.Commands;

return Entry.Run(args, new Surroundings(Environment.GetEnvironmentVariable, Console.Out, Console.Error)
{
    In = Console.In,
    TerminalSize = () => Console.IsOutputRedirected ? null : (Console.WindowWidth, Console.WindowHeight),
});
