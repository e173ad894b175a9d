using System.Buffers.Binary;
using System.Diagnostics;
using RackSide.Kiosk;
using RackSide.Pages;
using RackSide.Tests.Commands;

namespace RackSide.Tests.Kiosk;

public class SpeakerTests
{
    [Fact]
    public void A_tone_is_a_WAV_file_of_its_pitch()
    {
        var wav = Tone.Wav(660, 660);

        BinaryPrimitives.ReadInt32LittleEndian(wav.AsSpan(4)).Should().Be(wav.Length - 8, "the RIFF chunk is all but its own head");
        BinaryPrimitives.ReadInt32LittleEndian(wav.AsSpan(40)).Should().Be(wav.Length - 44);
        var samples = Enumerable.Range(0, (wav.Length - 44) / 2).Select(i => BinaryPrimitives.ReadInt16LittleEndian(wav.AsSpan(44 + (2 * i)))).ToList();
        samples.Take(6400).Should().OnlyContain(s => s == 0, "0.4 s let the speaker wake");
        var crossings = samples.Zip(samples.Skip(1)).Count(p => p.First < 0 && p.Second >= 0);
        crossings.Should().BeInRange(328, 331, "two beeps of a quarter second at 660 Hz pass through nought 330 times");
        samples.Zip(samples.Skip(1)).Max(p => Math.Abs(p.First - p.Second)).Should().BeLessThan(6000, "a step as large as a beep would click");
    }

    [Fact]
    public void A_bell_is_fed_to_the_player_and_a_player_that_fails_is_no_trouble()
    {
        using var folder = new PassingFolder();
        var heard = Path.Combine(folder.Path, "heard");
        Executable(folder.File("aplay", $"#!/bin/sh\ncat >'{heard}.part' && mv '{heard}.part' '{heard}'\n"));
        Speaker.Find(_ => folder.Path)!.Play(Bell.Once);
        Until(() => File.Exists(heard));
        File.ReadAllBytes(heard).Should().Equal(Tone.Wav(660));

        using var broken = new PassingFolder();
        Executable(broken.File("aplay", "#!/bin/sh\necho no card >&2; exit 1\n"));
        var speaker = Speaker.Find(_ => broken.Path)!;
        speaker.Play(Bell.Twice);
        speaker.Play(Bell.Twice);

        Speaker.Find(_ => "/none:/nowhere").Should().BeNull();
    }

    private static void Executable(string file)
    {
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(file, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }

    private static void Until(Func<bool> so)
    {
        var since = Stopwatch.StartNew();
        SpinWait.SpinUntil(so, TimeSpan.FromSeconds(20)).Should().BeTrue($"within {since.Elapsed}");
    }
}
