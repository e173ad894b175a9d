namespace RackSide.Pages.Settings;

/// <summary>What a gym has settled about its screen.</summary>
public sealed record ScreenSettings
{
    /// <summary>What colours it uses.</summary>
    public Tint Tint { get; init; }

    /// <summary>Whether only printable ASCII is drawn; null goes by the locale.</summary>
    public bool? SevenBit { get; init; }

    /// <summary>Whether only the large digits and the keys are drawn.</summary>
    public bool Big { get; init; }

    /// <summary>Whether the bar flashes at the end of a rest.</summary>
    public bool Flash { get; init; } = true;

    /// <summary>Which keys mean what.</summary>
    public KeyLayout Keys { get; init; } = KeyLayout.Default;
}

/// <summary>All that the settings page changes.</summary>
/// <param name="Screen">The screen.</param>
/// <param name="Sound">Whether the bell may ring.</param>
public sealed record RackSettings(ScreenSettings Screen, bool Sound);
