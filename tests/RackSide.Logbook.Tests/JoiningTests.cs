using System.Text;
using RackSide.Logbook.Storing;

namespace RackSide.Logbook.Tests;

/// <summary>A record joined with a logbook: nothing is lost, nothing is there twice.</summary>
public class JoiningTests
{
    [Fact]
    public void A_record_joined_with_an_empty_logbook_is_the_same_logbook_and_joined_again_changes_nothing() =>
        Gens.Entry.List[1, 12].Sample(
            entries =>
            {
                var written = Write(new LogbookSnapshot(Of("k3f9pz", entries)));
                var record = LogbookRecord.Read(written);
                var once = Joining.Of(new LogbookSnapshot(new Contents("k3f9pz")), record);
                var twice = Joining.Of(once.Whole, record);
                return Write(once.Whole).SequenceEqual(written) && Write(twice.Whole).SequenceEqual(written) && twice.AddsNothing
                    && twice.Known == once.Lifters + once.Sessions + once.WeighIns + once.Told;
            },
            iter: 300);

    [Fact]
    public void Two_logbooks_joined_hold_what_either_holds_whichever_comes_first() =>
        Gen.Select(Gens.Entry.List[1, 8], Gens.Entry.List[1, 8]).Sample(
            (a, b) =>
            {
                var (one, other) = (new LogbookSnapshot(Of("aaa", a)), new LogbookSnapshot(Of("bbb", b)));
                var (ab, ba) = (Joining.Of(one, other).Whole.Contents, Joining.Of(other, one).Whole.Contents);
                return Ids(ab).SetEquals(Ids(one.Contents).Union(Ids(other.Contents))) && Ids(ab).SetEquals(Ids(ba));
            },
            iter: 200);

    [Fact]
    public void A_session_that_went_on_elsewhere_gets_what_is_missing_once()
    {
        var (here, there) = (Train(3), Train(5));

        var joined = Joining.Of(here, there);

        (joined.Sessions, joined.Facts, joined.Known).Should().Be((0, 2, 1), "the lifter is known");
        joined.Whole.Sessions("ottoline").Single().Facts.Should().Equal(there.Sessions("ottoline").Single().Facts);
        Joining.Of(joined.Whole, there).AddsNothing.Should().BeTrue();
        Joining.Of(there, here).AddsNothing.Should().BeTrue();
    }

    [Fact]
    public void Two_people_whose_key_is_the_same_stay_two_and_are_known_again()
    {
        var here = Of("aaa", [new Entry.LifterKept(Tollbooth.Ottoline with { Key = "first", Pin = "kept" })]);
        var there = Of("bbb", [new Entry.LifterKept(Tollbooth.Bram with { Key = "first" }), new Entry.SessionBegun(Tollbooth.Head(new FactId("bbb", 1), "first"))]);

        var joined = Joining.Of(new LogbookSnapshot(here), new LogbookSnapshot(there));

        joined.Whole.Lifters().Select(l => (l.Key, l.Name, l.Pin)).Should().Equal(("first", "Ottoline Marsh", "kept"), ("first-2", "Bram Okafor-Lind", null));
        joined.Whole.Sessions("first-2").Should().ContainSingle();
        joined.Whole.Sessions("first").Should().BeEmpty();
        Joining.Of(joined.Whole, new LogbookSnapshot(there)).AddsNothing.Should().BeTrue();
    }

    [Fact]
    public void The_same_name_under_the_same_key_is_the_same_person_on_a_new_machine()
    {
        var here = Of("aaa", [new Entry.LifterKept(Tollbooth.Ottoline with { Joined = Tollbooth.Evening })]);

        Joining.Of(new LogbookSnapshot(here), Train(2)).Whole.Lifters().Should().ContainSingle();
    }

    [Fact]
    public void What_is_nobodys_is_refused()
    {
        var there = new Contents("bbb");
        there.Take(new Entry.SessionBegun(Tollbooth.Head(new FactId("bbb", 1))));

        FluentActions.Invoking(() => Joining.Of(LogbookSnapshot.Nothing, new LogbookSnapshot(there))).Should()
            .Throw<LogbookUnreadableException>().WithMessage("*the session \"bbb-1\" is of \"ottoline\", who is not in \"lifters\"");
    }

    [Fact]
    public void A_garbled_record_is_read_or_refused_with_a_sentence()
    {
        var good = Write(Train(5));
        Gen.Select(Gen.Int[0, good.Length - 1], Gen.Char.AlphaNumeric, Gen.Int[0, 40]).List[1, 3].Sample(
            changes =>
            {
                var text = new StringBuilder(Encoding.UTF8.GetString(good));
                foreach (var (at, letter, gone) in changes.Where(c => c.Item1 + c.Item3 < text.Length))
                {
                    text.Remove(at, gone).Insert(at, gone % 3 == 0 ? "9999999999" : letter);
                }

                try
                {
                    Joining.Of(LogbookSnapshot.Nothing, LogbookRecord.Read(Encoding.UTF8.GetBytes(text.ToString())));
                }
                catch (LogbookUnreadableException)
                {
                }
            },
            iter: 4000);
    }

    private static byte[] Write(LogbookSnapshot of) => LogbookRecord.Write(of, null, Tollbooth.Evening);

    private static LogbookSnapshot Train(int sets)
    {
        var head = Tollbooth.Head(new FactId("k3f9pz", 1));
        return new LogbookSnapshot(Of("k3f9pz", [
            new Entry.LifterKept(Tollbooth.Ottoline),
            new Entry.SessionBegun(head),
            .. Enumerable.Range(1, sets).Select(n => new Entry.FactAdded(head.Id, Tollbooth.Set(new FactId("k3f9pz", n + 1), n)))]));
    }

    private static HashSet<FactId> Ids(Contents of) =>
        [.. of.Sessions.SelectMany(s => s.Facts.Select(f => f.Id).Append(s.Head.Id)), .. of.Told.Select(t => t.Fact.Id)];

    // Everybody who has something is somebody.
    private static Contents Of(string rack, IReadOnlyList<Entry> entries)
    {
        var contents = new Contents(rack);
        foreach (var entry in entries)
        {
            var home = entry is Entry.FactAdded added && contents.Sessions.LastOrDefault() is { } session ? added with { Session = session.Head.Id } : entry;
            contents.Take(home);
        }

        var known = contents.Lifters.Select(l => l.Key).ToHashSet();
        var named = contents.Sessions.Select(s => s.Head.Lifter).Concat(contents.Weights.Select(w => w.Lifter)).Concat(contents.Told.Select(t => t.Lifter)).ToHashSet();
        named.Where(key => !known.Contains(key)).ToList().ForEach(key => contents.Take(new Entry.LifterKept(Tollbooth.Bram with { Key = key, Name = key })));
        return contents;
    }
}
