using NodaTime;
using NodaTime.Testing;
using RackSide.Logbook;
using RackSide.Racks;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Plans;
using RackSide.Training.Racks;

namespace RackSide.Tests.Racks;

/// <summary>The exchange beside the screen: nothing that a lifter does waits for it.</summary>
public class BackgroundSyncTests
{
    private static readonly Instant Now = Instant.FromUtc(2026, 11, 2, 18, 0);

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    [Fact]
    public void A_set_is_written_while_the_gym_does_not_answer_and_is_sent_once_it_does()
    {
        var folder = Quick.Folder();
        try
        {
            using var book = Joined(folder);
            var gym = new StuckGym();
            using (var sync = new BackgroundSync(book, gym, TimeProvider.System) { Resting = true })
            {
                gym.Asked.Wait(Patience).Should().BeTrue("it asks by itself");

                // The gym answers nothing now, and holds the exchange in the middle.
                var head = Head(book);
                book.Begin(head);
                book.Append(head.Id, new SetDone(book.NextId(), Now, "squat", "back-squat", SetKind.Working, 1, 5, 5, new Mass(60, MassUnit.Kilogram)));
                book.Open(book.Lifters()[0].Key)!.Sets.Should().ContainSingle();
                sync.Word.Should().Be("waiting");

                gym.Answers.Set();
                SpinWait.SpinUntil(() => sync.Word == "shared" && gym.Count == 3, Patience).Should().BeTrue();
            }
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public async Task It_ends_at_once_also_while_the_gym_does_not_answer()
    {
        var folder = Quick.Folder();
        try
        {
            using var book = Joined(folder);
            var gym = new StuckGym();
            var sync = new BackgroundSync(book, gym, TimeProvider.System);
            gym.Asked.Wait(Patience).Should().BeTrue();

            await Task.Run(sync.Dispose).WaitAsync(Patience);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void What_is_long_is_left_for_when_nobody_trains()
    {
        var folder = Quick.Folder();
        try
        {
            using var book = Joined(folder);
            var gym = new StoredGym();

            new GymSync(book, gym) { Lightly = true }.Run(GymSync.Few);
            gym.Count.Should().Be(0);
            book.Share.Waits.Should().BeTrue();

            new GymSync(book, gym).Run(GymSync.Few);
            gym.Count.Should().Be(1);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void While_somebody_trains_no_log_is_copied_for_what_comes()
    {
        var folder = Quick.Folder();
        try
        {
            using var book = Joined(folder);
            var gym = new StoredGym();
            gym.Push([.. Enumerable.Range(1, 5_000).Select(n => new OutsideFact("first-x", new SoreTold(new FactId("rstvwx", HybridClock.Reading(Now) + n), Now, new LocalDate(2026, 11, 2), Training.Exercises.Motion.Squat)))]);
            var copied = File.GetLastWriteTimeUtc(Path.Combine(folder, "copy.db"));

            new GymSync(book, gym) { Lightly = true }.Run(GymSync.Few);

            book.Told("first-x").Count.Should().BePositive().And.BeLessThan(5_000, "the rest waits for when nobody trains");
            File.GetLastWriteTimeUtc(Path.Combine(folder, "copy.db")).Should().Be(copied);
            new GymSync(book, gym).Run(GymSync.Some);
            book.Told("first-x").Should().HaveCount(5_000);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void An_event_that_only_a_newer_version_knows_stops_the_taking_and_loses_nothing_before_it()
    {
        var folder = Quick.Folder();
        try
        {
            using var book = Joined(folder);
            var told = new OutsideFact("first-x", new SoreTold(new FactId("rstvwx", HybridClock.Reading(Now)), Now, new LocalDate(2026, 11, 2), Training.Exercises.Motion.Squat));
            var gym = new NewerGym([(1, GymEventText.Write(told)), (2, """{"is":"moon-phase","who":"first-x"}""")]);

            var trouble = new GymSync(book, gym) { Lightly = true }.Invoking(s => s.Run(GymSync.Few)).Should().Throw<GymTrouble>().Which;

            trouble.Code.Should().Be(ExitCode.Protocol);
            trouble.Message.Should().Contain("update RackSide on this machine");
            book.Told("first-x").Should().ContainSingle();
            book.Share.Pulled.Should().Be(1);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static LiteLogbook Joined(string folder)
    {
        var book = LiteLogbook.Open(folder, Now);
        book.Clock = new FakeClock(Now);
        book.Keep(new Lifter("first", "Ottoline Marsh", MassUnit.Kilogram, Now));
        book.Join("the-tollbooth");
        return book;
    }

    private static SessionHead Head(LiteLogbook book) => new()
    {
        Id = book.NextId(),
        Begun = Now,
        Date = new LocalDate(2026, 11, 2),
        Zone = "Europe/Berlin",
        Lifter = book.Lifters()[0].Key,
        Plan = "plan",
        DayKey = "strength-day",
        DayName = "Strength day",
        Kind = DayKind.Strength,
        Prescriptions = [],
    };

    private sealed class StuckGym : IGym, IDisposable
    {
        private readonly StoredGym inner = new();

        public ManualResetEventSlim Asked { get; } = new();

        public ManualResetEventSlim Answers { get; } = new();

        public int Count => inner.Count;

        public string Identity()
        {
            Asked.Set();
            Answers.Wait();
            return inner.Identity();
        }

        public void Push(IReadOnlyList<GymEvent> events) => inner.Push(events);

        public void Erase(LifterErased erased) => inner.Erase(erased);

        public IReadOnlyList<(long Position, string Line)> Pull(long after, int most) => inner.Pull(after, most);

        public FactId? At(long position) => inner.At(position);

        // As the end of the program that speaks to the server ends its question.
        public void Dispose() => Answers.Set();
    }

    private sealed class NewerGym(IReadOnlyList<(long Position, string Line)> lines) : IGym
    {
        public string Identity() => "the-tollbooth";

        public void Push(IReadOnlyList<GymEvent> events)
        {
        }

        public void Erase(LifterErased erased)
        {
        }

        public IReadOnlyList<(long Position, string Line)> Pull(long after, int most) => [.. lines.Where(l => l.Position > after)];

        public FactId? At(long position) => null;
    }
}
