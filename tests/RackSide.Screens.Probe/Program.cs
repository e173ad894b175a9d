using NodaTime;
using RackSide.Screens;
using RackSide.Screens.Probe;

// Usage: screens-probe [--no-color] [--silent] [--hangup FILE]
// Shows a page until q, then says on standard output how the screen ended.
#pragma warning disable RS0030 // A program of its own names the system clock, as src/RackSide does.
IClock clock = SystemClock.Instance;
#pragma warning restore RS0030
var hangupFile = args.SkipWhile(argument => argument != "--hangup").Skip(1).FirstOrDefault();
var options = ScreenOptions.From(Environment.GetEnvironmentVariable, args.Contains("--no-color"), args.Contains("--silent")) with
{
    Hangup = () => File.WriteAllText(hangupFile ?? "/dev/null", "closed\n"),
    Crashed = fault => Console.WriteLine($"crashed: {fault.Message}"),
};
var outcome = ScreenHost.Run(new ProbeConversation(clock.GetCurrentInstant()), clock, options);
Console.WriteLine($"ended: {outcome.End} {outcome.Fault?.Message}".TrimEnd());
return outcome.ExitCode;
