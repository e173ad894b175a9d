namespace RackSide.Simulation;
public class SimulationTests
{
    [Fact]
    public void Probe()
    {
        var w = System.Diagnostics.Stopwatch.StartNew();
        var o = new System.Text.StringBuilder();
        for (var seed = 0; seed < 12; seed++)
        {
            var y = new SimulatedYear(seed).Live(52);
            o.AppendLine($"seed {seed} {y.Unit} kg {y.Body.Kilograms:0} sessions {y.History.Sessions.Count} {w.ElapsedMilliseconds} ms");
            foreach (var id in new[] { "squat", "row", "horizontal-press", "vertical-pull", "overhead-press", "curl", "core" })
            {
                var ps = y.History.Sessions.SelectMany(s => s.Prescriptions.Where(p => p.Slot == id && s.Head.Kind == RackSide.Training.Plans.DayKind.Strength)).ToList();
                var best = y.Body.Best.GetValueOrDefault(ps[0].Motion);
                o.AppendLine($"   {id} {ps[0].Exercise} best {best:0}: {string.Join(" ", ps.Select(p => $"{p.Load?.Number}x{p.Targets.Min()}{(p.Why.Code == "third-miss" ? "!" : p.Why.Code=="lay-off"?"~": "")}"))}");
            }
        }
        File.WriteAllText("/tmp/wt/probe.txt", o.ToString());
    }
}
