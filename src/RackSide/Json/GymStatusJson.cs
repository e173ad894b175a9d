using RackSide.Logbook;
using RackSide.Racks;
using RackSide.Training.History;

namespace RackSide.Json;

/// <summary>A session that is open beside another one of the same lifter.</summary>
/// <param name="Lifter">Whose.</param>
/// <param name="Rack">The rack that began it.</param>
/// <param name="Date">Its date, ISO 8601.</param>
internal sealed record OpenSessionJson(string Lifter, string Rack, string Date);

/// <summary>What <c>rackside gym status --json</c> prints.</summary>
internal sealed record GymStatusJson
{
    /// <summary>The version of this shape.</summary>
    public int Schema { get; } = JsonOutput.Schema;

    /// <summary>Whether the rack is in a gym.</summary>
    public required bool Joined { get; init; }

    /// <summary>This rack's name; null where there is no logbook.</summary>
    public required string? Rack { get; init; }

    /// <summary>The gym's identity; null where none was ever joined.</summary>
    public required string? Gym { get; init; }

    /// <summary>The connection, without a password; null for none.</summary>
    public required string? Server { get; init; }

    /// <summary>How many events wait to be sent one by one.</summary>
    public required int Waiting { get; init; }

    /// <summary>Whether everything is to be sent.</summary>
    public required bool Everything { get; init; }

    /// <summary>The server's number of the last event taken.</summary>
    public required long Taken { get; init; }

    /// <summary>Sessions that are open beside another one of the same lifter.</summary>
    public required IReadOnlyList<OpenSessionJson> OpenTwice { get; init; }

    /// <summary>How a rack stands.</summary>
    public static GymStatusJson Of(Gym gym, ShareStatus? share, GymServerFile? server) => new()
    {
        Joined = share?.Joined ?? false,
        Rack = share?.Rack,
        Gym = share?.Gym,
        Server = server?.Connection,
        Waiting = share?.Waiting ?? 0,
        Everything = share is { Joined: true, Whole: not null },
        Taken = share?.Pulled ?? 0,
        OpenTwice = [.. GymText.OpenTwice(gym).SelectMany(o => o.Open.Select(c => Of(o.Lifter, c)))],
    };

    private static OpenSessionJson Of(Lifter lifter, SessionCard card) => new(lifter.Name, card.Id.Rack, NodaTime.Text.LocalDatePattern.Iso.Format(card.Date));
}
