using Gaugerod.Engine.Planning;
using Gaugerod.Plane;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>A face's picture.</summary>
/// <param name="Run">The run's name.</param>
/// <param name="Face">The face's name.</param>
/// <param name="Drawing">The picture, to the scale that its title states.</param>
public sealed record FaceDrawing(string Run, string Face, Drawing Drawing);

/// <summary>One picture a face, without a sheet around it.</summary>
public static class FaceDrawings
{
    /// <summary>The pictures of all faces, run by run, left to right.</summary>
    public static Sequence<FaceDrawing> Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.Runs
            .SelectMany(run => run.Faces.Select(face => new FaceDrawing(run.Request.Name, face.Face.Name, FaceSheet.Alone(plan, run, face))))
            .ToSequence();
    }
}
