using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>Where a person wants a run's bond to sit: the lower left corner of a tile of the bond's first course. Taken as given, not searched.</summary>
/// <param name="X">One length: from the left of the run's first face, carried round. On a run that restarts at corners also one for each face, each from its own left.</param>
/// <param name="Y">Above the first face's y = 0.</param>
/// <param name="Joint">The joint's width, within what the run allows; null for the wanted one.</param>
public sealed record HeldPlace(Sequence<Length> X, Length Y, Length? Joint);
