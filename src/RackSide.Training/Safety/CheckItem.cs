namespace RackSide.Training.Safety;

/// <summary>Something to do and then confirm.</summary>
/// <param name="Key">The name facts use; lower case with hyphens, never renamed once shipped.</param>
/// <param name="Text">What the lifter reads; at most 60 characters.</param>
public sealed record CheckItem(string Key, string Text);
