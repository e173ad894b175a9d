namespace RackSide.Pages.SetUps;

/// <summary>Which page comes after which. Advice comes once for every "yes", and not at all where there is none.</summary>
public static class SetUpOrder
{
    /// <summary>How many pages are counted in the top line; advice counts as part of the safety questions.</summary>
    public const int Pages = 9;

    // Of the gym and not of the lifter, so they are left out where somebody joins.
    private const int PagesOfTheGym = SetUpPage.Days - SetUpPage.Unit;

    /// <summary>How many pages this set-up has.</summary>
    public static int Count(SetUpState state) => Pages - (state.Joining ? PagesOfTheGym : 0);

    /// <summary>The page's number in the top line, from 1.</summary>
    public static int Number(SetUpState state) =>
        Number(state.At) - (state.Joining && state.At > SetUpPage.Days ? PagesOfTheGym : 0);

    /// <summary>The page's number in a whole set-up, from 1.</summary>
    public static int Number(SetUpPage page) => page >= SetUpPage.Advice ? (int)page : (int)page + 1;

    /// <summary>One page on; from the last one the set-up is finished.</summary>
    public static SetUpState GoOn(this SetUpState state) => state switch
    {
        { At: SetUpPage.Done } => state with { Finished = true },
        { At: SetUpPage.Unit, Joining: true } => state.To(SetUpPage.Safety),
        { At: SetUpPage.Safety, Yes.IsEmpty: true } => state.To(SetUpPage.Done),
        { At: SetUpPage.Advice } when state.AdviceShown + 1 < state.Yes.Count =>
            state.To(SetUpPage.Advice) with { AdviceShown = state.AdviceShown + 1 },
        _ => state.To(state.At + 1) with { AdviceShown = 0 },
    };

    /// <summary>One page back, with everything kept; null on the first page.</summary>
    public static SetUpState? GoBack(this SetUpState state) => state switch
    {
        { At: SetUpPage.Welcome } => null,
        { At: SetUpPage.Safety, Joining: true } => state.To(SetUpPage.Unit),
        { At: SetUpPage.Done, Yes.IsEmpty: true } => state.To(SetUpPage.Safety),
        { At: SetUpPage.Done } => state.To(SetUpPage.Advice) with { AdviceShown = state.Yes.Count - 1 },
        { At: SetUpPage.Advice, AdviceShown: > 0 } => state.To(SetUpPage.Advice) with { AdviceShown = state.AdviceShown - 1 },
        _ => state.To(state.At - 1),
    };

    private static SetUpState To(this SetUpState state, SetUpPage page) => state with { At = page, Line = 0 };
}
