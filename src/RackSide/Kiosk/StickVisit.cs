using NodaTime;
using RackSide.Commands;
using RackSide.Logbook;
using RackSide.Pages;
using RackSide.Pages.Lifters;

namespace RackSide.Kiosk;

/// <summary>
/// The pages about the memory stick: backup, restore, and giving it back. What writes runs beside the screen, because a
/// stick may take its time. After a restore the program must begin anew.
/// </summary>
internal sealed class StickVisit : IConversation
{
    private const string Title = "MEMORY STICK";
    private const int MostShown = 8;
    private static readonly Duration Patience = Duration.FromSeconds(20);

    private readonly Gym gym;
    private readonly Stick stick;
    private IConversation inner;
    private Action<int> take;
    private Task<string>? work;
    private bool shownThere;
    private Instant? releasedAt;
    private Action? wake;

    /// <summary>Begins with the menu.</summary>
    public StickVisit(Gym gym, Stick stick)
    {
        (this.gym, this.stick) = (gym, stick);
        (inner, take) = Menu("");
    }

    /// <summary>Whether another logbook lies in the place of this one, which is closed now.</summary>
    public bool Restored { get; private set; }

    /// <inheritdoc/>
    public bool Ended { get; private set; }

    /// <inheritdoc/>
    public Action? Wake
    {
        get => wake;
        set => inner.Wake = wake = value;
    }

    /// <inheritdoc/>
    public Page Draw(PageSize size, Instant now) => work is null
        ? inner.Draw(size, now)
        : new TextPage(Title, ["Writing; leave the stick where it is ..."]).Draw(size);

    /// <inheritdoc/>
    public Bell Press(KeyPress key, Instant now)
    {
        if (work is not null)
        {
            return Bell.None;
        }

        var bell = inner.Press(key, now);
        if (inner is ChoiceConversation { Chosen: { } line })
        {
            take(line);
        }

        return bell;
    }

    /// <inheritdoc/>
    public Bell Tick(Instant now)
    {
        if (work is { IsCompleted: true } done)
        {
            work = null;
            Show(Menu(done.Result));
        }
        else if (releasedAt is not null)
        {
            AwaitRelease(now);
        }
        else if (work is null && shownThere != stick.IsThere)
        {
            Show(Menu(""));
        }

        return inner.Tick(now);
    }

    private (IConversation, Action<int>) Menu(string told)
    {
        shownThere = stick.IsThere;
        if (!shownThere)
        {
            var empty = told.Length > 0 ? told : "Plug a memory stick in (FAT, exFAT or ext4); it is found by itself.";
            return (new ChoiceConversation(Title, [empty], ["back"]), _ => Ended = true);
        }

        var found = stick.Backups.Count == 0 ? "No backup is on it yet." : $"The newest backup on it: {stick.Backups[0].Name}.";
        List<(string Text, Action Do)> lines = [("back up to it", BackUp)];
        if (stick.Backups.Count > 0)
        {
            lines.Add(("restore from it", () => Show(Which())));
        }

        if (stick.CanBeReleased)
        {
            lines.Add(("make it safe to pull", Release));
        }

        lines.Add(("back", () => Ended = true));
        return (new ChoiceConversation(Title, [told.Length > 0 ? told : found], [.. lines.Select(l => l.Text)]), line => lines[line].Do());
    }

    private void BackUp() => Work(() => stick.BackUp(gym));

    private (IConversation, Action<int>) Which()
    {
        var files = stick.Backups.Take(MostShown).ToList();
        return (
            new ChoiceConversation($"{Title}  restore", ["Which backup? The newest comes first."], [.. files.Select(f => f.Name), "back"]),
            line => Show(line < files.Count ? Confirm(files[line]) : Menu("")));
    }

    private (IConversation, Action<int>) Confirm(FileInfo file)
    {
        try
        {
            var backup = LogbookSnapshot.Of(file);
            var rules = new RulesInBackup(backup, gym.Folders);
            string[] above = [.. RestoreText.Lines(file.Name, backup, gym.Snapshot()), "The logbook of now is kept beside it.", .. Told(rules)];
            string[] choices = ["Put it in the logbook's place", .. Offers(rules) ? ["Put it and its gym.yaml in place"] : Array.Empty<string>(), "back, change nothing"];
            return (
                new ChoiceConversation($"{Title}  restore", [string.Join(' ', above)], choices, at: choices.Length - 1),
                line => Answer(line < choices.Length - 1 ? backup : null, line == 1 ? rules : null));
        }
        catch (Exception e) when (e is LogbookUnreadableException or IOException or UnauthorizedAccessException)
        {
            return Menu(e.Message);
        }
    }

    // What is on a stick is never run, so house rules that name a command of their own are not taken from one.
    private static bool Offers(RulesInBackup rules) => rules is { Differs: true, OtherCommand: null };

    private static string[] Told(RulesInBackup rules) => !rules.Differs ? []
        : Offers(rules) ? ["Its gym.yaml is another than the one here."]
        : ["Its gym.yaml names a command to run, so it is not taken from a stick: rackside restore at a login does."];

    private void Answer(LogbookSnapshot? backup, RulesInBackup? rules)
    {
        if (backup is null)
        {
            Show(Menu("Nothing was changed."));
            return;
        }

        try
        {
            new Backups(gym.BackupFolder).KeepAside(gym.Snapshot()!, "before-restore", gym.Today);
            rules?.PutInPlace();
            ((LiteLogbook)gym.Logbook).ReplaceBy(backup);
            Restored = Ended = true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            Show(Menu($"{e.Message.TrimEnd('.')}. The logbook was not changed."));
        }
    }

    private void Release()
    {
        stick.Release();
        releasedAt = gym.Clock.GetCurrentInstant();
        Show((new ChoiceConversation(Title, ["Wait ..."], ["back"]), _ => Ended = true));
    }

    private void AwaitRelease(Instant now)
    {
        if (!stick.IsThere)
        {
            releasedAt = null;
            Show(Menu("The stick may be pulled."));
        }
        else if (now - releasedAt > Patience)
        {
            releasedAt = null;
            Show(Menu("It could not be given back; all that was written to it is on it, so pull it when its light is still."));
        }
    }

    private void Work(Func<string> what)
    {
        work = Task.Run(() => Told(what));
        work.ContinueWith(_ => wake?.Invoke(), TaskScheduler.Default);
    }

    private static string Told(Func<string> what)
    {
        try
        {
            return what();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return $"{e.Message.TrimEnd('.')}. Nothing was changed.";
        }
    }

    private void Show((IConversation Page, Action<int> Take) next)
    {
        (inner, take) = next;
        inner.Wake = wake;
    }
}
