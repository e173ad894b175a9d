namespace RackSide.Pages;

/// <summary>What a key means beside the rack. What it does depends on what the session waits for.</summary>
public enum Verb
{
    /// <summary>The obvious next thing.</summary>
    Accept,

    /// <summary>A digit.</summary>
    Digit,

    /// <summary>One more.</summary>
    More,

    /// <summary>One fewer.</summary>
    Fewer,

    /// <summary>The other number, or the cue card.</summary>
    Other,

    /// <summary>The menu, or back from it.</summary>
    Menu,

    /// <summary>The decimal mark, or taking back.</summary>
    Point,

    /// <summary>Taking back, or clearing what is typed.</summary>
    Undo,

    /// <summary>Back to the session.</summary>
    Back,

    /// <summary>Today's plan with what is done of it, and the order of what is not.</summary>
    Today,

    /// <summary>What was done of the exercise in hand, on earlier days and today.</summary>
    LookBack,

    /// <summary>What is still to come.</summary>
    LookAhead,

    /// <summary>The keys.</summary>
    Help,

    /// <summary>When to stop, and what to do then.</summary>
    StopSigns,

    /// <summary>The page from which one leaves.</summary>
    Leave,
}
