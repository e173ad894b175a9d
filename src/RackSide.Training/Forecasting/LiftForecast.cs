using NodaTime;
using RackSide.Training.Measures;

namespace RackSide.Training.Forecasting;

/// <summary>Where one lift may be in the weeks to come.</summary>
/// <param name="Slot">The slot's key.</param>
/// <param name="Exercise">The exercise's id.</param>
/// <param name="Name">Its short name.</param>
/// <param name="Now">The load asked for next.</param>
/// <param name="Weeks">One for each week to come, the nearest first.</param>
public sealed record LiftForecast(string Slot, string Exercise, string Name, Mass Now, IReadOnlyList<LoadSpan> Weeks);

/// <summary>The working load at the end of a week: a span that is to hold what comes four times of five.</summary>
/// <param name="Until">The last day of the week.</param>
/// <param name="Easiest">Its easiest load; with help, the most help.</param>
/// <param name="Middle">The middle of all runs.</param>
/// <param name="Hardest">Its hardest load.</param>
public sealed record LoadSpan(LocalDate Until, Mass Easiest, Mass Middle, Mass Hardest);
