using System.Globalization;
using NodaTime;
using RackSide.Training.Body;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Pages.Bodies;

/// <summary>What the formulas want to know, a line each; all of it is optional, and all of it can be hidden.</summary>
/// <param name="before">What was told so far.</param>
/// <param name="today">The date.</param>
/// <param name="unit">The unit the lifter weighs in; pounds go with feet and inches.</param>
/// <param name="doubt">Why a height is asked back; null where it is not.</param>
public sealed class ProfileConversation(BodyProfile before, LocalDate today, MassUnit unit, Func<Height, string?> doubt) : StillConversation
{
    private const string Title = "YOUR NUMBERS";
    private const string YearRefusal = "Type the year you were born in, such as 1985.";
    private const string TimeRefusal = "Type a time such as 6.30.";
    private const int Done = 7;

    private static readonly string[] Reasons =
        ["pregnant or nursing", "an eating disorder, now or earlier", "another reason a clinician knows", "no such reason: set targets"];

    private BodyProfile profile = before;
    private int chosen = Done;
    private Open open;
    private string typed = "";
    private string? asked;
    private int reason;
    private string told = "";

    private enum Open
    {
        List,
        Height,
        Born,
        Rises,
        Reason,
        Told,
    }

    /// <summary>What was told, once it is done; null before.</summary>
    public BodyProfile? Profile { get; private set; }

    /// <inheritdoc/>
    public override bool Ended => Profile is not null;

    private LengthUnit Lengths => unit == MassUnit.Kilogram ? LengthUnit.Centimetre : LengthUnit.Inch;

    /// <inheritdoc/>
    protected override Page Draw(PageSize size, string? said) => (open switch
    {
        Open.Height => Entry("How tall are you?", Lengths == LengthUnit.Centimetre ? "cm" : "feet.inches", Lengths == LengthUnit.Centimetre ? "" : "5.10 is 5 ft 10 in."),
        Open.Born => Entry("Which year were you born in?", "", "The formulas want an age; under 18 no targets are set."),
        Open.Rises => Entry("When do you usually get up?", "", "6.30 is half past six. The bedtime follows from it."),
        Open.Reason => (BodyPage)new ListPage(Title, [.. Reasons.Select(r => new ListLine(r))], reason)
        {
            Above = ["Is there a reason for no targets? Which it is is not kept."],
            Hints = [new("ENTER", "choose"), new("1-4", "at once"), new("/", "back"), new("!", "stop signs")],
        },
        Open.Told => new TextPage(Title, [told, BodyCautions.General]) { Hints = [new("ENTER", "go on"), new("!", "stop signs")] },
        _ => List(),
    } with
    { Said = said }).Draw(size);

    /// <inheritdoc/>
    protected override string? Answer(KeyPress key) => open switch
    {
        Open.List => OnList(key),
        Open.Reason => OnReason(key),
        Open.Told => key.IsAccept() || key.IsBack() ? Close() : Notice.DeadKey,
        _ => OnEntry(key),
    };

    private ListPage List() => new(
        Title,
        [
            new("height", Value: profile.Height?.ToString() ?? "not told"),
            new("age", Value: profile.AgeOn(today) is { } years ? $"{years}" : "not told"),
            new("formulas for", Value: profile.Sex switch { FormulaSex.Female => "women", FormulaSex.Male => "men", _ => "not told" }),
            new("your days", Value: Days(profile.Activity)),
            new("up at", Value: profile.Rises?.ToString("H:mm", CultureInfo.InvariantCulture) ?? "not told"),
            new("targets", Value: profile.NoTargets ? "none: a reason was told" : "yes"),
            new("hide all of it", Value: profile.Hidden ? "yes; rackside body --show undoes it" : "no"),
            new("done", Value: " "),
        ],
        chosen)
    {
        Above = ["For the numbers on food and sleep; all of it as you like."],
        Hints = [new("ENTER", "choose, change"), new("1-8", "at once"), new("+ -", "up, down"), new("/", "done"), new("!", "stop signs")],
    };

    private static string Days(DailyActivity activity) => activity switch
    {
        DailyActivity.Light => "light: sitting work",
        DailyActivity.Active => "active: on the feet",
        _ => "vigorous: heavy work",
    };

    private string? OnList(KeyPress key)
    {
        var line = key.IsAccept() ? chosen : key.IsBack() ? Done : ListPage.Move(key, chosen, Done + 1);
        chosen = line ?? chosen;
        if (key.IsAccept() || key.IsBack() || (line is not null && key.Digit() is not null))
        {
            Take();
        }

        return line is null ? Notice.DeadKey : null;
    }

    private void Take()
    {
        (typed, asked) = ("", null);
        open = chosen switch { 0 => Open.Height, 1 => Open.Born, 4 => Open.Rises, 5 => Open.Reason, _ => Open.List };
        profile = chosen switch
        {
            2 => profile with { Sex = profile.Sex switch { null => FormulaSex.Female, FormulaSex.Female => FormulaSex.Male, _ => null } },
            3 => profile with { Activity = (DailyActivity)(((int)profile.Activity + 1) % 3) },
            6 => profile with { Hidden = !profile.Hidden },
            _ => profile,
        };
        Profile = chosen == Done ? profile : null;
    }

    private string? Close()
    {
        open = Open.List;
        return null;
    }

    private string? OnEntry(KeyPress key)
    {
        if (key.IsBack() || (key.IsAccept() && typed.Length == 0))
        {
            return Close();
        }

        if (key.IsAccept())
        {
            return open switch { Open.Height => TakeHeight(), Open.Born => TakeYear(), _ => TakeTime() };
        }

        var next = EntryPage.TypeNumber(typed, key) ?? typed;
        (asked, var had, typed) = (next == typed ? asked : null, typed, next);
        return next == had ? Notice.DeadKey : null;
    }

    private string? TakeHeight()
    {
        if (HeightEntry.Read(typed, Lengths) is not { } height)
        {
            return HeightEntry.Refusal(Lengths);
        }

        asked = asked is null ? doubt(height) : null;
        return asked is null ? Keep(profile with { Height = height }) : null;
    }

    private string? TakeYear() => NumberEntry.Parse(typed) is { } year && decimal.IsInteger(year) && year >= today.Year - 110 && year <= today.Year - 5
        ? Keep(profile with { BornBy = new LocalDate((int)year, 12, 31) })
        : YearRefusal;

    private string? TakeTime() => CheckInEntry.Time(typed) is { } time ? Keep(profile with { Rises = time }) : TimeRefusal;

    private string? Keep(BodyProfile with)
    {
        profile = with;
        return Close();
    }

    private string? OnReason(KeyPress key)
    {
        if (key.IsBack())
        {
            return Close();
        }

        var line = key.IsAccept() ? reason : ListPage.Move(key, reason, Reasons.Length);
        reason = line ?? reason;
        if (key.IsAccept() || (line is not null && key.Digit() is not null))
        {
            var none = reason == Reasons.Length - 1;
            profile = profile with { NoTargets = !none };
            (open, told) = (none ? Open.List : Open.Told, none ? "" : TargetRefusal.Of((NoTargetsFor)reason));
        }

        return line is null ? Notice.DeadKey : null;
    }

    private EntryPage Entry(string question, string room, string below) => new(Title, question, typed, EntryPage.NumberRoom)
    {
        Unit = room,
        Below = asked is null ? below : $"{asked}. ENTER again keeps it.",
        Hints = [new("ENTER", asked is null ? "write it" : "it is right"), new("0-9 .", "type"), new("/", "back"), new("!", "stop signs")],
    };
}
