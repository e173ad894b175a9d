using System.Text;
using RackSide.Pages;
using RackSide.Pages.Settings;
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
/// 96), which every palette keeps apart, and for whole blocks of discs the bright hues of their standard; they stay 16-colour
/// codes on a terminal that could do more. High contrast is bright white on black (97, 40): 7 to 1 and more on every palette,
/// where the terminal's own colours may be anything.
/// </remarks>
internal sealed class Inks
{
    private const Look Every = Look.Bold | Look.Reverse | Look.Now | Look.Next | Look.DiscRed | Look.DiscBlue | Look.DiscYellow | Look.DiscGreen;
    private readonly Attribute[] attributes = new Attribute[(int)Every + 1];
    private readonly string[] codes = new string[(int)Every + 1];

    public Inks(Tint tint)
    {
        for (var i = 0; i < attributes.Length; i++)
        {
            var look = (Look)i;
            attributes[i] = AttributeFor(look, tint);
            codes[i] = CodeFor(look, tint);
        }
    }

    public Attribute Attribute(Look look) => attributes[(int)(look & Every)];

    public string Code(Look look) => codes[(int)(look & Every)];

    private static Attribute AttributeFor(Look look, Tint tint)
    {
        var style = (Has(look, Look.Bold) ? TextStyle.Bold : 0) | (Has(look, Look.Reverse) ? TextStyle.Reverse : 0);
        return tint is Tint.Contrast
            ? new Attribute(new Color(ColorName16.White), new Color(ColorName16.Black), style)
            : new Attribute(tint is Tint.Hues ? Hue(look) : Color.None, Color.None, style);
    }

    private static Color Hue(Look look) => Has(look, Look.Now) ? new Color(ColorName16.BrightYellow)
        : Has(look, Look.Next) ? new Color(ColorName16.BrightCyan)
        : Has(look, Look.DiscRed) ? new Color(ColorName16.BrightRed)
        : Has(look, Look.DiscBlue) ? new Color(ColorName16.BrightBlue)
        : Has(look, Look.DiscYellow) ? new Color(ColorName16.BrightYellow)
        : Has(look, Look.DiscGreen) ? new Color(ColorName16.BrightGreen)
        : Color.None;

    private static string CodeFor(Look look, Tint tint)
    {
        var code = new StringBuilder("\e[0");
        // Bold black is drawn as grey by terminals that make bold colours bright.
        var bold = Has(look, Look.Bold) && !(tint is Tint.Contrast && Has(look, Look.Reverse));
        code.Append(bold ? ";1" : "").Append(Has(look, Look.Reverse) ? ";7" : "");
        code.Append(tint switch
        {
            Tint.Contrast => ";97;40",
            Tint.Hues => HueCode(look),
            _ => "",
        });
        return code.Append('m').ToString();
    }

    private static string HueCode(Look look) => look switch
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
