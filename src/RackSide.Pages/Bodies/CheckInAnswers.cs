using System.Globalization;
using NodaTime;
using RackSide.Training.Body;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Pages.Bodies;

/// <summary>What a check-in told; what is null was passed over.</summary>
/// <param name="Weight">Body weight this morning.</param>
/// <param name="Slept">How long was slept last night.</param>
/// <param name="Kilocalories">Food of yesterday, about.</param>
/// <param name="Millilitres">Drunk yesterday.</param>
/// <param name="Sore">How sore the body is.</param>
public sealed record CheckInAnswers(Mass? Weight = null, Duration? Slept = null, int? Kilocalories = null, int? Millilitres = null, Soreness? Sore = null)
{
    /// <summary>What was told, in words; empty for nothing.</summary>
    public string InWords => string.Join(", ", new[]
    {
        Weight?.ToString(),
        Slept is { } slept ? $"slept {Readiness.Text(slept)}" : null,
        Kilocalories is { } food ? $"{food} kcal yesterday" : null,
        Millilitres is { } water ? $"{(water / 1000m).ToString("0.##", CultureInfo.InvariantCulture)} l yesterday" : null,
        Sore is { } sore ? Readiness.Text(sore) : null,
    }.OfType<string>());
}
