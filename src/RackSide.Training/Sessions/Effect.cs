using RackSide.Training.History;

namespace RackSide.Training.Sessions;

/// <summary>What a session asks of the world. The answer comes back as an event.</summary>
public abstract record Effect;

/// <summary>Put a fact on disk; answered by <see cref="FactWritten"/> or <see cref="WriteFailed"/>.</summary>
/// <param name="Fact">The fact.</param>
public sealed record WriteFact(Fact Fact) : Effect;

/// <summary>Be heard.</summary>
/// <param name="Times">1 for "get ready", 2 for "go".</param>
public sealed record RingBell(int Times) : Effect;

/// <summary>Show the settings over the session.</summary>
public sealed record OpenSettings : Effect;

/// <summary>Close the screen; the session stays as it is.</summary>
public sealed record Leave : Effect;
