using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>What is on a face already, and where it really came to stand.</summary>
/// <param name="Face">The face.</param>
/// <param name="Courses">The last course that is set, counted as the pieces' courses are, from the lowest of the run; 0 where only pieces are cut.</param>
/// <param name="Left">How high above the face's y = 0 the top of the last course set stands at the face's left; null where it was not read.</param>
/// <param name="Right">The same at its right; null where it was not read: then as at the left, and the left as here.</param>
public sealed record SetSoFar(string Face, int Courses, Length? Left, Length? Right)
{
    /// <summary>
    /// The first course that is set, where those below it are still to come: from a starting line one works up, and the cut
    /// courses below it are set when what stands above them has hold. Default the lowest.
    /// </summary>
    public int From { get; init; } = 1;

    /// <summary>How far right of where they were planned the joints of the last course stand; default not at all.</summary>
    public Length Aside { get; init; }

    /// <summary>The numbers of pieces that are cut and not yet set. Default none.</summary>
    public Sequence<string> Cut { get; init; } = [];
}
