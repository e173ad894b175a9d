using System.Text;

namespace RackSide.Files;

/// <summary>Replaces a file as a whole: after a power cut it is the old one or the new one, never a part of either.</summary>
internal static class WholeFile
{
    /// <summary>Puts a text in place of a file. The text before stays beside it, under the same name and <c>.old</c>.</summary>
    public static void Replace(string path, string text)
    {
        if (File.Exists(path))
        {
            File.Copy(path, path + ".old", overwrite: true);
        }

        var beside = path + ".new";
        using (var file = new FileStream(beside, FileMode.Create, FileAccess.Write))
        {
            file.Write(Encoding.UTF8.GetBytes(text));
            file.Flush(flushToDisk: true);
        }

        File.Move(beside, path, overwrite: true);
    }
}
