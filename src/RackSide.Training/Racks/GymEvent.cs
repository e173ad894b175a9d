using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Training.Racks;

/// <summary>
/// Something that one rack wrote and every rack of the gym is to know. It is never changed: a correction is a later event. Two
/// of the same identity are the same event.
/// </summary>
/// <param name="Id">The rack that wrote it and that rack's count, which is a reading of <see cref="HybridClock"/>.</param>
/// <param name="Lifter">Whose it is: the key, which is the same on every rack.</param>
public abstract record GymEvent(FactId Id, string Lifter);

/// <summary>Something was told of a lifter: that there is one, or that a field changed.</summary>
/// <param name="Id">Its identity.</param>
/// <param name="Told">The lifter as that rack knew them.</param>
/// <param name="Fields">Which of that was told; the rest is only what that rack had.</param>
public sealed record LifterTold(FactId Id, Lifter Told, LifterFields Fields) : GymEvent(Id, Told.Key);

/// <summary>A session began.</summary>
/// <param name="Head">What was settled then; its identity is the event's.</param>
public sealed record SessionStarted(SessionHead Head) : GymEvent(Head.Id, Head.Lifter);

/// <summary>A fact of a session, on whatever rack it was told.</summary>
/// <param name="Lifter">Whose session.</param>
/// <param name="Session">The session.</param>
/// <param name="Fact">The fact; its identity is the event's.</param>
public sealed record SessionFact(string Lifter, FactId Session, Fact Fact) : GymEvent(Fact.Id, Lifter);

/// <summary>A fact told outside sessions.</summary>
/// <param name="Lifter">Whose.</param>
/// <param name="Fact">The fact; its identity is the event's.</param>
public sealed record OutsideFact(string Lifter, Fact Fact) : GymEvent(Fact.Id, Lifter);

/// <summary>A body weight told outside a session; of two of one date the later told counts.</summary>
/// <param name="Id">Its identity.</param>
/// <param name="Lifter">Whose.</param>
/// <param name="Date">The day.</param>
/// <param name="Weight">As the scale showed it.</param>
public sealed record OutsideWeight(FactId Id, string Lifter, LocalDate Date, Mass Weight) : GymEvent(Id, Lifter);

/// <summary>A lifter was erased: nothing of theirs counts, whether it was told before or after, and however late it comes.</summary>
/// <param name="Id">Its identity.</param>
/// <param name="Lifter">The key, which tells nobody who it was.</param>
public sealed record LifterErased(FactId Id, string Lifter) : GymEvent(Id, Lifter);
