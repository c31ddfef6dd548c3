using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>What is on a face already, and where it really came to stand.</summary>
/// <param name="Face">The face.</param>
/// <param name="Courses">How many courses are set, counted as the pieces' courses are, from the lowest of the run; 0 where only pieces are cut.</param>
/// <param name="Left">How high above the face's y = 0 the top of the last course set stands at the face's left; null where it was not read.</param>
/// <param name="Right">The same at its right; null where it was not read: then as at the left.</param>
public sealed record SetSoFar(string Face, int Courses, Length? Left, Length? Right)
{
    /// <summary>How far right of where they were planned the joints of the last course stand; default not at all.</summary>
    public Length Aside { get; init; }

    /// <summary>The numbers of pieces that are cut and not yet set. Default none.</summary>
    public Sequence<string> Cut { get; init; } = [];
}
