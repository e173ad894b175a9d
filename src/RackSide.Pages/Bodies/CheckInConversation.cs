using System.Globalization;
using NodaTime;
using RackSide.Training.Body;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Schedule;

namespace RackSide.Pages.Bodies;

/// <summary>
/// A check-in, one question after the other: body weight, sleep, food, water, soreness. ENTER passes over what is not told, so
/// five presses tell nothing; <c>/</c> goes back a question, and out at the first.
/// </summary>
/// <param name="on">The morning it is of.</param>
/// <param name="unit">The unit the lifter weighs in.</param>
/// <param name="doubt">Why a weight is asked back; null where it is not.</param>
public sealed class CheckInConversation(LocalDate on, MassUnit unit, Func<Mass, string?> doubt) : StillConversation
{
    private const int Questions = 5;
    private const string Weighing = "Same scales, same time of day. ENTER passes over it.";

    private static readonly string[] SoreWords = ["not sore", "a little sore", "very sore", "pass over it"];

    private int question;
    private int chosen = SoreWords.Length - 1;
    private string typed = "";
    private string? asked;

    /// <summary>The morning it is of.</summary>
    public LocalDate On => on;

    /// <summary>What was told so far.</summary>
    public CheckInAnswers Answers { get; private set; } = new();

    /// <summary>Whether it was left before its end: nothing of it is kept.</summary>
    public bool Left { get; private set; }

    /// <inheritdoc/>
    public override bool Ended => Left || question == Questions;

    /// <inheritdoc/>
    protected override Page Draw(PageSize size, string? said) => ((question < Questions - 1 ? (BodyPage)Entry() : List()) with { Said = said }).Draw(size);

    /// <inheritdoc/>
    protected override string? Answer(KeyPress key) => key.IsBack() ? Back() : question < Questions - 1 ? OnEntry(key) : OnList(key);

    private string? Back()
    {
        Left = question == 0;
        question = Math.Max(0, question - 1);
        (typed, asked) = (Told(), null);
        return null;
    }

    // What was told already stands in the box again.
    private string Told() => question switch
    {
        0 => Answers.Weight?.Number ?? "",
        1 => Answers.Slept is { } slept ? Number((decimal)slept.TotalHours) : "",
        2 => Answers.Kilocalories is { } food ? Number(food) : "",
        3 => Answers.Millilitres is { } water ? Number(water / 1000m) : "",
        _ => "",
    };

    private string? OnEntry(KeyPress key)
    {
        if (key.IsAccept())
        {
            return Take();
        }

        var next = EntryPage.TypeNumber(typed, key) ?? typed;
        (asked, var before, typed) = (next == typed ? asked : null, typed, next);
        return next == before ? Notice.DeadKey : null;
    }

    private string? Take()
    {
        var refusal = question switch
        {
            0 => TakeWeight(),
            1 => Taken(CheckInEntry.Slept(typed), slept => Answers with { Slept = slept }, CheckInEntry.SleepRefusal),
            2 => Taken(CheckInEntry.Kilocalories(typed), food => Answers with { Kilocalories = food }, CheckInEntry.FoodRefusal),
            _ => Taken(CheckInEntry.Millilitres(typed), water => Answers with { Millilitres = water }, CheckInEntry.WaterRefusal),
        };
        if (refusal is null && asked is null)
        {
            question++;
            typed = Told();
        }

        return refusal;
    }

    private string? TakeWeight()
    {
        var mass = typed.Length == 0 ? null : BodyWeightEntry.Read(typed, unit);
        var again = asked is not null;
        asked = !again && mass is { } weight ? doubt(weight) : null;
        return asked is null ? Taken(mass, told => Answers with { Weight = told }, BodyWeightEntry.Refusal(unit)) : null;
    }

    private string? Taken<T>(T? read, Func<T?, CheckInAnswers> told, string refusal)
        where T : struct
    {
        if (typed.Length > 0 && read is null)
        {
            return refusal;
        }

        Answers = told(read);
        return null;
    }

    private string? OnList(KeyPress key)
    {
        var line = key.IsAccept() ? chosen : ListPage.Move(key, chosen, SoreWords.Length);
        chosen = line ?? chosen;
        if (key.IsAccept() || (line is not null && key.Digit() is not null))
        {
            Answers = Answers with { Sore = chosen < (int)Soreness.Much + 1 ? (Soreness)chosen : null };
            question++;
        }

        return line is null ? Notice.DeadKey : null;
    }

    private EntryPage Entry()
    {
        var (text, room, below) = question switch
        {
            0 => ("Body weight this morning?", unit.Symbol(), asked is null ? Weighing : $"{asked}. ENTER again keeps it."),
            1 => ("Slept last night, about?", "hours", "7.5 is half past seven hours."),
            2 => ("Eaten yesterday, about?", "kcal", "A rough number will do."),
            _ => ("Drunk yesterday, about?", "litres", WaterAdvice.Caution),
        };
        return new EntryPage(Title, text, typed, EntryPage.NumberRoom)
        {
            Place = $"{question + 1} of {Questions}",
            Unit = room,
            Below = below,
            Hints = [new("ENTER", typed.Length == 0 ? "pass over" : asked is null ? "go on" : "it is right"), new("0-9 .", "type"), new("/", question == 0 ? "leave" : "back"), new("!", "stop signs")],
        };
    }

    private ListPage List() => new ListPage(Title, [.. SoreWords.Select(w => new ListLine(w))], chosen)
    {
        Place = $"{Questions} of {Questions}",
        Above = ["How sore is the body this morning?"],
        Hints = [new("ENTER", "choose"), new("1-4", "at once"), new("/", "back"), new("!", "stop signs")],
    };

    private string Title => $"CHECK-IN  {on.Short()}";

    private static string Number(decimal number) => number.ToString("0.##", CultureInfo.InvariantCulture);
}
