using System.Text;
using RackSide.Places;

namespace RackSide.Files;

/// <summary>Replaces a file as a whole: after a power cut it is the old one or the new one, never a part of either, and only its owner may read it.</summary>
internal static class WholeFile
{
    /// <summary>Puts a text in place of a file. The text before stays beside it, under the same name and <c>.old</c>.</summary>
    public static void Replace(string path, string text)
    {
        if (File.Exists(path))
        {
            File.Copy(path, path + ".old", overwrite: true);
        }

        PrivateFile.Write(path, Encoding.UTF8.GetBytes(text));
    }
}
