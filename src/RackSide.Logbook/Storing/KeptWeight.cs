using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Logbook.Storing;

/// <summary>A body weight told outside a session. Its identity says whether it is later than one told in a session.</summary>
internal sealed record KeptWeight(FactId Id, string Lifter, LocalDate Date, Mass Weight);
