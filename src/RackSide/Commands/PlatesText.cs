using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;

namespace RackSide.Commands;

/// <summary>A load on the bar in plain lines.</summary>
internal static class PlatesText
{
    /// <summary>The sentence, then the sleeve; where the load cannot be made, the sleeves of the nearest that can.</summary>
    public static IEnumerable<string> Lines(Loadable loadable, GymKit kit, Exercise? exercise = null) =>
    [
        .. PlainText.Wrap(loadable.Text),
        .. loadable.Stack is { } stack ? Stack(stack) : Near(loadable, kit, exercise).SelectMany(Stack),
    ];

    /// <summary>One sleeve in ASCII, the lifter's end at the left, each plate with its number: <c>=====|[20][1.25]--</c>.</summary>
    public static string Sleeve(BarStack stack) =>
        $"=====|{string.Concat(stack.Side.Select(p => $"[{Said(p, stack)}]"))}--";

    // A unit with every number where both meet, so that nobody takes one plate for another.
    private static string Said(Mass plate, BarStack stack) => stack.NamesUnits ? plate.ToString() : plate.Number;

    private static IEnumerable<string> Stack(BarStack stack)
    {
        var side = stack.Side.Count == 0 ? "no plates" : $"each side, inside to outside: {string.Join(", ", stack.Side)}";
        return ["", .. PlainText.Wrap($"{stack.Total} on the {stack.Bar.Mass} bar; {side}"), $"  {Sleeve(stack)}"];
    }

    private static IEnumerable<BarStack> Near(Loadable loadable, GymKit kit, Exercise? exercise) =>
        new[] { loadable.Below, loadable.Above }.OfType<Mass>().Select(m => BarLoading.StackFor(m, kit, exercise)).OfType<BarStack>();
}
