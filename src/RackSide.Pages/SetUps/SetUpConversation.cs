using NodaTime;
using RackSide.Training.Measures;

namespace RackSide.Pages.SetUps;

/// <summary>
/// The first start: nine pages that ask as little as can be, each with a default, so that Enter all the way gives a
/// working set-up.
/// </summary>
/// <param name="guess">A first guess at the unit.</param>
/// <param name="kitFile">Where the kit will be written, to be named on the last page.</param>
/// <param name="joining">Whether somebody joins a gym that is set up already; then only the lifter is asked about.</param>
public sealed class SetUpConversation(MassUnit guess, string kitFile, bool joining = false) : IConversation
{
    private readonly Aside aside = new();
    private SetUpState state = SetUpState.Begin(guess) with { Joining = joining };
    private Notice notice;

    /// <inheritdoc/>
    public Action? Wake { get; set; }

    /// <inheritdoc/>
    public bool Ended => state.Finished || state.Left;

    /// <summary>What was answered; null until the last page is accepted, and for good where the set-up was left.</summary>
    public SetUpAnswers? Answers => state.Finished ? SetUpAnswers.From(state) : null;

    /// <inheritdoc/>
    public Page Draw(PageSize size, Instant now) => aside.Draw(size) ?? SetUpSteps.Draw(state, size, kitFile, notice.At(now));

    /// <inheritdoc/>
    public Bell Press(KeyPress key, Instant now)
    {
        // While the set-up's own stop signs lie over it, which the pad reaches, the next key is for them.
        if (state.StopSigns is not null || !aside.Takes(key, () => key.IsLetter() && Draw(PageSize.ToRead, now).Tells.TakesLetters))
        {
            (state, var said) = SetUpSteps.Press(state, key);
            notice = Notice.Say(said, now);
        }

        return Bell.None;
    }

    /// <summary>Nothing passes with time here but a sentence, and that goes by itself.</summary>
    public Bell Tick(Instant now) => Bell.None;
}
