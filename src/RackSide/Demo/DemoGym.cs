using NodaTime;
using RackSide.Files;
using RackSide.Logbook;
using RackSide.Places;
using RackSide.Time;
using RackSide.Training.History;

namespace RackSide.Demo;

/// <summary>Opens the invented gym in a temporary folder, which goes when the gym is closed.</summary>
internal static class DemoGym
{
    /// <summary>Opens it, with twelve weeks of history that end yesterday.</summary>
    /// <param name="folder">A folder that was asked for; there can be none.</param>
    /// <param name="planFile">A coach's plan to go on with from today; null for Juno Petrov's, which is the built-in one.</param>
    /// <param name="clock">The clock.</param>
    /// <exception cref="Refusal">A folder was asked for, the plan has mistakes, or there is no room.</exception>
    public static Gym Open(string? folder, string? planFile, IClock clock)
    {
        if (folder is not null)
        {
            throw new Refusal(ExitCode.Usage, "--demo keeps nothing, so it takes no --data; leave one of the two out");
        }

        var temporary = new TemporaryFolder();
        try
        {
            var places = new Folders(temporary.Path, temporary.Path, "--demo");
            Fill(places, clock.GetCurrentInstant(), SystemTime.Zone());
            var gym = Gym.Open(places, planFile, clock, closing: temporary);
            temporary.LeaveSignals();
            return gym;
        }
        catch
        {
            temporary.Dispose();
            throw;
        }
    }

    private static void Fill(Folders places, Instant now, DateTimeZone zone)
    {
        var today = now.InZone(zone).Date;
        var rules = Tollbooth.Rules(today);
        File.WriteAllText(places.GymFile, GymFile.Write(rules));

        var catalogue = CatalogueFile.Read();
        var weeks = new TwelveWeeks(PlanFile.Default(catalogue).On(rules.TrainingDays), catalogue, rules.Kit, today, zone);
        using var logbook = LiteLogbook.Open(places.Data, now);
        foreach (var story in Tollbooth.Stories)
        {
            logbook.Keep(story.Joins(weeks.Joined(story)));
        }

        logbook.Import(weeks.Of(Tollbooth.Stories, logbook.NextId()));
        foreach (var story in Tollbooth.Stories)
        {
            Tell(logbook, story.Joins(now).Key, weeks.Nights(story, logbook.NextId));
        }
    }

    private static void Tell(LiteLogbook logbook, string lifter, IEnumerable<DayTold> nights)
    {
        foreach (var night in nights)
        {
            logbook.Tell(lifter, night);
        }
    }
}
