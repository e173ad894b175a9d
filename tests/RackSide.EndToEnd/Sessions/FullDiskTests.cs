using RackSide.EndToEnd.Driving;
using RackSide.Logbook;
using RackSide.Training.History;

namespace RackSide.EndToEnd.Sessions;

/// <summary>
/// The real program on a disk of three megabytes (a tmpfs) that fills in mid session. The journal is written full of zeros
/// beforehand so that a full disk does not stop it; here its unused part is given back to the disk, as a file system that
/// copies on write would need it anew.
/// </summary>
public sealed class FullDiskTests
{
    private const string Monday = "2026-11-23T18:00";

    // The disk goes with the name space, so what is on it at the end is copied out.
    private const string Script = "mount -t tmpfs -o size=3m tmpfs \"$0\" || exit 1; out=$1; shift; \"$@\"; code=$?; cp -r \"$0\"/. \"$out\"; exit $code";

    [SmallDiskFact]
    public async Task Sets_that_no_disk_takes_are_kept_in_memory_copied_to_a_stick_and_written_in_order_once_there_is_room()
    {
        using var mountPoint = new GymFolder();
        using var stick = new GymFolder();
        using var afterwards = new GymFolder();
        using var lifter = ScriptedLifter.WalkUp(
            ["unshare", "-rm", "sh", "-c", Script, mountPoint.Path, afterwards.Path],
            mountPoint.Path, Monday, 400, new Dictionary<string, string> { ["RACKSIDE_STICK"] = stick.Path });
        await lifter.SetUp();
        await lifter.Begin();
        var disk = $"/proc/{lifter.Screen.ProcessId}/root{mountPoint.Path}";
        Fill(disk);

        await lifter.TrainUntil("not on disk yet, still trying: No space left on device");
        lifter.Press("KP/", "KP8");
        await lifter.Sees("Not all is written yet");
        lifter.Press("KPEnter");
        var page = await lifter.Sees("NOT WRITTEN YET");
        page.Should().Contain("not on disk: No space left on device").And.Contain("back to the session").And.Contain(stick.Path).And.Contain("give them up");
        lifter.Press("KP3", "KPEnter");
        await lifter.Sees("Copy written");
        var copied = LogbookSnapshot.Of(new FileInfo(Directory.GetFiles(stick.Path).Single())).Sessions("first").Single();
        copied.Facts.OfType<SetDone>().Should().NotBeEmpty();

        lifter.Press("KP2", "KPEnter");
        await lifter.Screen.WaitFor(screen => !screen.Contains("NOT WRITTEN YET", StringComparison.Ordinal), "the session again");
        lifter.Press("KP/", "KP8", "KPEnter");
        await lifter.Sees("NOT WRITTEN YET");
        File.Delete(Path.Combine(disk, "fill"));

        (await lifter.Screen.WaitForEnd()).Should().Be(0);
        afterwards.Sessions().Single().Facts.Should().Equal(copied.Facts, "what the copy had is written, in its order");
    }

    [SmallDiskFact]
    public async Task A_session_begun_on_a_full_disk_goes_on_in_memory_and_after_ctrl_C_a_folder_is_asked_for()
    {
        using var mountPoint = new GymFolder();
        using var stick = new GymFolder();
        using var afterwards = new GymFolder();
        using var lifter = ScriptedLifter.WalkUp(
            ["unshare", "-rm", "sh", "-c", Script, mountPoint.Path, afterwards.Path], mountPoint.Path, Monday, 400, new Dictionary<string, string>());
        await lifter.SetUp();
        await lifter.Sees("STRENGTH DAY  Mon 23 Nov");
        Fill($"/proc/{lifter.Screen.ProcessId}/root{mountPoint.Path}");

        await lifter.Begin();
        await lifter.TrainUntil("not on disk yet, still trying: No space left on device");
        lifter.Press("C-c");
        await lifter.Sees("A folder for a copy that has them");
        lifter.Press(Path.Combine(stick.Path, "copies"), "Enter");

        (await lifter.Screen.WaitForEnd()).Should().Be(74);
        lifter.Screen.Capture().ReplaceLineEndings("").Should().Contain("the session is in memory alone").And.Contain("could not be written").And.Contain("rackside restore");
        afterwards.Sessions().Should().BeEmpty("the disk took nothing of it");
        var copied = LogbookSnapshot.Of(new FileInfo(Directory.GetFiles(Path.Combine(stick.Path, "copies")).Single())).Sessions("first").Single();
        copied.Head.Prescriptions.Should().NotBeEmpty();
        copied.Facts.Should().NotBeEmpty();
    }

    private static void Fill(string disk)
    {
        Tool.Run("fallocate", ["--dig-holes", Path.Combine(disk, "log.journal")]);
        using var fill = File.Create(Path.Combine(disk, "fill"));
        try
        {
            var some = new byte[4096];
            while (true)
            {
                fill.Write(some);
                fill.Flush();
            }
        }
        catch (IOException)
        {
            // Full.
        }
    }
}
