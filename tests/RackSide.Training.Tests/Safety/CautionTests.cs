using RackSide.Training.Safety;

namespace RackSide.Training.Tests.Safety;

public class CautionTests
{
    // The usual list of exercise guidance, from memory.
    [Theory]
    [InlineData("chest")]
    [InlineData("jaw")]
    [InlineData("faintness")]
    [InlineData("breathlessness")]
    [InlineData("heartbeat")]
    [InlineData("headache")]
    [InlineData("one side")]
    [InlineData("joint")]
    [InlineData("numbness")]
    [InlineData("dark urine")]
    public void The_stop_signs_name(string sign) => string.Join('\n', StopSigns.All).Should().Contain(sign);

    [Fact]
    public void A_stop_sign_says_to_stop_and_when_to_call_for_help() =>
        StopSigns.WhatToDo[0].Should().StartWith("Stop.").And.Contain("emergency services");

    [Fact]
    public void Each_stop_sign_fits_a_line_of_forty_six() => StopSigns.All.Should().OnlyContain(sign => sign.Length <= 46);

    // Common practice, no source.
    [Theory]
    [InlineData("18 and over")]
    [InlineData("not medical advice")]
    [InlineData("clinician")]
    [InlineData("pregnant or nursing")]
    [InlineData("kidney")]
    [InlineData("medicines")]
    [InlineData("qualified coach")]
    public void The_cautions_say(string words) => string.Join('\n', Cautions.All).Should().Contain(words);
}
