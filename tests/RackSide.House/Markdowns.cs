using Markdig;
using Markdig.Extensions.AutoIdentifiers;
using Markdig.Renderers.Html;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace RackSide.House;

/// <summary>The pages of the documents, and where their links lead.</summary>
internal sealed class Markdowns
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder()
        .UseAutoIdentifiers(AutoIdentifierOptions.GitHub).UsePipeTables().Build();

    private readonly IReadOnlyDictionary<string, MarkdownDocument> pages;
    private readonly IReadOnlySet<string> files;

    /// <param name="texts">Each page's text by its place in the tree.</param>
    /// <param name="files">Every file of the tree.</param>
    public Markdowns(IEnumerable<(string File, string Text)> texts, IEnumerable<string> files)
    {
        pages = texts.ToDictionary(page => page.File, page => Markdown.Parse(page.Text, Pipeline));
        this.files = files.SelectMany(Folders).ToHashSet();
    }

    /// <summary>Links within the tree that lead nowhere, one sentence each.</summary>
    public IEnumerable<string> Broken() =>
        from page in pages
        from link in Links(page.Key)
        let trouble = Trouble(link)
        where trouble is not null
        select $"{page.Key}:{link.Line}: {link.Url} {trouble}";

    /// <summary>Pages that nobody finds who begins at <paramref name="start"/> and follows links.</summary>
    public IEnumerable<string> Unreachable(string start)
    {
        var seen = new HashSet<string>();
        var open = new Queue<string>([start]);
        while (open.TryDequeue(out var page))
        {
            foreach (var next in pages.ContainsKey(page) && seen.Add(page) ? Links(page).Select(link => link.File) : [])
            {
                open.Enqueue(next);
            }
        }

        return pages.Keys.Except(seen);
    }

    /// <summary>What the pages lead to or show, by its place in the tree.</summary>
    public IEnumerable<string> Targets() => pages.Keys.SelectMany(Links).Select(link => link.File);

    private string? Trouble(Link link) =>
        !files.Contains(link.File) ? "leads to no file"
        : link.Anchor.Length > 0 && pages.TryGetValue(link.File, out var page) && !Anchors(page).Contains(link.Anchor) ? "leads to no heading"
        : null;

    private IEnumerable<Link> Links(string page) =>
        from inline in pages[page].Descendants<LinkInline>()
        let url = inline.Url ?? ""
        where !url.Contains("://", StringComparison.Ordinal) && !url.StartsWith("mailto:", StringComparison.Ordinal)
        let parts = url.Split('#', 2)
        select new Link(url, inline.Line + 1, Resolved(page, parts[0]), parts.Length > 1 ? parts[1] : "");

    private static string Resolved(string page, string target) => target.Length == 0 ? page : Path.GetRelativePath(
        "/", Path.GetFullPath(Path.Combine("/", Path.GetDirectoryName(page)!, Uri.UnescapeDataString(target)))).TrimEnd('/');

    private static IEnumerable<string> Anchors(MarkdownDocument page) =>
        page.Descendants<HeadingBlock>().Select(heading => heading.GetAttributes().Id ?? "");

    private static IEnumerable<string> Folders(string file) => file.Split('/') is var parts
        ? Enumerable.Range(1, parts.Length).Select(i => string.Join('/', parts.Take(i)))
        : [];

    private sealed record Link(string Url, int Line, string File, string Anchor);
}
