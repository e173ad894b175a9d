using System.CommandLine;
using RackSide.Json;
using RackSide.Logbook;
using RackSide.Racks;

namespace RackSide.Commands;

/// <summary><c>rackside gym status</c>: what waits, and what the lifters ought to look at. It asks no server.</summary>
internal sealed class GymStatusCommand(RackSideCommand root, Surroundings around)
    : PrintingCommand("status", "How this rack stands with its gym: what waits to be sent, and what was left open on two racks.", root, around)
{
    /// <inheritdoc/>
    protected override int Run(ParseResult parsed)
    {
        using var gym = Open(parsed);
        var server = GymServerFile.Read(gym.Folders);
        var share = gym.Logbook switch { LiteLogbook own => own.Share, LogbookSnapshot seen => seen.Share, _ => null };
        return Print(parsed, GymText.Status(gym, share, server), () => GymStatusJson.Of(gym, share, server), JsonOutput.Shapes.GymStatusJson);
    }
}
