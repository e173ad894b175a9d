namespace RackSide.Logbook;

/// <summary>What erasing a lifter did beside the logbook.</summary>
/// <param name="Rewritten">How many backups held something of the lifter's and were written anew without it.</param>
/// <param name="Deleted">Files that could not be read and were deleted, by name.</param>
public sealed record EraseReport(int Rewritten, IReadOnlyList<string> Deleted);
