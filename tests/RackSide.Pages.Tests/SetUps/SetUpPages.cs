using NodaTime;
using RackSide.Pages.SetUps;
using RackSide.Training.Measures;

namespace RackSide.Pages.Tests.SetUps;

/// <summary>Every page of the set-up, by the keys that lead to it.</summary>
public static class SetUpPages
{
    public const string KitFile = "~/.config/rackside/gym.yaml";

    public static readonly Instant Now = Instant.FromUtc(2026, 11, 25, 18, 0);

    public static readonly Dictionary<string, string> ByKeys = new()
    {
        ["setup-1-welcome"] = "",
        ["setup-2-name"] = "ENTER Ottoline",
        ["setup-3-unit"] = "ENTER ENTER",
        ["setup-4-bar"] = "ENTER ENTER ENTER 2",
        ["setup-5-plates"] = "ENTER ENTER ENTER ENTER * 2",
        ["setup-6-other-kit"] = "ENTER ENTER ENTER ENTER ENTER 6",
        ["setup-7-training-days"] = "ENTER ENTER ENTER ENTER ENTER ENTER 1",
        ["setup-7-training-days-refused"] = "ENTER ENTER ENTER ENTER ENTER ENTER 1 2 ENTER",
        ["setup-8-safety"] = "ENTER ENTER ENTER ENTER ENTER ENTER ENTER 4",
        ["setup-8-safety-advice-1"] = "ENTER ENTER ENTER ENTER ENTER ENTER ENTER 1 ENTER",
        ["setup-8-safety-advice-2"] = "ENTER ENTER ENTER ENTER ENTER ENTER ENTER 2 ENTER",
        ["setup-8-safety-advice-3"] = "ENTER ENTER ENTER ENTER ENTER ENTER ENTER 3 ENTER",
        ["setup-8-safety-advice-4"] = "ENTER ENTER ENTER ENTER ENTER ENTER ENTER 4 ENTER",
        ["setup-8-safety-advice-5"] = "ENTER ENTER ENTER ENTER ENTER ENTER ENTER 5 ENTER",
        ["setup-9-done"] = "ENTER ENTER ENTER ENTER ENTER ENTER ENTER ENTER",
        ["setup-9-done-floor-work"] = "ENTER Ottoline ENTER ENTER ENTER 2 ENTER 6 ENTER ENTER 4 2 ENTER ENTER ENTER",
        ["stop-signs"] = "!",
    };

    public static readonly (int Columns, int Rows)[] Sizes = [(50, 15), (80, 24), (120, 40), (30, 8)];

    public static TheoryData<string, int, int> AtAllSizes => All(Sizes);

    public static TheoryData<string, int, int> AtWorkingSizes => All(Sizes[..3]);

    public static SetUpConversation After(string keys, MassUnit guess = MassUnit.Kilogram)
    {
        var conversation = new SetUpConversation(guess, KitFile);
        conversation.Press(keys, Now);
        return conversation;
    }

    private static TheoryData<string, int, int> All((int Columns, int Rows)[] sizes)
    {
        var data = new TheoryData<string, int, int>();
        foreach (var name in ByKeys.Keys)
        {
            foreach (var (columns, rows) in sizes)
            {
                data.Add(name, columns, rows);
            }
        }

        return data;
    }
}
