using System.Globalization;
using NodaTime;
using RackSide.Pages.Rack;
using RackSide.Training.Exercises;
using RackSide.Training.Sessions;

namespace RackSide.Visits;

/// <summary>Where an open session stands, in a sentence.</summary>
internal static class ResumeText
{
    /// <summary>The sentence: "Barbell back squat, working set 3 of 5 is next; stopped at 18:41."</summary>
    public static string Sentence(Catalogue catalogue, AgendaItem? next, LocalDateTime stopped)
    {
        var at = stopped.ToString("HH:mm 'on' ddd d MMM", CultureInfo.InvariantCulture);
        return next switch
        {
            null => $"All is done; the last entry was at {at}.",
            ConfirmItem => $"Nothing is lifted yet; stopped at {at}.",
            SlotItem item => $"{catalogue[item.Asked.Exercise].Name}{Which(item)} is next; stopped at {at}.",
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    private static string Which(SlotItem item) => Words.Which(item) is { Length: > 0 } which ? $", {which}," : "";
}
