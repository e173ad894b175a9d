using BenchmarkDotNet.Attributes;
using RackSide.Pages;

namespace RackSide.Benchmarks;

/// <summary>What a tick costs before anything is painted: a full page of cells, and the text of one.</summary>
[MemoryDiagnoser]
public class PageDrawing
{
    private Page page = null!;

    [Params("50x15", "80x24", "120x40")]
    public string Size { get; set; } = "80x24";

    [GlobalSetup]
    public void Prepare() => page = Draw();

    [Benchmark]
    public Page Draw()
    {
        var sides = Size.Split('x');
        var canvas = new Canvas(new PageSize(int.Parse(sides[0], null), int.Parse(sides[1], null)));
        Frame.Header(canvas, "STRENGTH DAY  Wed 25 Nov", "squat, 3 of 5 done");
        for (var row = Frame.Top(canvas.Size); row <= Frame.Bottom(canvas.Size); row++)
        {
            canvas.Fill(1, row, canvas.Size.Columns / 2, '█', Look.Now);
            canvas.WriteRight(canvas.Size.Columns - 1, row, "67.5 kg x 5", Look.Next);
        }

        Frame.Keys(canvas, new KeyHint("ENTER", "did 5"), new KeyHint("0-9", "type reps"), new KeyHint("-", "one fewer"),
            new KeyHint("*", "other weight"), new KeyHint("/", "menu"), new KeyHint(".", "undo: set 2, 5 reps"));
        return canvas.Done();
    }

    [Benchmark]
    public string Text() => page.Text;
}
