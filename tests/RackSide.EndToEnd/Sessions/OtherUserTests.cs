using System.Diagnostics;
using RackSide.EndToEnd.Driving;

namespace RackSide.EndToEnd.Sessions;

/// <summary>
/// The program as another user (nobody, 65534) than the one whose logbook it is, and as one who may read and not write.
/// Rights say nothing to root, so another user is what these tests need.
/// </summary>
public sealed class OtherUserTests
{
    [AnotherUserFact]
    public void A_logbook_of_another_user_is_told_with_its_remedy_and_nothing_is_changed()
    {
        using var gym = new GymFolder();
        Begin(gym);
        var before = Bytes(gym);

        var (code, said) = AsNobody(gym, "today");

        code.Should().Be(74);
        said.ReplaceLineEndings(" ").Should().Contain("belongs to another user, or may not be read and written by this one")
            .And.Contain("Nothing was changed. Start RackSide as its owner").And.Contain("chown").And.NotContain("   at ");
        Bytes(gym).Should().BeEquivalentTo(before);
    }

    [AnotherUserFact]
    public void A_folder_that_may_only_be_read_is_told_with_its_remedy()
    {
        using var gym = new GymFolder();
        Begin(gym);
        Tool.Run("chmod", ["-R", "a+rX,a-w", gym.Path]);

        var (code, said) = AsNobody(gym, "today");

        code.Should().Be(74);
        said.ReplaceLineEndings(" ").Should().Contain("may not be read and written by this one").And.Contain("Nothing was changed.");
        Tool.Run("chmod", ["-R", "u+w", gym.Path]);
        gym.Sessions().Should().BeEmpty("its owner opens it as before");
    }

    // The temporary folder's own rights would keep nobody out before the logbook could.
    private static void Begin(GymFolder gym)
    {
        using (var logbook = Logbook.LiteLogbook.Open(gym.Path, NodaTime.Instant.FromUtc(2026, 11, 23, 18, 0)))
        {
            logbook.Keep(new Training.History.Lifter("first", "Ottoline Marsh", Training.Measures.MassUnit.Kilogram, NodaTime.Instant.FromUtc(2026, 11, 23, 18, 0)));
        }

        Tool.Run("chmod", ["711", gym.Path]);
    }

    private static Dictionary<string, byte[]> Bytes(GymFolder gym) => Directory.GetFiles(gym.Path).ToDictionary(f => f, File.ReadAllBytes);

    private static (int Code, string Said) AsNobody(GymFolder gym, params string[] words)
    {
        var start = new ProcessStartInfo("setpriv", ["--reuid=65534", "--regid=65534", "--clear-groups", "--", .. ProgramUnderTest.RackSide, .. words, "--data", gym.Path])
        {
            RedirectStandardError = true,
            RedirectStandardOutput = true,
        };
        start.Environment["HOME"] = gym.Path;
        start.Environment["DOTNET_CLI_HOME"] = gym.Path;
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync();
        var error = process.StandardError.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, error + output.Result);
    }
}

/// <summary>A test that becomes another user, where this machine lets it; it says why where not.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class AnotherUserFactAttribute : FactAttribute
{
    private static readonly bool Possible = Try();

    public AnotherUserFactAttribute() => Skip = Possible ? null : "only root may become another user (setpriv), and that user must be able to start the program where it lies";

    private static bool Try()
    {
        try
        {
            var start = new ProcessStartInfo("setpriv", ["--reuid=65534", "--regid=65534", "--clear-groups", "--", .. ProgramUnderTest.RackSide, "--version"])
            {
                RedirectStandardError = true,
                RedirectStandardOutput = true,
            };
            using var tried = Process.Start(start)!;
            tried.WaitForExit();
            return tried.ExitCode == 0;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }
}
