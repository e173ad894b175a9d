using System.CommandLine;

namespace RackSide.Commands;

/// <summary><c>rackside check</c>: where everything is and whether it is well. It goes on past every trouble it finds.</summary>
internal sealed class CheckCommand : Command
{
    /// <summary>The command.</summary>
    public CheckCommand(RackSideCommand root, Surroundings around)
        : base("check", "Where the files are and what decided it, and whether all is well: settings, plan, logbook, clock, terminal.") =>
        SetAction(parsed =>
        {
            if (parsed.GetValue(root.Demo))
            {
                throw new Refusal(ExitCode.Usage, "check: it looks at your own files, so it takes no --demo; leave it out");
            }

            var found = new Findings(root.Places(parsed), parsed.GetValue(root.PlanFile), around).All();
            around.Out.Print(found.Select(f => f.Line));
            return found.Select(f => f.Code).FirstOrDefault(code => code != ExitCode.Ok);
        });
}
