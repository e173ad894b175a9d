using NodaTime;
using NodaTime.Testing;
using RackSide.Logbook;
using RackSide.Racks;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Plans;
using RackSide.Training.Racks;

namespace RackSide.Tests.Racks;

/// <summary>A rack on which people do one thing after the other, at random, by a clock that may be wrong.</summary>
internal sealed class RackLife : IDisposable
{
    private readonly string folder;
    private readonly Random chance;
    private readonly FakeClock clock;
    private readonly Duration wrong;

    /// <summary>Opens it and joins the gym, with one lifter or none.</summary>
    public RackLife(Random chance, Instant start, Duration wrong, string? first)
    {
        (this.chance, this.wrong) = (chance, wrong);
        folder = Quick.Folder();
        clock = new FakeClock(start + wrong);
        Book = Open();
        if (first is not null)
        {
            Keep(new Lifter("first", first, MassUnit.Kilogram, clock.GetCurrentInstant()), joined: false);
        }
    }

    /// <summary>Its logbook.</summary>
    public LiteLogbook Book { get; private set; }

    /// <summary>The gym, over a bad line.</summary>
    public required BadLine Gym { get; init; }

    /// <summary>Every event that this rack told.</summary>
    public List<FactId> Told { get; } = [];

    /// <summary>Whose each of them is.</summary>
    public Dictionary<FactId, string> Whose { get; } = [];

    /// <summary>Joins.</summary>
    public void Join() => Book.Join("the-tollbooth");

    /// <summary>Time passes, on every rack by as much.</summary>
    public void Pass(Duration time) => clock.Advance(time);

    /// <summary>Tries to exchange; a line that fails is tried again some other time.</summary>
    public bool Exchange()
    {
        try
        {
            new GymSync(Book, Gym).Run(chance.Next(2) == 0 ? GymSync.Few : GymSync.Many);
            return true;
        }
        catch (GymTrouble)
        {
            return false;
        }
    }

    /// <summary>Closes the logbook and opens it again, as a stay that ends does.</summary>
    public void Reopen()
    {
        Book.Dispose();
        Book = Open();
    }

    /// <summary>Somebody does something.</summary>
    public void DoSomething()
    {
        var lifters = Book.Lifters();
        if (lifters.Count == 0 || chance.Next(25) == 0)
        {
            Keep(new Lifter("lifter-2", $"Lifter {chance.Next(5)}", MassUnit.Kilogram, clock.GetCurrentInstant()), joined: true);
            return;
        }

        var lifter = lifters[chance.Next(lifters.Count)];
        var at = clock.GetCurrentInstant();
        switch (chance.Next(12))
        {
            case 0:
                Begin(lifter.Key, at);
                break;
            case 1 when Some(lifter.Key) is { } session:
                Add(lifter.Key, session.Head.Id, id => new SessionClosed(id, at));
                break;
            case 2 when Some(lifter.Key) is { Sets.Count: > 0 } session:
                Add(lifter.Key, session.Head.Id, id => new FormTold(id, at, session.Sets[chance.Next(session.Sets.Count)].Set.Id, chance.Next(2) == 0));
                break;
            case 3 when Some(lifter.Key) is { Facts.Count: > 0 } session:
                Add(lifter.Key, session.Head.Id, id => new FactStruck(id, at, session.Facts[chance.Next(session.Facts.Count)].Id));
                break;
            case 4:
                var outside = Next(lifter.Key);
                Book.Tell(lifter.Key, new SoreTold(outside, at, new LocalDate(2026, 11, 2), Motion.Squat));
                break;
            case 5:
                Book.Weigh(lifter.Key, new LocalDate(2026, 11, 1 + chance.Next(5)), new Mass(60 + chance.Next(30), MassUnit.Kilogram));
                break;
            case 6:
                Book.Keep(chance.Next(3) switch
                {
                    0 => lifter with { Name = $"Lifter {chance.Next(5)}" },
                    1 => lifter with { Unit = chance.Next(2) == 0 ? MassUnit.Kilogram : MassUnit.Pound },
                    _ => lifter with { Pin = $"proof {chance.Next(5)}" },
                });
                break;
            case 7 when Some(lifter.Key) is { } session:
                Add(lifter.Key, session.Head.Id, id => new SessionRedated(id, at, new LocalDate(2026, 11, 1 + chance.Next(20))));
                break;
            case 8 when chance.Next(6) == 0:
                Book.Erase(lifter.Key);
                Reopen(disposed: true);
                break;
            case var _ when Some(lifter.Key) is { } session:
                Add(lifter.Key, session.Head.Id, id => new SetDone(id, at, "squat", "back-squat", SetKind.Working, 1 + chance.Next(5), 5, chance.Next(7), new Mass(60, MassUnit.Kilogram)));
                break;
        }
    }

    /// <summary>Everything that this rack shows of everybody, so that two racks can be compared; and every identity by itself.</summary>
    public string Shows() => string.Join('\n', Book.Lifters().OrderBy(l => l.Key, StringComparer.Ordinal).SelectMany(l =>
        Book.Sessions(l.Key).Select(s => $"  {s.Head.Id} {s.Date} closed {s.Closed}: {string.Join(" | ", s.Facts)}")
            .Concat(Book.Told(l.Key).Select(f => $"  told {f}"))
            .Concat(Book.WeighIns(l.Key).Select(w => $"  weighs {w}"))
            .Concat(GymFold.OpenTwice(Book.Cards(l.Key)).Select(c => $"  open beside another: {c.Id}"))
            .Prepend(l.ToString())));

    /// <inheritdoc/>
    public void Dispose()
    {
        Book.Dispose();
        Directory.Delete(folder, recursive: true);
    }

    private LiteLogbook Open()
    {
        var book = LiteLogbook.Open(folder, clock.GetCurrentInstant());
        book.Clock = clock;
        return book;
    }

    private void Reopen(bool disposed)
    {
        _ = disposed;
        Book = Open();
    }

    private void Keep(Lifter lifter, bool joined) => Book.Keep(joined ? lifter with { Key = GymKey.Of(lifter) } : lifter);

    private SessionRecord? Some(string lifter) => Book.Sessions(lifter) is { Count: > 0 } all ? all[chance.Next(all.Count)] : null;

    private FactId Next(string lifter)
    {
        var id = Book.NextId();
        Told.Add(id);
        Whose[id] = lifter;
        return id;
    }

    private void Add(string lifter, FactId session, Func<FactId, Fact> make) => Book.Append(session, make(Next(lifter)));

    private void Begin(string lifter, Instant at) => Book.Begin(new SessionHead
    {
        Id = Next(lifter),
        Begun = at,
        Date = at.InUtc().Date,
        Zone = "Europe/Berlin",
        Lifter = lifter,
        Plan = "plan",
        DayKey = "strength-day",
        DayName = "Strength day",
        Kind = DayKind.Strength,
        Prescriptions = [],
    });
}

/// <summary>Folders where a sync costs nothing, for tests that are not about the disk.</summary>
internal static class Quick
{
    /// <summary>A new one.</summary>
    public static string Folder() => Directory.Exists("/dev/shm")
        ? Directory.CreateDirectory(Path.Combine("/dev/shm", $"rackside-{Guid.NewGuid():N}")).FullName
        : Directory.CreateTempSubdirectory("rackside-rack-").FullName;
}
