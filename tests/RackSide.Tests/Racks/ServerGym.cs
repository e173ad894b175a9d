using RackSide.Logbook;
using RackSide.Racks;
using RackSide.Server;
using RackSide.Training.History;
using RackSide.Training.Racks;

namespace RackSide.Tests.Racks;

/// <summary>A gym on the real server, in this process.</summary>
internal sealed class ServerGym(GymServer server) : IGym, IDisposable
{
    /// <inheritdoc/>
    public string Identity() => Do(server.Gym);

    /// <inheritdoc/>
    public void Push(IReadOnlyList<GymEvent> events) => Do(() => server.Push([.. events.Select(Of)]));

    /// <inheritdoc/>
    public void Erase(LifterErased erased) => Do(() =>
    {
        server.Erase(Of(erased));
        return 0;
    });

    /// <inheritdoc/>
    public IReadOnlyList<(long Position, string Line)> Pull(long after, int most) => Do(() => server.Pull(after, most));

    /// <inheritdoc/>
    public FactId? At(long position) => Do(() => server.At(position)) is var (rack, count) ? new FactId(rack, count) : null;

    /// <inheritdoc/>
    public void Dispose() => server.Dispose();

    private static Sealed Of(GymEvent one) => new(one.Id.Rack, one.Id.Sequence, one.Lifter, GymEventText.Write(one));

    private static T Do<T>(Func<T> what)
    {
        try
        {
            return what();
        }
        catch (Trouble trouble)
        {
            throw new GymTrouble(1, trouble.Message);
        }
    }
}
