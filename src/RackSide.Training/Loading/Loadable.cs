using RackSide.Training.Measures;

namespace RackSide.Training.Loading;

/// <summary>What a kit's bars and plates can make of a load.</summary>
/// <param name="Target">The load asked about.</param>
/// <param name="Stack">The loaded bar, or null where the load cannot be made exactly.</param>
/// <param name="Below">The next lighter load there is, or null.</param>
/// <param name="Above">The next heavier load there is, or null.</param>
/// <param name="Text">The same in words: what goes on each side, or what is missing and what there is instead.</param>
public sealed record Loadable(Mass Target, BarStack? Stack, Mass? Below, Mass? Above, string Text);
