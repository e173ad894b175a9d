using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace RackSide.Files;

/// <summary>
/// Turns YAML text into values with their lines. It reads the library's parser events instead of its node model,
/// because the node model stops at the first field written twice and a person wants every mistake at once.
/// Anchors and aliases are refused: a plan that a coach reads top to bottom needs no cross references.
/// </summary>
internal sealed class YamlText
{
    /// <summary>Far deeper than any of our files, and shallow enough that no file can exhaust the call stack.</summary>
    private const int DeepestNesting = 20;

    private readonly CarefulParser parser;
    private readonly MistakeList mistakes;
    private int depth;
    private bool refersElsewhere;

    private YamlText(string text, MistakeList mistakes)
    {
        parser = new CarefulParser(new StringReader(text));
        this.mistakes = mistakes;
    }

    /// <summary>The value the text holds, or null where it holds none or cannot be read; then a mistake says why.</summary>
    public static YamlValue? Read(string text, MistakeList mistakes)
    {
        NoteTabs(text, mistakes);
        if (mistakes.Any)
        {
            return null;
        }

        try
        {
            var reader = new YamlText(text, mistakes);
            var value = reader.Document();
            return reader.refersElsewhere ? null : value;
        }
        catch (YamlException e)
        {
            mistakes.Add(Math.Max(1, (int)e.Start.Line), "", $"cannot be read as YAML ({Lower(e.Message)})",
                "look here and on the line before for a missing colon, quote or bracket, or an indentation out of step");
            return null;
        }
    }

    // YAML forbids tabs in indentation and the library's sentence about them is obscure; this one names every such line.
    private static void NoteTabs(string text, MistakeList mistakes)
    {
        var number = 0;
        foreach (var line in text.AsSpan().EnumerateLines())
        {
            number++;
            var indentation = line[..(line.Length - line.TrimStart().Length)];
            if (indentation.Contains('\t') && indentation.Length < line.Length)
            {
                mistakes.Add(number, "", "a tab stands in the indentation", "indent with spaces, two for each level");
            }
        }
    }

    private YamlValue? Document()
    {
        parser.Consume<StreamStart>();
        if (!parser.TryConsume<DocumentStart>(out _))
        {
            return null;
        }

        var value = Value();
        parser.Consume<DocumentEnd>();
        if (parser.TryConsume<DocumentStart>(out var second))
        {
            mistakes.Add(Line(second), "", "a second document begins here", "keep one in a file and take out the line ---");
            return null;
        }

        return value;
    }

    private YamlValue Value()
    {
        if (++depth > DeepestNesting)
        {
            throw new YamlException(parser.Current!.Start, parser.Current.End, "nested too deeply");
        }

        YamlValue value = parser.Current switch
        {
            Scalar => OfScalar(parser.Consume<Scalar>()),
            SequenceStart => List(),
            MappingStart => Map(),
            AnchorAlias => Alias(),
            var other => throw new YamlException(other!.Start, other.End, "a value is missing"),
        };
        depth--;
        return value;
    }

    private static YamlScalar OfScalar(Scalar scalar) => new(Line(scalar), scalar.Value);

    private YamlScalar Alias()
    {
        var alias = parser.Consume<AnchorAlias>();
        refersElsewhere = true;
        mistakes.Add(Line(alias), "", $"*{alias.Value} refers to another place", "write the value out here");
        return new YamlScalar(Line(alias), "");
    }

    private YamlList List()
    {
        var line = Line(parser.Consume<SequenceStart>());
        var items = new List<YamlValue>();
        while (!parser.TryConsume<SequenceEnd>(out _))
        {
            items.Add(Value());
        }

        return new YamlList(line, items);
    }

    private YamlMap Map()
    {
        var line = Line(parser.Consume<MappingStart>());
        var fields = new List<YamlField>();
        while (!parser.TryConsume<MappingEnd>(out _))
        {
            var name = Value();
            Keep(fields, name, Value());
        }

        return new YamlMap(line, fields);
    }

    private void Keep(List<YamlField> fields, YamlValue name, YamlValue value)
    {
        if (name is not YamlScalar { Text: var text, Line: var line })
        {
            mistakes.Add(name.Line, "", $"{name.Kind} stands where the name of a field should be", "write a plain word before the colon");
        }
        else if (fields.Find(f => f.Name == text) is { } first)
        {
            mistakes.Add(line, text, $"written twice, first on line {first.Line}", "keep one of them");
        }
        else
        {
            fields.Add(new YamlField(text, line, value));
        }
    }

    private static int Line(ParsingEvent at) => (int)at.Start.Line;

    private static string Lower(string message) => message.Length == 0
        ? "no reason given"
        : char.ToLowerInvariant(message[0]) + message[1..].TrimEnd('.');
}
