using CsCheck;
using NodaTime;
using RackSide.Pages.Rack;
using RackSide.Training.Sessions;
using TheRack = RackSide.Tollbooth.Rack;

namespace RackSide.Pages.Tests.Rack;

public class AnyKeysTests
{
    private static readonly KeyPress[] Known = [.. KeyTable.Rows.SelectMany(r => r.Presses), KeyPress.Of('#'), new(KeyCode.Left)];

    [Fact]
    public void Whatever_is_pressed_whenever_the_page_can_be_drawn_at_any_size_in_safe_glyphs() =>
        Gen.Select(Gen.Bool, Gen.Select(Gen.Int[0, Known.Length - 1], Gen.Double[0.05, 60], Gen.Int[1, 130], Gen.Int[1, 45]).Array[1, 60])
            .Sample((strength, presses) =>
            {
                var rack = strength ? TheRack.Strength() : TheRack.Skills();
                foreach (var (key, wait, columns, rows) in presses)
                {
                    rack.Wait(wait).Send(KeyTable.EventOf(Known[key], rack.Now) ?? new OddKey(rack.Now));
                    var week = rack.Phase is Finishing or Ended ? RackPages.Week(rack) : null;
                    var page = SessionPages.Draw(rack.Session, week, new PageSize(columns, rows), rack.Now + Duration.FromMilliseconds(50));
                    SafeGlyphs.Unsafe(page).Should().BeEmpty();
                }
            }, iter: 150, seed: "0000RackSide3");

    [Fact]
    public void A_key_means_one_thing() =>
        KeyTable.Rows.SelectMany(r => r.Presses).Should().OnlyHaveUniqueItems();
}
