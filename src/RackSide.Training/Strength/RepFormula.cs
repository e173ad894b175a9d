namespace RackSide.Training.Strength;

/// <summary>
/// The published ways to estimate a one-repetition maximum (1RM) from reps to near failure. Each gives the number the load
/// is multiplied by, for 2 to 12 reps. Formulas were seen in second-hand copies, publications are cited from memory. The
/// ranges are common practice, drawn from the trials that LeSuer et al., 1997, JSCR 11(4):211-213 (from memory) and
/// Reynolds et al., 2006, JSCR 20(3):584-592 report: best at few reps, none to be trusted above 10.
/// </summary>
public enum RepFormula
{
    /// <summary>
    /// 1 + r/30. Epley B, 1985, Poundage chart, Lincoln NE. Some texts print 0.0333 or 0.033 for 1/30; this is 1/30. Serves 2 to 10 reps.
    /// </summary>
    Epley,

    /// <summary>36 / (37 - r). Brzycki M, 1993, Strength testing: predicting a one-rep max from reps-to-fatigue, JOPERD 64(1):88-90. Serves 2 to 5 reps; divides by zero at 37.</summary>
    Brzycki,

    /// <summary>100 / (101.3 - 2.67123 r). Lander J, 1985, Maximum based on reps, NSCA Journal 6(6):60-61. Serves 2 to 5 reps.</summary>
    Lander,

    /// <summary>r^0.10. Lombardi VP, 1989, Beginning Weight Training, Brown, Dubuque. Low up to 10 reps, tame above.</summary>
    Lombardi,

    /// <summary>
    /// 100 / (52.2 + 41.9 e^(-0.055 r)). Mayhew, Ball, Arnold and Bowen, 1992, J Appl Sport Sci Res 6(4):200-206; found
    /// with the bench press. Serves 6 to 12 reps; high below.
    /// </summary>
    Mayhew,

    /// <summary>1 + 0.025 r. O'Conner, Simmons and O'Shea, 1989, Weight Training Today, West. The lowest from 6 to 10 reps.</summary>
    OConner,

    /// <summary>100 / (48.8 + 53.8 e^(-0.075 r)). Wathen D, 1994, Load assignment, in Baechle (ed), NSCA. Serves 2 to 10 reps.</summary>
    Wathen,
}
