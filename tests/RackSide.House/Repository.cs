using System.Diagnostics;

namespace RackSide.House;

/// <summary>The tree the tests were built from, found by walking up from where they run.</summary>
internal static class Repository
{
    /// <summary>The folder that holds the solution.</summary>
    public static string Root { get; } = Above(AppContext.BaseDirectory)
        .FirstOrDefault(folder => File.Exists(Path.Combine(folder, "RackSide.sln")))
        ?? throw new InvalidOperationException($"no RackSide.sln above {AppContext.BaseDirectory}");

    /// <summary>Every file that is or could be committed, relative to the root, with forward slashes.</summary>
    public static IReadOnlyList<string> Files { get; } = FromGit() ?? FromDisk();

    /// <summary>The files of these folders (or of these names) with one of these endings, all endings where none is given.</summary>
    public static IEnumerable<string> In(IEnumerable<string> places, params string[] endings) => Files.Where(file =>
        places.Any(place => file == place || file.StartsWith(place + "/", StringComparison.Ordinal))
        && (endings.Length == 0 || endings.Any(ending => file.EndsWith(ending, StringComparison.Ordinal))));

    /// <summary>The C# sources under a folder.</summary>
    public static IReadOnlyList<Source> Sources(params string[] folders) =>
        [.. In(folders, ".cs").Select(file => new Source(file, Read(file)))];

    /// <summary>The text of a file.</summary>
    public static string Read(string file) => File.ReadAllText(Path.Combine(Root, file));

    /// <summary>Whether the tree has it.</summary>
    public static bool Has(string file) => File.Exists(Path.Combine(Root, file));

    /// <summary>The tree without what is hidden, built or ignored: for a copy that came without its history.</summary>
    internal static IReadOnlyList<string> FromDisk()
    {
        string[] made = ["bin", "obj", "TestResults", "BenchmarkDotNet.Artifacts", "publish"];
        return [.. Directory.EnumerateFiles(Root, "*", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(Root, file).Replace('\\', '/'))
            .Where(file => !file.Split('/').Any(part => part.StartsWith('.') || made.Contains(part)))
            .Order(StringComparer.Ordinal)];
    }

    private static IReadOnlyList<string>? FromGit()
    {
        try
        {
            var start = new ProcessStartInfo("git", "ls-files --cached --others --exclude-standard -z")
            {
                WorkingDirectory = Root,
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            };
            using var git = Process.Start(start)!;
            git.ErrorDataReceived += (_, _) => { };
            git.BeginErrorReadLine();
            var files = git.StandardOutput.ReadToEnd().Split('\0', StringSplitOptions.RemoveEmptyEntries);
            git.WaitForExit();
            return git.ExitCode == 0 && files.Length > 0 ? [.. files.Where(Has).Distinct()] : null;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return null;
        }
    }

    private static IEnumerable<string> Above(string folder)
    {
        for (var here = new DirectoryInfo(folder); here is not null; here = here.Parent)
        {
            yield return here.FullName;
        }
    }
}
