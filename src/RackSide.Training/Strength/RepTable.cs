namespace RackSide.Training.Strength;

/// <summary>
/// The printed tables of what share of a one-repetition maximum can be lifted how often, one set, to failure. They
/// differ at 12 reps, which is why each has its name. Both were seen in copies only.
/// </summary>
public enum RepTable
{
    /// <summary>
    /// The handbook's: Essentials of Strength Training and Conditioning, 4th ed., ch. 17. Rows 1 to 10 second-hand, several
    /// copies agree; rows 11, 12 and 15 from memory.
    /// </summary>
    Handbook,

    /// <summary>
    /// The one-page training load chart of the same association (NSCA), second-hand: 12 reps at 70 %, not 67 %; up to 10
    /// as in the handbook. It has no row for 11.
    /// </summary>
    OnePageChart,
}
