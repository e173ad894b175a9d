using RackSide.Training.Safety;

namespace RackSide.Pages;

/// <summary>The signs to stop at, and what to do, laid over any page; no clock stops for it.</summary>
public static class StopSignsPage
{
    /// <summary>The page.</summary>
    /// <param name="size">Its size.</param>
    /// <param name="movedOn">How many lines were moved on, on a page too small for all signs.</param>
    public static Page Draw(PageSize size, int movedOn = 0) => new TextPage("STOP SIGNS", Paragraphs)
    {
        MovedOn = movedOn,
        Hints = [new("ENTER", "back")],
    }.Draw(size);

    /// <summary>How many lines are moved on after a key; null where the key closes the page, as all but up and down do.</summary>
    public static int? Press(KeyPress key, int movedOn) => TextPage.Move(key, movedOn);

    private static IReadOnlyList<string> Paragraphs { get; } =
        [StopSigns.WhatToDo[0], .. StopSigns.All.Select(sign => "- " + sign), .. StopSigns.WhatToDo.Skip(1)];
}
