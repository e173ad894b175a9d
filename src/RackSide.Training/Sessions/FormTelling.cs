using RackSide.Training.History;

namespace RackSide.Training.Sessions;

/// <summary>The word on a set's form, told after it and taken back by telling it again.</summary>
internal static class FormTelling
{
    public static Turn Toggle(Session s, FactId set)
    {
        var slipped = !s.Place.Sets.Single(r => r.Set.Id == set).FormSlipped;
        return ((Turn)s)
            .Keep((id, at) => new FormTold(id, at, set, slipped))
            .Say(slipped ? "form slipped: done, but earns no heavier load" : "form held after all");
    }
}
