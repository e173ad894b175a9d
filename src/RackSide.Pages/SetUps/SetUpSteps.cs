using System.Diagnostics;

namespace RackSide.Pages.SetUps;

/// <summary>The whole set-up as a pure step: a state and a key give a state.</summary>
public static class SetUpSteps
{
    /// <summary>Takes a key.</summary>
    public static SetUpTurn Press(SetUpState state, KeyPress key) => state switch
    {
        { StopSigns: { } movedOn } => new(state with { StopSigns = StopSignsPage.Press(key, movedOn) }),
        _ when key.IsStopSigns() => new(state with { StopSigns = 0 }),
        _ when key.IsBack() => state.GoBack() is { } back ? new(back) : SetUpTurn.Refused(state, WelcomePage.FirstPage),
        _ => OnPage(state, key),
    };

    /// <summary>Draws the page in hand.</summary>
    /// <param name="state">What has been answered.</param>
    /// <param name="size">The page's size.</param>
    /// <param name="kitFile">Where the kit will be written, to be named on the last page.</param>
    /// <param name="said">A passing sentence, or null.</param>
    public static Page Draw(SetUpState state, PageSize size, string kitFile, string? said) =>
        state.StopSigns is { } movedOn ? StopSignsPage.Draw(size, movedOn) : (View(state, kitFile) with { Said = said }).Draw(size);

    private static BodyPage View(SetUpState state, string kitFile) => state.At switch
    {
        SetUpPage.Welcome => WelcomePage.View(state),
        SetUpPage.Name => NamePage.View(state),
        SetUpPage.Unit => UnitPage.View(state),
        SetUpPage.Bar => BarPage.View(state),
        SetUpPage.Plates => PlatesPage.View(state),
        SetUpPage.OtherKit => OtherKitPage.View(state),
        SetUpPage.Days => DaysPage.View(state),
        SetUpPage.Safety => SafetyPage.View(state),
        SetUpPage.Advice => AdvicePage.View(state),
        SetUpPage.Done => DonePage.View(state, kitFile),
        _ => throw new UnreachableException(),
    };

    private static SetUpTurn OnPage(SetUpState state, KeyPress key) => state.At switch
    {
        SetUpPage.Welcome => WelcomePage.Press(state, key),
        SetUpPage.Name => NamePage.Press(state, key),
        SetUpPage.Unit => UnitPage.Press(state, key),
        SetUpPage.Bar => BarPage.Press(state, key),
        SetUpPage.Plates => PlatesPage.Press(state, key),
        SetUpPage.OtherKit => OtherKitPage.Press(state, key),
        SetUpPage.Days => DaysPage.Press(state, key),
        SetUpPage.Safety => SafetyPage.Press(state, key),
        SetUpPage.Advice => AdvicePage.Press(state, key),
        SetUpPage.Done => DonePage.Press(state, key),
        _ => throw new UnreachableException(),
    };
}
