using RackSide.Training.Plans;

namespace RackSide.Files;

/// <summary>Checks what slots of one group owe each other: they stand together, are two or more, and take the same number of sets.</summary>
internal sealed class GroupCheck(MistakeList mistakes)
{
    /// <summary>Checks the slots of one day.</summary>
    public void Check(IReadOnlyList<SlotAt> slots)
    {
        for (var i = 1; i < slots.Count; i++)
        {
            var name = slots[i].Group;
            if (name is not null && slots[i - 1].Group != name && slots.Take(i).Any(s => s.Group == name))
            {
                Add(slots[i], $"another slot stands between this one and the rest of {name}", "put the slots of a group next to each other");
            }
        }

        foreach (var group in slots.Where(s => s.Group is not null).GroupBy(s => s.Group!))
        {
            CheckMembers(group.Key, [.. group]);
        }
    }

    private void CheckMembers(string name, List<SlotAt> members)
    {
        if (members.Count == 1)
        {
            Add(members[0], $"{name} has only this slot", "give another slot the same group, or leave it out");
        }

        foreach (var member in members.Where(m => m.Scheme is Scheme.Total or Scheme.Accumulate or Scheme.Tick))
        {
            Add(member, $"{member.Scheme!.Text} cannot be done in turn", "use reps or hold in a group");
        }

        var sets = members.Where(m => m.Scheme is not (null or Scheme.Total or Scheme.Accumulate or Scheme.Tick)).ToList();
        foreach (var member in sets.Where(m => m.Scheme!.Sets != sets[0].Scheme!.Sets))
        {
            Add(member, $"{member.Scheme!.Sets} sets here, but {sets[0].Scheme!.Sets} in the group's first slot", "give every slot of a group the same number of sets");
        }
    }

    private void Add(SlotAt slot, string wrong, string right) => mistakes.Add(slot.Line, "group", wrong, right);
}
