using Gaugerod.Engine.Planning;
using Gaugerod.Plane;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Sheets.Sheets;

/// <summary>What one run lays on a wall or a floor: all of it, a zone, a strip of a border or a plane that falls.</summary>
internal readonly record struct WallPart(RunPlan Run, FacePlan Face);

/// <summary>A wall or a floor as the setter stands before it, with everything that any run lays on it and the trims beside that.</summary>
internal sealed record WallPlan(string Name, Sequence<WallPart> Parts, Sequence<TrimPart> Trims)
{
    /// <summary>All walls, in the order in which the runs come to them.</summary>
    public static IReadOnlyList<WallPlan> All(Plan plan) =>
    [
        .. plan.Runs.SelectMany(run => run.Faces.Select(face => new WallPart(run, face)))
            .GroupBy(part => part.Face.Face.Wall, StringComparer.Ordinal)
            .Select(wall => new WallPlan(wall.Key, wall.ToSequence(), WallTrims.Of(plan, wall.Key).ToSequence())),
    ];

    /// <summary>Its zones, each as a wall of its own, as large as its tile: for a picture nearer to the eye. None where it is one.</summary>
    public IEnumerable<WallPlan> Zones(Job job) => Parts.Count == 1 ? [] : Parts
        .Where(part => !part.Run.IsBorder && part.Face.Face.Plane is null)
        .Select(part => new WallPlan(
            part.Face.Face.Name, [part with { Face = part.Face with { Face = part.Face.Face with { Outline = part.Face.Face.Field.Outer } } }], WallTrims.Beside(job, Trims, part.Face.Face).ToSequence()));

    /// <summary>The box around what was measured.</summary>
    public Box Measured => Box.Around(Outlines);

    /// <summary>The same, with what of the trims reaches beyond it.</summary>
    public Box Bounds => Box.Around(Outlines.Concat(Trims.SelectMany(part => part.Outline.Points)));

    private IEnumerable<Point> Outlines => Parts.SelectMany(part => part.Face.Face.Outline.Points);

    /// <summary>The names of the runs that lay it.</summary>
    public IReadOnlyList<string> Runs => [.. Parts.Select(part => part.Run.Request.Name).Distinct(StringComparer.Ordinal)];
}
