using System.Text;

namespace RackSide.Files;

/// <summary>Reads a file that a person wrote. What stands in the way is a mistake with a sentence, as a slip in the text is.</summary>
internal static class TextFile
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Far larger than any plan; a file beyond it was named by mistake.</summary>
    private const int MostMegabytes = 1;

    /// <summary>Reads the file and hands its text on.</summary>
    /// <param name="path">The file.</param>
    /// <param name="read">Reads its text.</param>
    /// <param name="megabytes">The most it may hold.</param>
    public static Reading<T> Read<T>(string path, Func<string, Reading<T>> read, int megabytes = MostMegabytes)
        where T : class
    {
        try
        {
            return new FileInfo(path) is { Exists: true } file && file.Length > megabytes * 1_000_000L
                ? Failed<T>(path, $"is larger than {megabytes} MB", megabytes == MostMegabytes ? "name a plan or house-rules file" : "cut it into several")
                : read(File.ReadAllText(path, Strict));
        }
        catch (Exception e) when (Reason(e) is not null)
        {
            var (wrong, right) = Reason(e)!.Value;
            return Failed<T>(path, wrong, right);
        }
    }

    private static (string Wrong, string Right)? Reason(Exception e) => e switch
    {
        FileNotFoundException or DirectoryNotFoundException => ("there is no such file", "check the name and the folder"),
        UnauthorizedAccessException => ("may not be read", "check that it is a file and that you are allowed to read it"),
        DecoderFallbackException => ("is not UTF-8 text", "save it as plain UTF-8 text"),
        IOException => ("could not be read", "check the disk and try again"),
        _ => null,
    };

    private static Reading<T> Failed<T>(string path, string wrong, string right)
        where T : class => new(null, [new Mistake(path, 0, "", wrong, right)]);
}
