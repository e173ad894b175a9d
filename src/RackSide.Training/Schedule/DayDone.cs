using NodaTime;

namespace RackSide.Training.Schedule;

/// <summary>A training day that was done, as far as the calendar needs to know it.</summary>
/// <param name="Date">The day it belongs to.</param>
/// <param name="DayKey">
/// Which training day it was. A key the plan no longer has counts as a strength day, so that a changed plan never asks
/// for a day that was done.
/// </param>
public sealed record DayDone(LocalDate Date, string DayKey);
