using System.Globalization;
using RackSide.Logbook.Writer;

// A writer in a process of its own, for the tests that kill it. It tells each set on standard output once it was
// acknowledged, "<session> <set>" as counts. Arguments:
//   FOLDER SETS          sessions of so many sets, closing and opening in between, until it is killed
//   FOLDER WORK CALL     one piece of work, killed at that call to the disk; 0 lets it finish and tells "calls <count>"
if (args.Length == 2)
{
    Tasks.WriteOn(args[0], int.Parse(args[1], CultureInfo.InvariantCulture));
}

var calls = new Calls(int.Parse(args[2], CultureInfo.InvariantCulture));
Tasks.Do(args[1], args[0], calls);
Console.WriteLine($"calls {calls.Count}");
