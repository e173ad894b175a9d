using System.Globalization;
using NodaTime;
using NodaTime.Text;
using RackSide.Files;
using RackSide.Logbook;
using RackSide.Tests.Commands;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Measures;
using RackSide.Training.Planning;
using RackSide.Training.Plans;

namespace RackSide.Tests.Docs;

/// <summary>A logbook with the sets of docs/week-by-hand.md, as the plan's own sessions. Tests only read it.</summary>
public sealed class HandWeek : IDisposable
{
    private static readonly Catalogue Catalogue = CatalogueFile.Read();
    private static readonly HouseRules Rules = new(
        KitDefaults.For(MassUnit.Kilogram), [IsoDayOfWeek.Monday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Friday], Sound: true);

    private static readonly Plan Plan = PlanFile.Default(Catalogue).On(Rules.TrainingDays);
    private static readonly Lifter Ottoline = new("first", "Ottoline Marsh", MassUnit.Kilogram, At("2026-11-01", "12:00"));

    private readonly PassingFolder folder = new();
    private readonly List<string> otherwise = [];

    /// <summary>What the plan asked otherwise than the paper says; nothing where they agree.</summary>
    public IReadOnlyList<string> Otherwise => otherwise;

    /// <summary>Writes it.</summary>
    public HandWeek()
    {
        var paper = HandPaper.Read();
        folder.File("gym.yaml", GymFile.Write(Rules));
        using var logbook = LiteLogbook.Open(folder.Path, Ottoline.Joined);
        logbook.Keep(Ottoline);
        foreach (var session in paper.Sessions)
        {
            Write(logbook, session);
        }

        foreach (var morning in paper.Mornings)
        {
            Write(logbook, morning);
        }
    }

    /// <summary>Where it lies.</summary>
    public string Folder => folder.Path;

    /// <inheritdoc/>
    public void Dispose() => folder.Dispose();

    private static void Write(LiteLogbook logbook, HandMorning morning)
    {
        var date = LocalDatePattern.Iso.Parse(morning.Date).Value;
        if (morning.Weight is { } weight)
        {
            logbook.Weigh(Ottoline.Key, date, Mass.Kg(weight));
        }

        if (morning.Slept is { } slept)
        {
            logbook.Tell(Ottoline.Key, new DayTold(logbook.NextId(), At(morning.Date, "07:00"), date) { Slept = slept });
        }
    }

    private void Write(LiteLogbook logbook, HandSession session)
    {
        var date = LocalDatePattern.Iso.Parse(session.Date).Value;
        var history = new TrainingHistory(logbook.Sessions(Ottoline.Key));
        var todays = Planner.For(Plan, Catalogue, Rules.Kit, Ottoline, history, date);
        var head = new SessionHead
        {
            Id = logbook.NextId(),
            Begun = At(session.Date, session.From),
            Date = date,
            Zone = "Etc/UTC",
            Lifter = Ottoline.Key,
            Plan = Plan.Name,
            DayKey = todays.Day!.Key,
            DayName = todays.Day.Name,
            Kind = todays.Day.Kind,
            Prescriptions = todays.Prescriptions,
        };
        Compare(session, todays);
        logbook.Begin(head);
        foreach (var line in session.Lines)
        {
            Write(logbook, head, session, line, todays.Prescriptions.Single(p => p.Slot == line.Slot));
        }

        logbook.Append(head.Id, new SessionClosed(logbook.NextId(), At(session.Date, session.To)));
    }

    private void Compare(HandSession session, TodaysPlan todays)
    {
        var lines = session.Lines.Where(l => !l.WarmUp).ToList();
        var told = lines.Select(l => $"{l.Slot} {l.Exercise} {string.Join(' ', l.Asked)}");
        var asked = todays.Prescriptions.Where(p => p.Scheme is not Scheme.Tick).Select(p => $"{p.Slot} {p.Exercise} {string.Join(' ', p.Targets)}");
        otherwise.AddRange(told.Zip(asked).Where(p => p.First != p.Second).Select(p => $"{session.Date}: the paper has {p.First}, the plan {p.Second}"));
        if (session.Day != todays.Day!.Key || lines.Count != asked.Count())
        {
            otherwise.Add($"{session.Date}: the paper has {session.Day} of {lines.Count} lines, the plan {todays.Day.Key} of {asked.Count()}");
        }
    }

    private static void Write(LiteLogbook logbook, SessionHead head, HandSession session, HandLine line, Prescription asked)
    {
        var kind = line.WarmUp ? SetKind.WarmUp : asked.Scheme switch
        {
            Scheme.Hold => SetKind.Hold,
            Scheme.Total => SetKind.Share,
            Scheme.Accumulate => SetKind.HeldShare,
            _ => SetKind.Working,
        };
        Mass? load = line.Load is { } kg ? Mass.Kg(kg) : null;
        var at = line == session.Lines[^1] ? At(session.Date, session.To) : head.Begun;
        foreach (var (done, i) in line.Done.Select((d, i) => (d, i)))
        {
            var set = new SetDone(
                logbook.NextId(), at, line.Slot, line.Exercise, kind, i + 1, line.Asked[Math.Min(i, line.Asked.Count - 1)], done.Count, load);
            logbook.Append(head.Id, set);
            if (done.Slipped)
            {
                logbook.Append(head.Id, new FormTold(logbook.NextId(), at, set.Id, Slipped: true));
            }
        }
    }

    private static Instant At(string date, string hour) =>
        InstantPattern.General.Parse(string.Create(CultureInfo.InvariantCulture, $"{date}T{hour}:00Z")).Value;
}
