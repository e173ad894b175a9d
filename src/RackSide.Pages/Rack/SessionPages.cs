using System.Diagnostics;
using NodaTime;
using RackSide.Training.Plans;
using RackSide.Training.Schedule;
using RackSide.Training.Sessions;
using RackSide.Training.Summary;

namespace RackSide.Pages.Rack;

/// <summary>The page of a session: a function of the session, the room and the time, and of nothing else.</summary>
public static class SessionPages
{
    /// <summary>Draws the page.</summary>
    /// <param name="session">The session.</param>
    /// <param name="week">The week so far, for the last page; null before it is reached.</param>
    /// <param name="size">The room.</param>
    /// <param name="now">The present; an instant before the session's own is taken as the session's own.</param>
    public static Page Draw(Session session, WeekSummary? week, PageSize size, Instant now)
    {
        var s = session with { Now = Instant.Max(now, session.Now) };
        var page = OfPhase(s, week, size);
        return page.Telling(page.Tells with { Topic = Topic(s.Phase, s), Pending = s.WriteTrouble is null && !s.Unwritten.IsEmpty });
    }

    /// <summary>A session's page is another one where it waits for another thing, or for the same of another set.</summary>
    private static string Topic(Phase phase, Session s) => phase switch
    {
        Choosing p => $"{p.What} {Topic(p.Under, s)}",
        Reading p => $"{p.What} {Topic(p.Under, s)}",
        _ => $"{phase.GetType().Name} {s.Place.Current?.Key} {s.WriteTrouble}",
    };

    private static Page OfPhase(Session s, WeekSummary? week, PageSize size) => s.Phase switch
    {
        Ticking => Painted(size, c => ChecklistPage.Draw(c, s)),
        Lifting p => Painted(size, c => LiftPage.Draw(c, s, p)),
        Asking p => Painted(size, c => QuestionPage.Draw(c, s, p)),
        Resting p => Painted(size, c => RestPage.Draw(c, s, p)),
        Holding p => Painted(size, c => HoldPage.Draw(c, s, p)),
        Choosing p => ChoicePage.Draw(s, p, size),
        Reading p => LeafPage.Draw(s, p, size),
        Finishing p => FinishPage.Draw(s, p, week, size),
        Ended => FinishPage.Draw(s, new Finishing(s.Now), week, size),
        _ => throw new UnreachableException(),
    };

    private static Page Painted(PageSize size, Action<Canvas> draw)
    {
        var canvas = new Canvas(size);
        draw(canvas);
        return canvas.Done();
    }

    /// <summary>The line at the top: what day it is, and how far.</summary>
    internal static void Header(Canvas canvas, Session s, string? place = null)
    {
        var kind = s.Head.Kind == DayKind.Strength ? "STRENGTH DAY" : "SKILLS DAY";
        var left = canvas.Size.Compact && place is not null ? place : $"{kind}  {s.Head.Date.Short()}";
        var gone = (int)(s.Now - s.Head.Begun).TotalMinutes;
        var ahead = (int)Math.Round(Pace.Left(s.Place, s.Setting.Pace).TotalMinutes);
        Frame.Header(canvas, left, canvas.Size.Compact ? $"{gone} min, {ahead} left" : $"{gone} min gone, about {ahead} left");
    }

    /// <summary>What is told for a short time, or what stands in the way of writing; null where nothing is.</summary>
    internal static string? Told(Session s) => s.WriteTrouble ?? (s.Notice is { } n && n.Until > s.Now ? n.Text : null);
}
