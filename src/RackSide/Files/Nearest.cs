namespace RackSide.Files;

/// <summary>Finds the word a person probably meant.</summary>
internal static class Nearest
{
    private const int LongestWord = 60;

    /// <summary>The closest candidate, at most about a third of the word away; null where none is near enough to suggest.</summary>
    public static string? To(string word, IEnumerable<string> candidates)
    {
        if (word.Length > LongestWord)
        {
            return null;
        }

        var limit = Math.Max(2, word.Length / 3);
        return candidates
            .Select(c => (Word: c, Distance: Distance(word.ToLowerInvariant(), c)))
            .Where(c => c.Distance <= limit && c.Distance < Math.Max(word.Length, c.Word.Length))
            .OrderBy(c => c.Distance)
            .Select(c => c.Word)
            .FirstOrDefault();
    }

    /// <summary>
    /// How many letters must be put in, left out, changed or swapped with their neighbour to make one word of the other.
    /// Source: the edit distance of F. J. Damerau, 1964, and V. I. Levenshtein, 1966, where no letter is moved twice.
    /// </summary>
    private static int Distance(string a, string b)
    {
        int[] before = [];
        var above = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 1; i <= a.Length; i++)
        {
            var row = new int[b.Length + 1];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var change = above[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                row[j] = Math.Min(change, 1 + Math.Min(above[j], row[j - 1]));
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    row[j] = Math.Min(row[j], before[j - 2] + 1);
                }
            }

            (before, above) = (above, row);
        }

        return above[b.Length];
    }
}
