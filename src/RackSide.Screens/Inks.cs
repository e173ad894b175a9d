using System.Text;
using RackSide.Pages;
using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace RackSide.Screens;

/// <summary>
/// How each look is drawn: as the driver's attribute, kept beside the glyph, and as the codes sent for it. Plain means the
/// terminal's own two colours, so that nothing forces black on a light background.
/// </summary>
/// <remarks>
/// The codes begin with a full reset and name only what is on. Resetting colours one by one (39, 49) would put colour
/// codes into a stream that must have none under NO_COLOR. The hues are the palette's bright yellow and bright cyan (93,
/// 96), which every palette keeps apart, and for whole blocks of discs the bright hues of their standard; they stay 16-colour codes on a terminal that could do more.
/// </remarks>
internal sealed class Inks
{
    private const Look Every = Look.Bold | Look.Reverse | Look.Now | Look.Next | Look.DiscRed | Look.DiscBlue | Look.DiscYellow | Look.DiscGreen;
    private readonly Attribute[] attributes = new Attribute[(int)Every + 1];
    private readonly string[] codes = new string[(int)Every + 1];

    public Inks(bool colour)
    {
        for (var i = 0; i < attributes.Length; i++)
        {
            var look = (Look)i;
            attributes[i] = AttributeFor(look, colour);
            codes[i] = CodeFor(look, colour);
        }
    }

    public Attribute Attribute(Look look) => attributes[(int)(look & Every)];

    public string Code(Look look) => codes[(int)(look & Every)];

    private static Attribute AttributeFor(Look look, bool colour)
    {
        var style = (Has(look, Look.Bold) ? TextStyle.Bold : 0) | (Has(look, Look.Reverse) ? TextStyle.Reverse : 0);
        var foreground = !colour ? Color.None
            : Has(look, Look.Now) ? new Color(ColorName16.BrightYellow)
            : Has(look, Look.Next) ? new Color(ColorName16.BrightCyan)
            : Has(look, Look.DiscRed) ? new Color(ColorName16.BrightRed)
            : Has(look, Look.DiscBlue) ? new Color(ColorName16.BrightBlue)
            : Has(look, Look.DiscYellow) ? new Color(ColorName16.BrightYellow)
            : Has(look, Look.DiscGreen) ? new Color(ColorName16.BrightGreen)
            : Color.None;
        return new Attribute(foreground, Color.None, style);
    }

    private static string CodeFor(Look look, bool colour)
    {
        var code = new StringBuilder("\e[0");
        code.Append(Has(look, Look.Bold) ? ";1" : "").Append(Has(look, Look.Reverse) ? ";7" : "");
        if (colour)
        {
            code.Append(Hue(look));
        }

        return code.Append('m').ToString();
    }

    private static string Hue(Look look) => look switch
    {
        _ when Has(look, Look.Now) => ";93",
        _ when Has(look, Look.Next) => ";96",
        _ when Has(look, Look.DiscRed) => ";91",
        _ when Has(look, Look.DiscBlue) => ";94",
        _ when Has(look, Look.DiscYellow) => ";93",
        _ when Has(look, Look.DiscGreen) => ";92",
        _ => "",
    };

    private static bool Has(Look look, Look part) => (look & part) != 0;
}
