namespace RackSide.Pages.Tests;

/// <summary>Holds a document of the project against what the code says; with <c>RACKSIDE_ACCEPT=1</c> it is written anew.</summary>
internal static class Docs
{
    public static void Match(string name, string text)
    {
        var file = Path.Combine(Root(), "docs", name);
        if (Environment.GetEnvironmentVariable("RACKSIDE_ACCEPT") == "1")
        {
            File.WriteAllText(file, text);
        }

        File.ReadAllText(file).Should().Be(text, $"docs/{name} is made from the code; where the change is meant, run with RACKSIDE_ACCEPT=1");
    }

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "RackSide.sln")))
        {
            folder = folder.Parent ?? throw new DirectoryNotFoundException($"no RackSide.sln above {AppContext.BaseDirectory}");
        }

        return folder.FullName;
    }
}
