using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace RackSide.Files;

/// <summary>
/// The library's parser, held to its word that faulty text is a <see cref="YamlException"/>: at some unclosed brackets
/// its scanner (18.1.0) throws an <see cref="InvalidOperationException"/> instead, found by a test that garbles plans.
/// </summary>
internal sealed class CarefulParser(TextReader text) : IParser
{
    private readonly Parser parser = new(text);

    /// <inheritdoc/>
    public ParsingEvent? Current => parser.Current;

    /// <inheritdoc/>
    public bool MoveNext()
    {
        try
        {
            return parser.MoveNext();
        }
        catch (InvalidOperationException)
        {
            var at = parser.Current?.End ?? Mark.Empty;
            throw new YamlException(at, at, "a bracket or brace may not be closed");
        }
    }
}
