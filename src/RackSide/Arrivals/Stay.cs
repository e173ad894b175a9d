using RackSide.Visits;

namespace RackSide.Arrivals;

/// <summary>An open gym, somebody in it, and the alarm that the gym wants.</summary>
internal sealed class Stay : IDisposable
{
    /// <summary>Begins one in a gym that was opened for it.</summary>
    /// <exception cref="Refusal">Somebody who was named is not here; the gym is closed again.</exception>
    public Stay(Gym gym, Func<Gym, RackVisit> visit, bool sound)
    {
        Gym = gym;
        try
        {
            Visit = visit(gym);
            Alarm = new AlarmCommand(sound ? gym.Rules?.AlarmCommand ?? [] : []);
        }
        catch
        {
            gym.Dispose();
            throw;
        }
    }

    /// <summary>Where.</summary>
    public Gym Gym { get; }

    /// <summary>Who, and what is shown.</summary>
    public RackVisit Visit { get; }

    /// <summary>What rings beside the bell.</summary>
    public AlarmCommand Alarm { get; }

    /// <summary>Waits until what was accepted is on disk, or cannot be, and closes the gym.</summary>
    public void Dispose()
    {
        Visit.Dispose();
        Gym.Dispose();
    }
}
