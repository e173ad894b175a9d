using RackSide.Training.Safety;
using static RackSide.Training.Safety.SafetyTopic;
using static RackSide.Training.Safety.ScreeningOutcome;

namespace RackSide.Training.Tests.Safety;

public class ScreeningTests
{
    // Riebe et al. 2015, Updating ACSM's recommendations for exercise preparticipation health screening, Med Sci Sports
    // Exerc 47(11):2473-2479. Status: the three inputs are confirmed, the outcome of each row is from memory.
    [Theory]
    [InlineData(false, false, false, StartLight)]
    [InlineData(false, true, false, ClearanceFirst)]
    [InlineData(false, false, true, ClearanceFirst)]
    [InlineData(false, true, true, ClearanceFirst)]
    [InlineData(true, false, false, CarryOn)]
    [InlineData(true, true, false, CarryOnModerately)]
    [InlineData(true, false, true, StopAndSeekClearance)]
    [InlineData(true, true, true, StopAndSeekClearance)]
    public void Activity_disease_and_symptoms_decide(bool active, bool disease, bool symptoms, ScreeningOutcome outcome) =>
        Screening.Outcome(active, disease, symptoms).Should().Be(outcome);

    // The same source as above, read for a beginner: not active.
    [Theory]
    [InlineData(new SafetyTopic[0], StartLight)]
    [InlineData(new[] { KnownDisease }, ClearanceFirst)]
    [InlineData(new[] { Symptoms }, ClearanceFirst)]
    [InlineData(new[] { HeadDown }, ClearanceFirst)]
    [InlineData(new[] { JointsAndBack, Under18 }, StartLight)]
    public void Answers_are_read_as_those_of_somebody_not_active(SafetyTopic[] yes, ScreeningOutcome outcome) =>
        Screening.Outcome(yes.ToHashSet()).Should().Be(outcome);

    // The reasons to leave head-down work out: common practice, no source, but for the eye: Baskaran et al. 2006,
    // Ophthalmology 113:1327-1332, a headstand doubled eye pressure (confirmed).
    [Theory]
    [InlineData(HeadDown, true)]
    [InlineData(Symptoms, true)]
    [InlineData(KnownDisease, false)]
    [InlineData(JointsAndBack, false)]
    [InlineData(Under18, false)]
    public void Head_down_work_is_left_out_after(SafetyTopic yes, bool avoided) =>
        Screening.AvoidInverted(new HashSet<SafetyTopic> { yes }).Should().Be(avoided);

    [Fact]
    public void Every_topic_has_one_question_with_its_advice()
    {
        SafetyQuestion.All.Select(q => q.Topic).Should().Equal(Enum.GetValues<SafetyTopic>());
        SafetyQuestion.All.Should().OnlyContain(q => q.Text.Length > 0 && q.Advice.EndsWith('.'));
    }

    [Theory]
    [InlineData(HeadDown, "glaucoma")]
    [InlineData(HeadDown, "retina")]
    [InlineData(HeadDown, "neck")]
    [InlineData(HeadDown, "pregnant")]
    [InlineData(HeadDown, "stroke")]
    [InlineData(HeadDown, "blood pressure")]
    [InlineData(KnownDisease, "heart")]
    [InlineData(KnownDisease, "kidney")]
    [InlineData(KnownDisease, "metabolic")]
    [InlineData(Symptoms, "faintness")]
    public void A_question_asks_after(SafetyTopic topic, string matter) =>
        SafetyQuestion.Of(topic).Text.Should().Contain(matter);

    [Fact]
    public void Every_outcome_is_one_sentence_and_none_forbids()
    {
        var sentences = Enum.GetValues<ScreeningOutcome>().Select(Screening.Sentence).ToList();
        sentences.Should().OnlyHaveUniqueItems().And.OnlyContain(s => s.Count(c => c == '.') == 1 && s.EndsWith('.'));
    }
}
