using System.Buffers.Binary;

namespace RackSide.Kiosk;

/// <summary>
/// A generated tone as a WAV file: 16 bits, mono, PCM (RIFF, Microsoft and IBM, 1991). It begins with silence, because a
/// screen's loudspeaker swallows the first half second while it wakes.
/// </summary>
internal static class Tone
{
    private const int Rate = 16_000;
    private const int HeaderBytes = 44;
    private const double Loudness = 0.6;
    private static readonly TimeSpan Silence = TimeSpan.FromMilliseconds(400);
    private static readonly TimeSpan Length = TimeSpan.FromMilliseconds(250);
    private static readonly TimeSpan Gap = TimeSpan.FromMilliseconds(150);

    // Faded in and out over this time, or it would click.
    private static readonly TimeSpan Fade = TimeSpan.FromMilliseconds(8);

    /// <summary>Beeps of these pitches, one after the other.</summary>
    /// <param name="pitches">In hertz.</param>
    public static byte[] Wav(params IReadOnlyList<double> pitches)
    {
        var samples = Samples(pitches);
        var wav = new byte[HeaderBytes + (2 * samples.Length)];
        "RIFF"u8.CopyTo(wav);
        BinaryPrimitives.WriteInt32LittleEndian(wav.AsSpan(4), wav.Length - 8);
        "WAVEfmt "u8.CopyTo(wav.AsSpan(8));
        BinaryPrimitives.WriteInt32LittleEndian(wav.AsSpan(16), 16);
        BinaryPrimitives.WriteInt16LittleEndian(wav.AsSpan(20), 1);
        BinaryPrimitives.WriteInt16LittleEndian(wav.AsSpan(22), 1);
        BinaryPrimitives.WriteInt32LittleEndian(wav.AsSpan(24), Rate);
        BinaryPrimitives.WriteInt32LittleEndian(wav.AsSpan(28), 2 * Rate);
        BinaryPrimitives.WriteInt16LittleEndian(wav.AsSpan(32), 2);
        BinaryPrimitives.WriteInt16LittleEndian(wav.AsSpan(34), 16);
        "data"u8.CopyTo(wav.AsSpan(36));
        BinaryPrimitives.WriteInt32LittleEndian(wav.AsSpan(40), 2 * samples.Length);
        for (var i = 0; i < samples.Length; i++)
        {
            BinaryPrimitives.WriteInt16LittleEndian(wav.AsSpan(HeaderBytes + (2 * i)), samples[i]);
        }

        return wav;
    }

    private static short[] Samples(IReadOnlyList<double> pitches)
    {
        var (silence, length, gap) = (Count(Silence), Count(Length), Count(Gap));
        var samples = new short[silence + (pitches.Count * (length + gap))];
        for (var beep = 0; beep < pitches.Count; beep++)
        {
            for (var i = 0; i < length; i++)
            {
                samples[silence + (beep * (length + gap)) + i] = Sample(pitches[beep], i, length);
            }
        }

        return samples;
    }

    private static short Sample(double pitch, int i, int length)
    {
        var fade = Math.Min(1, Math.Min(i, length - 1 - i) / (double)Count(Fade));
        return (short)(short.MaxValue * Loudness * fade * Math.Sin(2 * Math.PI * pitch * i / Rate));
    }

    private static int Count(TimeSpan time) => (int)(time.TotalSeconds * Rate);
}
