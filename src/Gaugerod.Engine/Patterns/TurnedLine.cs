using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Patterns;

/// <summary>A line to snap that is neither level nor plumb: from one place of a face to another.</summary>
/// <param name="Face">On which face.</param>
/// <param name="From">Where it begins, on the edge of the field.</param>
/// <param name="Through">The place on it where the first tile's corner stands.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Marks">Where tiles like the first have that corner, as distances from it along the line; negative towards where it begins. None where no other tile has it there.</param>
/// <param name="Why">What it is for.</param>
public sealed record TurnedLine(string Face, Point From, Point Through, Point To, Sequence<Length> Marks, string Why);
