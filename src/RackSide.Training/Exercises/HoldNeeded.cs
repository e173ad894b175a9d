namespace RackSide.Training.Exercises;

/// <summary>A hold that must have been done before an exercise is offered.</summary>
/// <param name="Exercise">The held exercise's id.</param>
/// <param name="Seconds">Seconds held with honest form, once; 1 or more.</param>
public sealed record HoldNeeded(string Exercise, int Seconds);
