namespace RackSide.Training.Summary;

/// <summary>A total of the skills days of a week.</summary>
/// <param name="Name">The exercise's short name.</param>
/// <param name="Done">Reps done in the week.</param>
/// <param name="Asked">Reps asked for in the week.</param>
public sealed record TotalLine(string Name, int Done, int Asked);
