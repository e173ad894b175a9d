using NodaTime;
using RackSide.Logbook;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

// Writes sets into a logbook until it is killed, and tells each on standard output once it was acknowledged:
// "<session> <set>" as counts. Arguments: the folder, how many sets to write between closing and opening again.
var folder = args[0];
var setsARun = int.Parse(args[1], System.Globalization.CultureInfo.InvariantCulture);
var now = Instant.FromUtc(2026, 3, 4, 18, 0);

while (true)
{
    using var logbook = LiteLogbook.Open(folder, now);
    var head = new SessionHead
    {
        Id = logbook.NextId(),
        Begun = now,
        Date = new LocalDate(2026, 3, 4),
        Zone = "Europe/London",
        Lifter = "ottoline",
        Plan = "Two strength days",
        DayKey = "a",
        DayName = "Strength A",
        Kind = DayKind.Strength,
        Prescriptions = [],
    };
    logbook.Begin(head);
    for (var n = 0; n < setsARun; n++)
    {
        var id = logbook.NextId();
        logbook.Append(head.Id, new SetDone(
            id, now, "squat", "squat", SetKind.Working, n + 1, 5, (int)(id.Sequence % 13), Mass.Kg(id.Sequence)));
        Console.WriteLine($"{head.Id.Sequence} {id.Sequence}");
        if (id.Sequence % 3 != 0)
        {
            logbook.Settle();
        }
    }

    Console.WriteLine("closing");
}
