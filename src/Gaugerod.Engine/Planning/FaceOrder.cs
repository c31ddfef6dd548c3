using Gaugerod.Plane;

namespace Gaugerod.Engine.Planning;

/// <summary>In which order the faces of a run are set.</summary>
public static class FaceOrder
{
    /// <summary>
    /// The face whose tile runs into the corners first, then outward to the left and to the right of it: each is cut to the one
    /// before. Common practice, no source.
    /// </summary>
    /// <param name="run">The run.</param>
    public static Sequence<FacePlan> Of(RunPlan run)
    {
        ArgumentNullException.ThrowIfNull(run);
        var named = run.Request.Through is { } name ? run.Faces.ToList().FindIndex(face => string.Equals(face.Face.Name, name, StringComparison.Ordinal)) : -1;
        var through = named >= 0 ? named : (run.Faces.Count - 1) / 2;
        return run.Faces.Take(through + 1).Reverse().Concat(run.Faces.Skip(through + 1)).ToSequence();
    }
}
