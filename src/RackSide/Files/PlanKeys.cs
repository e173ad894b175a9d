namespace RackSide.Files;

/// <summary>The keys that facts name slots and days by: lower-case letters, digits and hyphens, so that they never need quoting.</summary>
internal static class PlanKeys
{
    private const string Right = "write lower-case letters, digits and hyphens, such as vertical-pull";

    /// <summary>Reads a slot's key.</summary>
    public static string? Read(Fields fields, MistakeList mistakes) => fields.RequiredText("key", Right) is { } key && Check(key, fields.LineOf("key"), "key", mistakes)
        ? key
        : null;

    /// <summary>Whether a key is well made; a mistake says where it is not.</summary>
    public static bool Check(string key, int line, string field, MistakeList mistakes)
    {
        var good = key.Length is > 0 and <= 30
            && key.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-')
            && !key.StartsWith('-') && !key.EndsWith('-');
        if (!good)
        {
            mistakes.Add(line, field, $"\"{key}\" is not a key", Right);
        }

        return good;
    }
}
