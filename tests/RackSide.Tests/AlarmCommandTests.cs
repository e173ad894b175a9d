using RackSide.Pages;
using RackSide.Tests.Commands;

namespace RackSide.Tests;

public sealed class AlarmCommandTests : IDisposable
{
    private static readonly TimeSpan Limit = TimeSpan.FromSeconds(20);
    private readonly PassingFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task The_program_gets_its_words_as_they_stand_and_which_bell_it_is()
    {
        var file = Path.Combine(folder.Path, "rung");
        var alarm = new AlarmCommand(["/bin/sh", "-c", "printf '%s|%s' \"$RACKSIDE_BELL\" \"$1\" > \"$0.new\"; mv \"$0.new\" \"$0\"", file, "$(echo no); two words"]);

        alarm.Ring(Bell.Twice);

        (await Written(file)).Should().Be("2|$(echo no); two words");
        alarm.Trouble.Should().BeNull();
    }

    [Fact]
    public async Task A_program_that_is_not_there_is_told_in_a_sentence_and_breaks_nothing()
    {
        var alarm = new AlarmCommand(["/no/such/program"]);

        alarm.Ring(Bell.Once);

        for (var waited = System.Diagnostics.Stopwatch.StartNew(); alarm.Trouble is null && waited.Elapsed < Limit;)
        {
            await Task.Yield();
        }

        alarm.Trouble.Should().StartWith("alarm_command: /no/such/program could not be run");
    }

    [Fact]
    public async Task While_it_still_rings_another_bell_does_not_start_it_again()
    {
        var (file, go) = (Path.Combine(folder.Path, "rung"), Path.Combine(folder.Path, "go"));
        var alarm = new AlarmCommand(["/bin/sh", "-c", "until [ -e \"$1\" ]; do sleep 0.05; done; echo rung >> \"$0\"", file, go]);

        alarm.Ring(Bell.Once);
        alarm.Ring(Bell.Twice);
        File.WriteAllText(go, "");

        (await Written(file)).Should().Be("rung\n");
    }

    [Fact]
    public void No_program_and_no_bell_do_nothing()
    {
        new AlarmCommand([]).Ring(Bell.Twice);
        var silent = new AlarmCommand(["/no/such/program"]);
        silent.Ring(Bell.None);

        silent.Trouble.Should().BeNull();
    }

    private static async Task<string> Written(string file)
    {
        for (var waited = System.Diagnostics.Stopwatch.StartNew(); waited.Elapsed < Limit; await Task.Yield())
        {
            if (File.Exists(file))
            {
                return await File.ReadAllTextAsync(file);
            }
        }

        throw new TimeoutException($"{file} was not written");
    }
}
