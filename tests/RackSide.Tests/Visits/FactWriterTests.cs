using NodaTime;
using NodaTime.Testing;
using RackSide.Logbook;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Sessions;
using RackSide.Visits;

namespace RackSide.Tests.Visits;

public class FactWriterTests
{
    private static readonly FakeClock Clock = new(Instant.FromUtc(2026, 11, 25, 18, 0));
    private static readonly FactId Session = new("rack", 1);

    [Fact]
    public void Facts_reach_the_disk_in_their_order_and_each_is_answered()
    {
        var disk = new Disk(failures: 0);
        var writer = new FactWriter(disk, Clock, () => { }, TimeSpan.Zero);

        Write(writer, 5);
        writer.Dispose();

        disk.Written.Select(f => f.Id.Sequence).Should().Equal(2, 3, 4, 5, 6);
        Answers(writer).OfType<FactWritten>().Select(a => a.Fact.Sequence).Should().Equal(2, 3, 4, 5, 6);
        writer.Unwritten.Should().BeEmpty();
    }

    [Fact]
    public void Where_writing_fails_it_says_so_and_nothing_later_overtakes_what_waits()
    {
        var disk = new Disk(failures: 3);
        var writer = new FactWriter(disk, Clock, () => { }, TimeSpan.Zero);

        Write(writer, 3);
        writer.Dispose();

        disk.Written.Select(f => f.Id.Sequence).Should().Equal(2, 3, 4);
        var answers = Answers(writer);
        answers.OfType<WriteFailed>().Should().HaveCount(3).And.OnlyContain(f => f.Fact.Sequence == 2 && f.Sentence.Contains("no space left"));
        answers.OfType<FactWritten>().Should().HaveCount(3);
    }

    [Fact]
    public void A_session_whose_beginning_no_disk_took_is_begun_before_its_facts_once_there_is_room()
    {
        var disk = new Disk(failures: 4);
        var head = new SessionHead
        {
            Id = Session,
            Begun = Clock.GetCurrentInstant(),
            Date = new LocalDate(2026, 11, 25),
            Zone = "Etc/UTC",
            Lifter = "first",
            Plan = "",
            DayKey = "",
            DayName = "",
            Kind = Training.Plans.DayKind.Strength,
            Prescriptions = [],
        };
        var first = new FirstEntries(disk);
        first.Write(new SessionEntry.Begun(head));
        first.Unwritten.Should().ContainSingle();
        var writer = new FactWriter(disk, Clock, () => { }, TimeSpan.Zero);
        first.Unwritten.ToList().ForEach(writer.Write);
        Write(writer, 2);
        writer.Dispose();

        disk.Begun.Should().Equal(head);
        disk.Written.Select(f => f.Id.Sequence).Should().Equal(2, 3);
        Answers(writer).OfType<WriteFailed>().Should().HaveCount(3).And.OnlyContain(f => f.Fact == Session && f.Sentence.Contains("no space left"));
    }

    [Fact]
    public void It_wakes_the_screen_for_every_answer()
    {
        var woken = 0;
        var writer = new FactWriter(new Disk(failures: 0), Clock, () => Interlocked.Increment(ref woken), TimeSpan.Zero);

        Write(writer, 4);
        writer.Dispose();

        woken.Should().Be(4);
    }

    [Fact]
    public void What_no_disk_takes_is_told_by_its_facts_in_order_and_why()
    {
        var disk = new Disk(failures: int.MaxValue);
        var writer = new FactWriter(disk, Clock, () => { }, TimeSpan.FromHours(1));
        Write(writer, 3);

        writer.WaitUntilWritten().Should().BeFalse();

        writer.Unwritten.Select(u => u.Id.Sequence).Should().Equal(2, 3, 4);
        writer.Trouble.Should().Be("no space left on device");
        writer.GiveUp();
        writer.Dispose();
        writer.Unwritten.Should().HaveCount(3);
    }

    [Fact]
    public void Waiting_ends_once_all_is_on_disk()
    {
        var writer = new FactWriter(new Disk(failures: 0), Clock, () => { }, TimeSpan.Zero);
        Write(writer, 20);

        writer.WaitUntilWritten().Should().BeTrue();

        writer.Unwritten.Should().BeEmpty();
        writer.Dispose();
    }

    [Fact]
    public void It_settles_after_the_last_answer_and_not_while_others_wait()
    {
        var disk = new Disk(failures: 0);
        var woken = 0;
        disk.OnSettle = () => disk.SettledAfter.Add((disk.Written.Count, Volatile.Read(ref woken)));
        var writer = new FactWriter(disk, Clock, () => Interlocked.Increment(ref woken), TimeSpan.Zero);

        Write(writer, 5);
        writer.Dispose();

        disk.SettledAfter.Should().OnlyContain(s => s.Written == s.Answered);
        disk.SettledAfter[^1].Written.Should().Be(5);
    }

    private static void Write(FactWriter writer, int count)
    {
        for (var i = 0; i < count; i++)
        {
            writer.Write(Session, new BodyWeighed(new FactId("rack", 2 + i), Clock.GetCurrentInstant(), Mass.Kg(72.4m)));
        }
    }

    private static List<SessionEvent> Answers(FactWriter writer)
    {
        List<SessionEvent> answers = [];
        while (writer.Answer() is { } answer)
        {
            answers.Add(answer);
        }

        return answers;
    }

    /// <summary>A logbook whose disk is full for the first tries.</summary>
    private sealed class Disk(int failures) : ILogbook
    {
        private int left = failures;

        public List<Fact> Written { get; } = [];

        public void Append(FactId session, Fact fact)
        {
            if (left-- > 0)
            {
                throw new IOException("no space left on device");
            }

            Written.Add(fact);
        }

        public Action OnSettle { get; set; } = () => { };

        public List<(int Written, int Answered)> SettledAfter { get; } = [];

        public void Settle() => OnSettle();

        public FactId NextId() => throw new InvalidOperationException();

        public IReadOnlyList<Lifter> Lifters() => [];

        public void Keep(Lifter lifter) => throw new InvalidOperationException();

        public List<SessionHead> Begun { get; } = [];

        public void Begin(SessionHead head)
        {
            if (left-- > 0)
            {
                throw new IOException("no space left on device");
            }

            Written.Should().BeEmpty("a session begins before its facts");
            Begun.Add(head);
        }

        public void Tell(string lifter, Fact fact) => throw new InvalidOperationException();

        public IReadOnlyList<Fact> Told(string lifter) => [];

        public IReadOnlyList<SessionRecord> Sessions(string lifter) => [];

        public IReadOnlyList<SessionCard> Cards(string lifter) => [];

        public IReadOnlyList<SessionRecord> Sessions(string lifter, IReadOnlySet<FactId> which) => [];

        public Instant? LastEntry => null;

        public SessionRecord? Open(string lifter) => null;

        public void Weigh(string lifter, LocalDate date, Mass weight) => throw new InvalidOperationException();

        public IReadOnlyList<WeighIn> WeighIns(string lifter) => [];

        public void Dispose()
        {
        }
    }
}
