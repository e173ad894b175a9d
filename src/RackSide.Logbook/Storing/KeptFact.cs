using RackSide.Training.History;

namespace RackSide.Logbook.Storing;

/// <summary>A fact told outside a session, and whose it is.</summary>
internal sealed record KeptFact(string Lifter, Fact Fact);
