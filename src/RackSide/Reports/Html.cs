using System.Globalization;
using System.Xml.Linq;

namespace RackSide.Reports;

/// <summary>
/// Elements of a page that is HTML and well-formed XML at once, so that every name and number in it is escaped by the
/// framework. An element never closes itself, because a reader of HTML would take that for an opening.
/// </summary>
internal static class Html
{
    /// <summary>An element with attributes and content.</summary>
    public static XElement E(string name, params object?[] content)
    {
        var element = new XElement(name, content);
        if (element.IsEmpty && name is not ("meta" or "link" or "br"))
        {
            element.Add("");
        }

        return element;
    }

    /// <summary>An attribute; numbers are written the same under every culture.</summary>
    public static XAttribute A(string name, object value) => new(name, Convert.ToString(value, CultureInfo.InvariantCulture)!);

    /// <summary>The whole page with its own styles; it fetches nothing and runs nothing.</summary>
    /// <param name="title">What the window is called.</param>
    /// <param name="body">What it shows.</param>
    public static string Page(string title, params object?[] body) => "<!DOCTYPE html>\n" + E(
        "html",
        A("lang", "en"),
        E("head", E("meta", A("charset", "utf-8")), E("meta", A("name", "viewport"), A("content", "width=device-width")), E("title", title), E("style", Styles.Text)),
        E("body", E("main", body))) + "\n";
}
