using NodaTime;

namespace RackSide.Pages.Rack;

/// <summary>What a session left open is answered with.</summary>
public enum ResumeChoice
{
    /// <summary>Go on with it.</summary>
    GoOn,

    /// <summary>Close it as it is: what is not done is left out.</summary>
    Close,

    /// <summary>Leave the program; it stays open.</summary>
    Leave,
}

/// <summary>A session was left open: one key goes on at the same set.</summary>
/// <param name="title">The day: <c>STRENGTH DAY  Wed 25 Nov</c>.</param>
/// <param name="sentence">Where it stands: "Squat, working set 3 of 5 is next; stopped at 18:41."</param>
public sealed class ResumeConversation(string title, string sentence) : IConversation
{
    private readonly Aside aside = new();
    private Notice notice;

    /// <summary>The answer; null until there is one.</summary>
    public ResumeChoice? Choice { get; private set; }

    /// <inheritdoc/>
    public Action? Wake { get; set; }

    /// <inheritdoc/>
    public bool Ended => Choice is not null;

    /// <inheritdoc/>
    public Page Draw(PageSize size, Instant now) => aside.Draw(size) ?? new TextPage(title, ["This session was left open.", sentence, "ENTER goes on there.", "5 closes it as it is: what is not done is left out, which is no miss."])
    {
        Hints = [new("ENTER", "go on"), new("5", "close it as it is"), new("/", "leave")],
        Said = notice.At(now),
    }.Draw(size);

    /// <inheritdoc/>
    public Bell Press(KeyPress key, Instant now)
    {
        if (aside.Takes(key))
        {
            return Bell.None;
        }

        Choice = (KeyTable.VerbOf(key), key.Digit()) switch
        {
            (Verb.Accept, _) => ResumeChoice.GoOn,
            (_, 5) => ResumeChoice.Close,
            (Verb.Menu or Verb.Leave, _) => ResumeChoice.Leave,
            _ => null,
        };
        notice = Choice is null ? Notice.Say(Notice.DeadKey, now) : default;
        return Bell.None;
    }

    /// <summary>Nothing passes with time here but a sentence, and that goes by itself.</summary>
    public Bell Tick(Instant now) => Bell.None;
}
