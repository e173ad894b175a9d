using NodaTime;
using NodaTime.Testing;
using RackSide.Arrivals;
using RackSide.Pages;
using RackSide.Pages.Settings;
using RackSide.Places;
using RackSide.Tests.Commands;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Visits;

namespace RackSide.Tests.Arrivals;

/// <summary>The first pages that are drawn beforehand, in copies of the Tollbooth's folder, left on Wed 11 Nov at six.</summary>
[Collection(nameof(Tollbooth))]
public sealed class KeptPagesTests : IDisposable
{
    private static readonly Appearance Look = new() { Tint = Tint.Contrast, Fine = true, Flash = false };
    private readonly PassingFolder home;

    public KeptPagesTests(Tollbooth gym) => home = gym.Copy();

    private Folders Folders => new(home.Path, home.Path, "the test");

    public void Dispose() => home.Dispose();

    [Theory]
    [InlineData(50, 15)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void The_page_that_is_kept_for_a_day_is_the_one_that_a_start_on_it_shows(int columns, int rows)
    {
        var size = Look.Of(columns, rows);
        Leave(size);

        var seen = new[] { At(11, 18), At(11, 23), At(12, 0), At(12, 12), At(13, 6), At(13, 20), At(14, 23) }.Select(now =>
        {
            var kept = KeptPages.Find(Folders, now)!;
            using var gym = Gym.Open(Folders, null, new FakeClock(now));
            using var visit = new RackVisit(gym, null);
            var shown = visit.Draw(size, now);
            Cells(kept.Shown).Should().Equal(Cells(shown), "at {0}", now);
            (kept.Shown.Size, kept.Shown.CursorColumn, kept.Shown.CursorRow, kept.Look).Should().Be((size, shown.CursorColumn, shown.CursorRow, Look));
            return shown.Text;
        }).ToList();
        seen.Distinct().Should().HaveCount(4, "each day has its own");
    }

    [Fact]
    public void It_is_kept_for_today_and_three_days_more()
    {
        Leave(Look.Of(80, 24));

        KeptPages.Find(Folders, At(10, 23)).Should().BeNull("a clock that shows this has been put back");
        KeptPages.Find(Folders, At(11, 0)).Should().NotBeNull();
        KeptPages.Find(Folders, At(14, 23)).Should().NotBeNull();
        KeptPages.Find(Folders, At(15, 0)).Should().BeNull();
    }

    [Fact]
    public void Nothing_is_shown_of_a_logbook_that_was_written_to_since()
    {
        Leave(Look.Of(80, 24));
        using (var gym = Open(At(11, 19)))
        {
            gym.Logbook.Weigh(gym.Lifter()!.Key, new LocalDate(2026, 11, 11), Mass.Kg(73));
        }

        KeptPages.Find(Folders, At(11, 20)).Should().BeNull();
    }

    [Fact]
    public void Nothing_is_shown_by_house_rules_that_were_changed_since()
    {
        Leave(Look.Of(80, 24));
        File.AppendAllText(Path.Combine(home.Path, "gym.yaml"), "# Juno wrote this.\n");

        KeptPages.Find(Folders, At(11, 20)).Should().BeNull();
    }

    [Fact]
    public void Nothing_is_kept_where_the_next_start_asks_something_else_first()
    {
        using (var gym = Open(At(11, 19)))
        {
            var before = gym.Logbook.Sessions(gym.Lifter()!.Key)[^1].Head;
            gym.Logbook.Begin(before with { Id = gym.Logbook.NextId(), Begun = At(11, 19), Date = new LocalDate(2026, 11, 11) });
            ComingDays.Pages(gym, Look.Of(80, 24), Look).Should().BeEmpty("a session is open");
        }

        using var empty = new PassingFolder();
        using var anew = Gym.Open(new Folders(empty.Path, empty.Path, "the test"), null, new FakeClock(At(11, 19)));
        ComingDays.Pages(anew, Look.Of(80, 24), Look).Should().BeEmpty("nobody has set up");
    }

    [Fact]
    public void A_file_that_was_cut_or_is_something_else_is_no_page_and_no_trouble()
    {
        Leave(Look.Of(80, 24));
        var file = Path.Combine(home.Path, KeptPages.FileName);
        var whole = File.ReadAllBytes(file);
        foreach (var length in Enumerable.Range(0, 60).Select(n => n * whole.Length / 240))
        {
            File.WriteAllBytes(file, whole[..length]);
            KeptPages.Find(Folders, At(11, 19)).Should().BeNull();
        }

        var chance = new Random(7);
        for (var n = 0; n < 300; n++)
        {
            var damaged = whole.ToArray();
            damaged[chance.Next(damaged.Length)] = (byte)chance.Next(256);
            File.WriteAllBytes(file, damaged);
            var act = () => KeptPages.Find(Folders, At(11, 19));
            act.Should().NotThrow();
        }
    }

    private static IEnumerable<Cell> Cells(Page page) =>
        from row in Enumerable.Range(0, page.Size.Rows) from column in Enumerable.Range(0, page.Size.Columns) select page[column, row];

    private static Instant At(int day, int hour) => Instant.FromUtc(2026, 11, day, hour, 0);

    private Gym Open(Instant now) => Gym.Open(Folders, null, new FakeClock(now), abroad: DateTimeZone.Utc);

    private void Leave(PageSize size)
    {
        IReadOnlyList<KeptPage> pages;
        using (var gym = Open(At(11, 18)))
        {
            pages = ComingDays.Pages(gym, size, Look);
        }

        KeptPages.Keep(Folders, pages);
    }
}
