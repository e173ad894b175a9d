using System.Runtime.CompilerServices;
using RackSide.Screens.Waiting;

namespace RackSide.Screens.Tests;

public class TidyingTests
{
    // Standard S12: memory after an hour. What planning from years of log leaves is given back while nobody presses a key.
    [Fact]
    public void What_a_burst_of_work_left_behind_is_given_back()
    {
        var tidying = new Tidying();
        tidying.Tidy();
        var left = Burst();
        left.IsAlive.Should().BeTrue();

        tidying.Tidy();

        left.IsAlive.Should().BeFalse();
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static WeakReference Burst()
    {
        var last = new WeakReference(new byte[32]);
        for (var n = 0; n < 200; n++)
        {
            last = new WeakReference(new byte[80_000]);
        }

        return last;
    }
}
