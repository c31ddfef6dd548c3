using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane.Measure;

namespace Gaugerod.App.Stations.Set;

/// <summary>A course as planned.</summary>
/// <param name="Number">Its number, counted from the lowest of the run.</param>
/// <param name="Bottom">The height of its lower side.</param>
/// <param name="Top">The height of its top.</param>
/// <param name="Pieces">Its pieces, from the left.</param>
internal sealed record CourseToSet(int Number, Length Bottom, Length Top, IReadOnlyList<Piece> Pieces)
{
    public IEnumerable<Piece> Cut => Pieces.Where(piece => piece.Kind != PieceKind.Full);
}

/// <summary>A face of a run that is laid in level courses, as it is set.</summary>
internal sealed class FaceSet
{
    public FaceSet(RunPlan run, FacePlan plan)
    {
        (Run, Plan) = (run, plan);
        var courses = plan.Pieces.GroupBy(piece => piece.Course).OrderBy(course => course.Key)
            .Select(course => new CourseToSet(course.Key, course.Min(piece => piece.Cell.Bottom), course.Max(piece => piece.Cell.Top), [.. course.OrderBy(piece => piece.Column)])).ToList();
        (First, Last) = (courses[0].Number, courses[^1].Number);
        Line = run.Lines.FirstOrDefault(line => line.Axis == Axis.Level && string.Equals(line.Face, plan.Face.SetOut.Name, StringComparison.Ordinal));
        Start = (Line is null ? null : courses.Find(course => course.Bottom >= Line.At))?.Number ?? First;
        Courses = [.. courses.Where(course => course.Number >= Start), .. courses.Where(course => course.Number < Start).Reverse()];
    }

    public RunPlan Run { get; }

    public FacePlan Plan { get; }

    /// <summary>The face as the run calls it.</summary>
    public string Name => Plan.Face.Name;

    /// <summary>The lowest course of the face.</summary>
    public int First { get; }

    public int Last { get; }

    /// <summary>The course that stands on the starting line.</summary>
    public int Start { get; }

    /// <summary>The level line to start from; null where none is given.</summary>
    public SnapLine? Line { get; }

    /// <summary>The courses in the order they are set: from the starting line up, then what is below it, from the line down.</summary>
    public IReadOnlyList<CourseToSet> Courses { get; }

    /// <summary>From a course's lower side to that of the next, as planned.</summary>
    public Length Rise => Plan.Placing.Joint + (Courses[0].Top - Courses[0].Bottom);

    public CourseToSet? Course(int number) => Courses.FirstOrDefault(course => course.Number == number);

    /// <summary>Nothing is set.</summary>
    public CoursesSet Nothing => new(First, First - 1);
}
