namespace RackSide.Training.Body;

/// <summary>A line of a page of facts.</summary>
/// <param name="What">What it is about.</param>
/// <param name="Says">What is known, in a sentence or two of our own words.</param>
/// <param name="Source">Who says so, and how sure that is here.</param>
public sealed record FactLine(string What, string Says, string Source);
