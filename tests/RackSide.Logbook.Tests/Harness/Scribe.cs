using System.Globalization;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Logbook.Tests.Harness;

/// <summary>Writes into a logbook and remembers what was acknowledged, and after how many calls to the disk.</summary>
internal sealed class Scribe(Func<int> calls)
{
    private readonly List<(int After, Func<LiteLogbook, bool> Holds)> acks = [];

    /// <summary>How many writes were acknowledged.</summary>
    public int Count => acks.Count;

    /// <summary>A lifter's change, a session of that many sets and a weigh-in. A write the disk refused is not acknowledged.</summary>
    /// <param name="book">The logbook.</param>
    /// <param name="sets">How many sets.</param>
    /// <param name="closes">Whether the session is closed, which has the log copied.</param>
    public void Train(LiteLogbook book, int sets, bool closes = false)
    {
        var turn = acks.Count;
        Try(() => book.Keep(Tollbooth.Ottoline with { Name = $"Ottoline {turn}" }), b => Turn(b) >= turn);
        var head = Tollbooth.Head(book.NextId(), date: Tollbooth.Wednesday.PlusDays(turn));
        if (!Try(() => book.Begin(head), b => Session(b, head.Id)?.Head.Date == head.Date))
        {
            return;
        }

        for (var n = 1; n <= sets; n++)
        {
            Add(book, head.Id, n);
            if (n % 3 == 0)
            {
                // As a writer does when nothing waits; the sets between lie in the journal alone for a while.
                book.Settle();
            }
        }

        if (closes)
        {
            var end = new SessionClosed(book.NextId(), Tollbooth.Evening);
            Try(() => book.Append(head.Id, end), b => Session(b, head.Id)?.Closed == true);
        }

        var weighed = new WeighIn(head.Date, Mass.Kg(70 + turn / 10m));
        Try(() => book.Weigh("ottoline", weighed.Date, weighed.Weight), b => b.WeighIns("ottoline").Contains(weighed));
    }

    /// <summary>How many of the writes acknowledged within that many calls a logbook does not hold.</summary>
    public int Missing(LiteLogbook book, int within = int.MaxValue) => acks.Count(a => a.After <= within && !a.Holds(book));

    private void Add(LiteLogbook book, FactId session, int number)
    {
        var set = Tollbooth.Set(book.NextId(), number, number % 7);
        Try(() => book.Append(session, set), b => Session(b, session)?.Facts.Count(f => f == set) == 1);
    }

    private bool Try(Action write, Func<LiteLogbook, bool> holds)
    {
        try
        {
            write();
        }
        catch (IOException)
        {
            return false;
        }

        acks.Add((calls(), holds));
        return true;
    }

    private static SessionRecord? Session(LiteLogbook book, FactId id) =>
        book.Sessions("ottoline").SingleOrDefault(s => s.Head.Id == id);

    private static int Turn(LiteLogbook book) => book.Lifters() is [var one]
        ? int.Parse(one.Name.Split(' ')[1], CultureInfo.InvariantCulture)
        : -1;
}
