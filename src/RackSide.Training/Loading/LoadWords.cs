using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Training.Loading;

/// <summary>Plates and loads in words. Numbers stand alone where all are of one unit, and carry it where both units meet.</summary>
internal static class LoadWords
{
    /// <summary>Plates in the order they go on: <c>10 + 2.5</c>.</summary>
    public static string Plates(IEnumerable<Mass> plates, bool withUnit) => string.Join(" + ", plates.Select(p => One(p, withUnit)));

    /// <summary>What makes a load, and by which rule where as few other plates would make it too.</summary>
    public static string Made(BarStack stack, GymKit kit, Bar main)
    {
        var other = AsFewPlates.OtherThan(stack, kit) ?? [];
        var withUnit = MassSum.Mixed([stack.Bar.Mass, .. stack.Side, .. other]);
        var bar = stack.Bar == main ? "the bar" : stack.Bar.Name;
        return stack.Side.Count == 0
            ? $"loadable: {stack.Total} is {bar} alone{(stack.Bar.Collar is null ? "" : ", with its collars")}"
            : $"loadable: {stack.Total} is {Plates(stack.Side, withUnit)} on each side of {bar}"
                + (other.Count > 0 ? $", as few plates as {Plates(other, withUnit)} and the larger inside" : "");
    }

    /// <summary>Why a load cannot be made, and what there is instead.</summary>
    public static string NotMade(Mass target, Mass? below, Mass? above, Missing? missing)
    {
        var withUnit = MassSum.Mixed([target, .. Known(below), .. Known(above), .. Known(missing?.Plate)]);
        var why = missing is { } m
            ? $"needs {(m.AnotherOfThem ? "another" : "a")} {One(m.Plate, withUnit)} pair"
            : below is null ? "is lighter than the empty bar" : "needs plates that are not here";
        return $"not loadable: {One(target, withUnit)} {why}; {Instead(below, above, withUnit)}";
    }

    /// <summary>Why a load whose plates are there cannot be made.</summary>
    public static string TooLong(Mass target, Mass? below, Mass? above)
    {
        var withUnit = MassSum.Mixed([target, .. Known(below), .. Known(above)]);
        return $"not loadable: the plates for {One(target, withUnit)} do not fit on the sleeve; {Instead(below, above, withUnit)}";
    }

    private static string Instead(Mass? below, Mass? above, bool withUnit) => (below, above) switch
    {
        ({ } b, { } a) => $"{One(b, withUnit)} or {One(a, withUnit)}",
        ({ } b, null) => $"{One(b, withUnit)} is the most",
        (null, { } a) => $"{One(a, withUnit)} is the least",
        _ => "nothing else either",
    };

    private static string One(Mass mass, bool withUnit) => withUnit ? mass.ToString() : mass.Number;

    private static IEnumerable<Mass> Known(Mass? mass) => mass is { } m ? [m] : [];
}
