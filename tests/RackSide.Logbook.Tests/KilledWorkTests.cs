using System.Globalization;
using Xunit.Abstractions;

namespace RackSide.Logbook.Tests;

/// <summary>
/// A process killed (SIGKILL) at one of its calls to the disk while it migrates, rebuilds, copies or backs up: in the suite
/// at a few calls, in the long run at each of them.
/// </summary>
public sealed class KilledWorkTests(ITestOutputHelper told) : IDisposable
{
    private readonly string root = Directory.CreateTempSubdirectory("logbook-").FullName;

    public void Dispose() => Directory.Delete(root, recursive: true);

    [Theory]
    [InlineData("format-1")]
    [InlineData("format-2")]
    [InlineData("format-4")]
    public void A_kill_while_an_older_logbook_is_brought_up_to_date_loses_no_set(string format)
    {
        var frozen = Path.Combine(AppContext.BaseDirectory, "Frozen", format);
        List<Ack> acknowledged = [.. File.ReadLines(Path.Combine(frozen, "acknowledged.txt")).Select(Ack.Of).OfType<Ack>()];
        acknowledged.Should().NotBeEmpty();

        KillAtCalls("open", frozen, acknowledged);
    }

    [Fact]
    public void A_kill_while_a_damaged_log_is_rebuilt_loses_no_set()
    {
        var (damaged, acknowledged) = Killed();
        var log = Path.Combine(damaged, FileNames.Main);
        File.WriteAllBytes(log, [.. File.ReadAllBytes(log).Select(b => (byte)(b ^ 0x55))]);

        KillAtCalls("open", damaged, acknowledged, () =>
            Directory.EnumerateFiles(Now, "log.bad-*").Should().NotBeEmpty("the broken file is kept"));
    }

    [Fact]
    public void A_kill_while_the_log_is_copied_and_the_journal_begun_anew_loses_no_set()
    {
        var (begun, acknowledged) = Killed();

        KillAtCalls("checkpoint", begun, acknowledged);
    }

    [Fact]
    public void A_kill_while_a_backup_is_made_loses_no_set_and_leaves_no_half_one()
    {
        var (begun, acknowledged) = Killed();
        new Backups(Path.Combine(begun, Backups.FolderName)).Make(LogbookSnapshot.Nothing, Tollbooth.Wednesday.PlusDays(-1));

        KillAtCalls("backup", begun, acknowledged, () =>
        {
            var kept = Backups.In(Path.Combine(Now, Backups.FolderName));
            kept.Should().NotBeEmpty();
            foreach (var (file, _) in kept)
            {
                var read = () => LogbookSnapshot.Of(file);
                read.Should().NotThrow("a backup that has its name is whole");
            }
        });
    }

    private string Now => Path.Combine(root, "now");

    private void KillAtCalls(string work, string from, IReadOnlyCollection<Ack> acknowledged, Action? alsoHolds = null)
    {
        var calls = CallsOf(work, from);
        var kills = Which(calls);
        foreach (var call in kills)
        {
            Copy(from);
            var (acks, last) = WriterProcess.Do(Now, work, call);
            (last ?? "").Should().NotStartWith("calls", $"it was killed at call {call} of {calls}");

            using (var book = LiteLogbook.Open(Now, Tollbooth.Evening))
            {
                book.Report.Lost.Should().Be(0, $"killed at call {call} of {calls}");
                Ack.Missing(book, [.. acknowledged, .. acks]).Should().BeEmpty($"killed at call {call} of {calls}");
            }

            alsoHolds?.Invoke();
        }

        told.WriteLine($"{work} of {Path.GetFileName(from)}: {calls} calls, killed at {kills.Count} of them, {acknowledged.Count} sets before it, none lost");
    }

    private int CallsOf(string work, string from)
    {
        Copy(from);
        var last = WriterProcess.Do(Now, work, call: 0).Last;
        last.Should().StartWith("calls ");
        return int.Parse(last!.Split(' ')[1], CultureInfo.InvariantCulture);
    }

    private static List<int> Which(int calls)
    {
        var many = LongRun.Or(4, calls);
        return [.. Enumerable.Range(1, many).Select(n => n * calls / many).Where(n => n > 0)];
    }

    // A logbook whose writer was killed in mid session.
    private (string Folder, IReadOnlyList<Ack> Acks) Killed()
    {
        var folder = Directory.CreateDirectory(Path.Combine(root, "killed")).FullName;
        using var child = WriterProcess.Start(folder, "7");
        List<string> heard = [.. Enumerable.Range(0, 20).Select(_ => child.StandardOutput.ReadLine()!)];
        child.Kill();
        heard.AddRange(child.StandardOutput.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries));
        child.WaitForExit();
        return (folder, [.. heard.Select(Ack.Of).OfType<Ack>()]);
    }

    private void Copy(string from)
    {
        if (Directory.Exists(Now))
        {
            Directory.Delete(Now, recursive: true);
        }

        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            var to = Path.Combine(Now, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(to)!);
            File.Copy(file, to);
        }
    }
}
