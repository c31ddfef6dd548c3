using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;

namespace Gaugerod.Sheets.Sheets;

/// <summary>Which face a line to snap or a rod is on: a face of the run, or the whole of one that the run lays plane by plane.</summary>
public static class LineFace
{
    /// <summary>The face of a name.</summary>
    public static FinishedFace Of(RunPlan run, string name)
    {
        ArgumentNullException.ThrowIfNull(run);
        return run.Faces.Select(face => face.Face).First(face => Is(face, name)).SetOut;
    }

    /// <summary>Whether a face is, or is a plane of, the one of that name.</summary>
    public static bool Is(FinishedFace face, string name)
    {
        ArgumentNullException.ThrowIfNull(face);
        return string.Equals(face.SetOut.Name, name, StringComparison.Ordinal);
    }
}
