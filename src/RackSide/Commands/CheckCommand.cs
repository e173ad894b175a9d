using System.CommandLine;
using RackSide.Json;

namespace RackSide.Commands;

/// <summary><c>rackside check</c>: where everything is and whether it is well. It goes on past every trouble it finds.</summary>
internal sealed class CheckCommand : Command
{
    private readonly Option<bool> json = new("--json") { Description = "Print JSON instead of text." };

    /// <summary>The command.</summary>
    public CheckCommand(RackSideCommand root, Surroundings around)
        : base("check", "Where the files are and what decided it, and whether all is well: settings, plan, logbook, copies, clock, terminal, font.")
    {
        Options.Add(json);
        SetAction(parsed =>
        {
            if (parsed.GetValue(root.Demo))
            {
                throw new Refusal(ExitCode.Usage, "check: it looks at your own files, so it takes no --demo; leave it out");
            }

            var found = new Findings(root.Places(parsed), parsed.GetValue(root.PlanFile), around).All();
            Print(around, found, parsed.GetValue(json));
            return found.Select(f => f.Code).FirstOrDefault(code => code != ExitCode.Ok);
        });
    }

    private static void Print(Surroundings around, IReadOnlyList<Finding> found, bool asJson)
    {
        if (asJson)
        {
            JsonOutput.Write(around.Out, CheckJson.Of(found), JsonOutput.Shapes.CheckJson);
        }
        else
        {
            around.Out.Print(found.Select(f => f.Line));
        }
    }
}
