using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;

namespace RackSide.House;

/// <summary>What RackSide.Training must not know of: everything that would give two answers to one question.</summary>
internal static partial class PureDomain
{
    /// <summary>The places where a source reaches out of the domain.</summary>
    public static IEnumerable<string> Violations(Source source) => source.Find(Outside());

    /// <summary>Static fields that can be set again, those behind settable static properties among them.</summary>
    public static IEnumerable<string> Settable(IEnumerable<Type> types) =>
        from type in types
        where type.GetCustomAttribute<CompilerGeneratedAttribute>() is null && !type.Name.StartsWith('<')
        from field in type.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly)
        where !field.IsInitOnly && !field.IsLiteral
        select $"{type.FullName}.{field.Name}";

    [GeneratedRegex("""
        \b(?:
            SystemClock | IClock | ZonedClock | Stopwatch | TimeProvider | DateTime(?:Offset)?\.(?:Utc)?Now | DateTime\.Today
          | (?:File|Directory|Path)\.[A-Z]\w* | FileStream | FileInfo | DirectoryInfo | StreamReader | StreamWriter
          | Console | Environment | Process
          | CultureInfo\.(?!InvariantCulture)\w+ | new\s+CultureInfo | RegionInfo | TimeZoneInfo
          | Random | RandomNumberGenerator | Guid\.NewGuid
          | Task | Thread | HttpClient
          | ThreadStatic | AsyncLocal
        )\b
        """, RegexOptions.IgnorePatternWhitespace)]
    private static partial Regex Outside();
}
