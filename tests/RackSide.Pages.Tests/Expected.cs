using System.Globalization;
using System.Text;

namespace RackSide.Pages.Tests;

/// <summary>
/// Compares a page with the text file of that name and size under <c>Expected/</c>, so that a reviewer sees the screen
/// change. With <c>RACKSIDE_ACCEPT=1</c> in the environment the files are written anew; look at them before committing.
/// </summary>
public static class Expected
{
    private const string Accept = "RACKSIDE_ACCEPT";

    /// <summary>Fails with the lines that differ, or where the file is missing.</summary>
    public static void Match(Page page, string name)
    {
        var file = Path.Combine(Folder(), $"{name}-{page.Size.Columns}x{page.Size.Rows}.txt");
        var shown = Written(page);
        if (Environment.GetEnvironmentVariable(Accept) == "1")
        {
            Directory.CreateDirectory(Folder());
            File.WriteAllText(file, shown);
        }

        File.Exists(file).Should().BeTrue($"{file} is what the page is held against; run with {Accept}=1 to write it");
        var differences = Differences(File.ReadAllText(file), shown);
        differences.Should().BeEmpty($"the page should be as in {file}; where the change is meant, run with {Accept}=1");
    }

    /// <summary>The lines that differ, as <c>row: - expected</c> and <c>row: + shown</c>; empty where there are none.</summary>
    public static string Differences(string expected, string shown)
    {
        var (before, after) = (expected.ReplaceLineEndings("\n").Split('\n'), shown.Split('\n'));
        var told = new StringBuilder();
        for (var row = 0; row < Math.Max(before.Length, after.Length); row++)
        {
            var (was, now) = (before.ElementAtOrDefault(row), after.ElementAtOrDefault(row));
            if (was != now)
            {
                told.Append(CultureInfo.InvariantCulture, $"\n{row + 1}: - {was}\n{row + 1}: + {now}");
            }
        }

        return told.ToString();
    }

    private static string Written(Page page) =>
        $"{page.Text}(cursor: column {page.CursorColumn + 1}, row {page.CursorRow + 1})\n";

    // The files are part of the source, so they are looked for above the built tests.
    private static string Folder()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "RackSide.sln")))
        {
            folder = folder.Parent ?? throw new DirectoryNotFoundException($"no RackSide.sln above {AppContext.BaseDirectory}");
        }

        return Path.Combine(folder.FullName, "tests", "RackSide.Pages.Tests", "Expected");
    }
}
