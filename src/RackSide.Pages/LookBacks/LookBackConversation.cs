using RackSide.Training.Exercises;
using RackSide.Training.Summary;

namespace RackSide.Pages.LookBacks;

/// <summary>
/// Looks back at each exercise that was done: a list of them, the newest first, and a page for each. Digits on the page
/// choose what its chart shows.
/// </summary>
/// <param name="exercises">What was done, the newest first.</param>
/// <param name="read">Reads what was done of one; called when its page is opened.</param>
public sealed class LookBackConversation(IReadOnlyList<Exercise> exercises, Func<Exercise, ExerciseCourse> read) : StillConversation
{
    // One digit a line, and the ninth leads on to those done longer ago.
    private const int OnAPage = 8;

    private ExerciseCourse? open;
    private CourseOf what;
    private int from;
    private int chosen;
    private int movedOn;
    private int unseen;
    private bool left;

    /// <inheritdoc/>
    public override bool Ended => left;

    private IReadOnlyList<Exercise> Shown => [.. exercises.Skip(from).Take(OnAPage)];

    private bool HasMore => exercises.Count > OnAPage;

    private int Count => Shown.Count + (HasMore ? 1 : 0);

    /// <inheritdoc/>
    protected override Page Draw(PageSize size, string? said) => open is { } course ? DrawCourse(course, size, said)
        : exercises.Count == 0 ? (new TextPage("LOOK BACK", ["Nothing was done yet."]) with { Hints = [new("ENTER", "back")], Said = said }).Draw(size)
        : new ListPage("LOOK BACK", [.. Shown.Select(e => new ListLine(e.Name)), .. HasMore ? [new ListLine("others, done longer ago")] : Array.Empty<ListLine>()], chosen)
        {
            Hints = [new("ENTER", "look at it"), new($"1-{Count}", "at once"), new("+ -", "up, down"), new("/", "back"), new("!", "stop signs")],
            Said = said,
        }.Draw(size);

    /// <inheritdoc/>
    protected override string? Answer(KeyPress key) => open is null ? OnList(key) : OnCourse(key);

    private Page DrawCourse(ExerciseCourse course, PageSize size, string? said)
    {
        var page = new LookBackPage(course, what)
        {
            MovedOn = movedOn,
            Place = course.Earlier + course.Done.Count == 1 ? "one session" : $"{course.Earlier + course.Done.Count} sessions",
            Hints = [new("ENTER", "back"), new("1", course.Loaded ? "load" : "best"), new("2", "each week"), .. HasMaximum(course) ? [new KeyHint("3", "one rep")] : Array.Empty<KeyHint>(), new("!", "stop signs")],
            Said = said,
        };
        unseen = page.Unseen(size);
        return page.Draw(size);
    }

    private string? OnList(KeyPress key)
    {
        if (exercises.Count == 0 || IsLeave(key))
        {
            left = true;
            return null;
        }

        var line = key.IsAccept() ? chosen : ListPage.Move(key, chosen, Count);
        chosen = line ?? chosen;
        if (key.IsAccept() || (line is not null && key.Digit() is not null))
        {
            Take();
        }

        return line is null ? Notice.DeadKey : null;
    }

    private void Take()
    {
        if (chosen == Shown.Count)
        {
            (from, chosen) = (from + OnAPage < exercises.Count ? from + OnAPage : 0, 0);
        }
        else
        {
            (open, what, movedOn) = (read(Shown[chosen]), CourseOf.Load, 0);
        }
    }

    private string? OnCourse(KeyPress key)
    {
        if (IsLeave(key) || key.IsAccept())
        {
            open = null;
            return null;
        }

        if (key.Digit() is 1 or 2 || (key.Digit() == 3 && HasMaximum(open!)))
        {
            what = (CourseOf)(key.Digit()!.Value - 1);
            return null;
        }

        return Move(key);
    }

    // Minus and down read on, plus and up go back, as on every page that is read.
    private string? Move(KeyPress key)
    {
        var step = key.IsMore() || key.IsLineUp() ? -1 : key.IsFewer() || key.Code == KeyCode.Down ? 1 : 0;
        movedOn = Math.Clamp(Math.Min(movedOn, unseen) + step, 0, unseen);
        return step == 0 ? Notice.DeadKey : null;
    }

    private static bool HasMaximum(ExerciseCourse course) => course.Points(CourseOf.Maximum).Count > 0;

    private static bool IsLeave(KeyPress key) => key.IsBack() || key.Digit() == 0 || KeyTable.VerbOf(key) is Verb.Leave or Verb.LookBack;
}
