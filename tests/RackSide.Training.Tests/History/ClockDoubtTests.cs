using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Plans;

namespace RackSide.Training.Tests.History;

/// <summary>A clock that lies. The limits are ours, with the reason beside each in ClockDoubt.</summary>
public class ClockDoubtTests
{
    private static readonly Instant Evening = Instant.FromUtc(2026, 11, 25, 19, 0);

    [Theory]
    [InlineData(0, null)]
    [InlineData(-9, null)] // The network set it right.
    [InlineData(-11, true)]
    [InlineData(60 * 24 * 366, null)]
    [InlineData((60 * 24 * 366) + 1, false)]
    public void A_clock_is_doubted_that_is_before_the_newest_entry_or_more_than_a_year_after_it(int minutes, bool? behind) =>
        (ClockDoubt.Of(ClockDoubt.Newest([Session(1, Evening)], []), Evening + Duration.FromMinutes(minutes))?.Behind).Should().Be(behind);

    [Fact]
    public void A_board_that_wakes_in_1970_is_doubted_though_nothing_is_written_yet()
    {
        ClockDoubt.Of(null, NodaConstants.UnixEpoch).Should().Be(new ClockDoubt(null, Behind: true));
        ClockDoubt.Of(null, Evening).Should().BeNull();
    }

    [Fact]
    public void The_newest_entry_is_the_newest_by_sequence_so_that_one_wrong_year_is_not_doubted_for_ever()
    {
        var wrong = Session(1, Evening + Duration.FromDays(2000));
        var right = Session(10, Evening);

        ClockDoubt.Of(ClockDoubt.Newest([right, wrong], []), Evening + Duration.FromDays(2)).Should().BeNull();
        ClockDoubt.Of(ClockDoubt.Newest([wrong], []), Evening)!.Behind.Should().BeTrue();
    }

    [Fact]
    public void What_was_told_outside_a_session_counts_too() =>
        ClockDoubt.Of(ClockDoubt.Newest([Session(1, Evening)], [new AwayTold(new FactId("test", 9), Evening + Duration.FromDays(5), new LocalDate(2026, 12, 1), null, AwayFor.Other)]), Evening + Duration.FromDays(1))!
            .Last.Should().Be(Evening + Duration.FromDays(5));

    [Fact]
    public void A_session_belongs_to_the_date_it_was_last_given_and_a_mending_can_be_taken_back()
    {
        var session = Session(1, Evening);
        var once = new SessionRedated(new FactId("test", 3), Evening, new LocalDate(2026, 11, 24));
        var twice = new SessionRedated(new FactId("test", 4), Evening, new LocalDate(2026, 11, 23));

        session.Date.Should().Be(new LocalDate(2026, 11, 25));
        (session with { Facts = [.. session.Facts, once] }).Date.Should().Be(once.Date);
        (session with { Facts = [.. session.Facts, once, twice] }).Date.Should().Be(twice.Date);
        (session with { Facts = [.. session.Facts, once, twice, new FactStruck(new FactId("test", 5), Evening, twice.Id)] }).Date.Should().Be(once.Date);
    }

    private static SessionRecord Session(long sequence, Instant begun) => new(
        new SessionHead
        {
            Id = new FactId("test", sequence),
            Begun = begun,
            Date = begun.InUtc().Date,
            Zone = "UTC",
            Lifter = "ottoline",
            Plan = "Tollbooth plan",
            DayKey = "strength",
            DayName = "Strength day",
            Kind = DayKind.Strength,
            Prescriptions = [],
        },
        [new SessionClosed(new FactId("test", sequence + 1), begun)]);
}
