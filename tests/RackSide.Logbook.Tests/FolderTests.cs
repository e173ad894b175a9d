using System.Diagnostics;

namespace RackSide.Logbook.Tests;

/// <summary>On a real folder of this machine.</summary>
public sealed class FolderTests : IDisposable
{
    private readonly string folder = Path.Combine(Directory.CreateTempSubdirectory("logbook-").FullName, "deep", "log");

    public void Dispose() => Directory.Delete(Path.GetFullPath(Path.Combine(folder, "..", "..")), recursive: true);

    [Fact]
    public void A_logbook_lasts_in_a_folder_made_for_its_owner_only()
    {
        using (var book = LiteLogbook.Open(folder, Tollbooth.Evening))
        {
            book.Report.Condition.Should().Be(Condition.Begun);
            book.Keep(Tollbooth.Ottoline);
        }

        using var again = LiteLogbook.Open(folder, Tollbooth.Evening);
        again.Lifters().Should().Equal(Tollbooth.Ottoline);
        again.Report.Condition.Should().Be(Condition.Sound);
        Names().Should().BeEquivalentTo(FileNames.Lock, FileNames.Main, FileNames.WriteAhead, FileNames.Journal, FileNames.Copy);
        if (!OperatingSystem.IsWindows())
        {
            File.GetUnixFileMode(folder).Should().Be(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
            Directory.GetFiles(folder).Select(File.GetUnixFileMode).Should().OnlyContain(m => m == (UnixFileMode.UserRead | UnixFileMode.UserWrite));
        }
    }

    [Fact]
    public void A_second_window_is_told_that_the_first_has_it()
    {
        using (LiteLogbook.Open(folder, Tollbooth.Evening))
        {
            var act = () => LiteLogbook.Open(folder, Tollbooth.Evening);

            act.Should().Throw<LogbookBusyException>()
                .WithMessage($"The logbook in {folder} is already open in another window on this machine.");
        }

        LiteLogbook.Open(folder, Tollbooth.Evening).Dispose();
    }

    [Fact]
    public void A_path_that_is_a_file_is_told_in_a_sentence()
    {
        Directory.CreateDirectory(Path.GetDirectoryName(folder)!);
        File.WriteAllText(folder, "not a folder");

        var act = () => LiteLogbook.Open(folder, Tollbooth.Evening);

        act.Should().Throw<LogbookUnreadableException>().WithMessage($"The logbook in {folder} could not be opened*");
    }

    [Fact]
    public void A_folder_copied_at_the_instant_of_an_acknowledgement_holds_the_set()
    {
        using var book = LiteLogbook.Open(folder, Tollbooth.Evening);
        var head = Tollbooth.Head(book.NextId());
        book.Begin(head);
        book.Append(head.Id, Tollbooth.Set(book.NextId()));

        // Another program's copy, because this process's own opener respects the lock.
        var elsewhere = folder + "-copied";
        using (var copy = Process.Start("cp", ["-r", folder, elsewhere]))
        {
            copy.WaitForExit();
        }

        using var copied = LiteLogbook.Open(elsewhere, Tollbooth.Evening);
        copied.Open("ottoline")!.Sets.Should().ContainSingle();
    }

    private IEnumerable<string?> Names() => Directory.GetFileSystemEntries(folder).Select(Path.GetFileName);
}
