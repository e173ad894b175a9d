using System.Diagnostics;
using NodaTime;
using RackSide.Training.Plans;
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
        var canvas = new Canvas(size);
        Draw(canvas, session with { Now = Instant.Max(now, session.Now) }, week);
        return canvas.Done();
    }

    private static void Draw(Canvas canvas, Session s, WeekSummary? week)
    {
        switch (s.Phase)
        {
            case Ticking: ChecklistPage.Draw(canvas, s); break;
            case Lifting lifting: LiftPage.Draw(canvas, s, lifting); break;
            case Resting resting: RestPage.Draw(canvas, s, resting); break;
            case Holding holding: HoldPage.Draw(canvas, s, holding); break;
            case Choosing choosing: ChoicePage.Draw(canvas, s, choosing); break;
            case Reading reading: LeafPage.Draw(canvas, s, reading); break;
            case Finishing finishing: FinishPage.Draw(canvas, s, finishing, week); break;
            case Ended: FinishPage.Draw(canvas, s, new Finishing(s.Now), week); break;
            default: throw new UnreachableException();
        }
    }

    /// <summary>The line at the top: what day it is, and how far.</summary>
    internal static void Header(Canvas canvas, Session s, string? place = null)
    {
        var kind = s.Head.Kind == DayKind.Strength ? "STRENGTH DAY" : "SKILLS DAY";
        var left = canvas.Size.Compact && place is not null ? place : $"{kind}  {Words.Day(s.Head.Date)}";
        var gone = (int)(s.Now - s.Head.Begun).TotalMinutes;
        var ahead = (int)Math.Round(Pace.Left(s.Place).TotalMinutes);
        Frame.Header(canvas, left, canvas.Size.Compact ? $"{gone} min, {ahead} left" : $"{gone} min gone, about {ahead} left");
    }

    /// <summary>What is told for a short time, or what stands in the way of writing; null where nothing is.</summary>
    internal static string? Told(Session s) => s.WriteTrouble ?? (s.Notice is { } n && n.Until > s.Now ? n.Text : null);
}
