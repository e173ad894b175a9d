namespace RackSide.Pages.RestDays;

/// <summary>What a rest day's page says. All of it is worked out elsewhere; the page only shows it.</summary>
/// <param name="Title">What kind of day it is: <c>REST DAY</c>, <c>DONE FOR TODAY</c>.</param>
/// <param name="Today">Today, as people read it: <c>Thu 26 Nov</c>.</param>
/// <param name="Why">Why nothing is planned, in one sentence.</param>
/// <param name="Next">When the next training day is: <c>Fri 27 Nov, strength day</c>.</param>
/// <param name="Holds">What it holds: <c>squat 70 kg 5x5, row …</c>.</param>
/// <param name="Hidden">Whether body weight, food and sleep are hidden.</param>
/// <param name="Done">What was done on this page already ("written: 72.4 kg"); null for nothing.</param>
public sealed record RestDayTexts(string Title, string Today, string Why, string Next, string Holds, bool Hidden = false, string? Done = null);
