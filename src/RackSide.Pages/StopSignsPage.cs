using RackSide.Training.Safety;

namespace RackSide.Pages;

/// <summary>The signs to stop at, and what to do. Any key leaves it; no clock stops for it.</summary>
public static class StopSignsPage
{
    /// <summary>The page.</summary>
    public static Page Draw(PageSize size)
    {
        var lines = StopSigns.WhatToDo.Take(1).Concat(StopSigns.All.Select(sign => "- " + sign)).Concat(StopSigns.WhatToDo.Skip(1));
        return new TextPage("STOP SIGNS", [.. lines]) { Hints = [new("any key", "back")] }.Draw(size);
    }
}
