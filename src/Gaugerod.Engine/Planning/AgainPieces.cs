using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Planning;

/// <summary>Cuts the courses that are still to be set, each at a height of its own.</summary>
/// <param name="job">The job.</param>
/// <param name="plan">The run as planned.</param>
/// <param name="face">The face as planned.</param>
/// <param name="finished">Its field before holes were drilled.</param>
internal sealed class AgainPieces(Job job, RunPlan plan, FacePlan face, FinishedFace finished)
{
    private readonly Product _product = JobRuns.ProductOf(job, plan.Request);
    private readonly Bond _bond = BondMaker.Straight(plan.Request.Bond, JobRuns.ProductOf(job, plan.Request), face.Placing.Joint);
    private readonly string _letter = new([.. face.Pieces[0].Id.TakeWhile(char.IsLetter)]);
    private readonly Dictionary<(int Course, Length Bottom), List<(Piece Piece, bool IsPlanned)>> _cut = [];
    private readonly FieldRings _field = FieldRings.Of(finished);
    private readonly Dictionary<(int Course, Length Left, Length Bottom), Piece> _planned = face.Pieces.GroupBy(piece => (piece.Course, piece.Cell.Left, piece.Outline.Bounds.Bottom - piece.Cell.Bottom)).ToDictionary(same => same.Key, same => same.First());

    /// <summary>The pieces of the courses, a course at a time, numbered as those planned in their places; what has no such place is numbered on.</summary>
    /// <param name="set">What is set.</param>
    /// <param name="rows">Where the courses stand.</param>
    /// <param name="aside">How far right of the plan their joints stand.</param>
    public IEnumerable<IEnumerable<Piece>> CourseByCourse(SetCourses set, AgainRows rows, Length aside)
    {
        var more = face.Pieces.Count;
        foreach (var (course, left, right) in rows.Courses)
        {
            // Many ways have a course at one height, as planned above all.
            var bottom = Length.FromSteps((left + right) / 2);
            if (!_cut.TryGetValue((course, bottom), out var cut)) _cut[(course, bottom)] = cut = [.. Cut(set, course, bottom, aside)];
            yield return cut.Select(of => of.IsPlanned ? of.Piece : of.Piece with { Id = _letter + (++more).ToString(System.Globalization.CultureInfo.InvariantCulture) }).ToList();
        }
    }

    private IEnumerable<(Piece Piece, bool IsPlanned)> Cut(SetCourses set, int course, Length bottom, Length aside)
    {
        // The course keeps its place in the bond's repeat: the bond is moved up or down as a whole until it stands there.
        var steps = ((face.Placing.Y.Steps - set.Bottom) / set.Rise) - (course - set.First);
        var placing = face.Placing with { X = face.Placing.X + aside, Y = bottom + Length.FromSteps(steps * set.Rise) };
        foreach (var piece in PieceCutter.Cut(_field, _bond, placing, _product, job.Tape, _letter, bottom))
        {
            var twin = Twin(piece, course, aside);
            yield return (piece with { Id = twin?.Id ?? "", Course = course, Column = twin?.Column ?? piece.Column }, twin is not null);
        }
    }

    /// <summary>What was planned in a piece's place; null for nothing.</summary>
    public Piece? Twin(Piece piece, int course, Length aside) => _planned.GetValueOrDefault((course, piece.Cell.Left - aside, piece.Outline.Bounds.Bottom - piece.Cell.Bottom))
        ?? face.Pieces.FirstOrDefault(planned => planned.Course == course && planned.Cell.Left == piece.Cell.Left - aside);

    /// <summary>Whether a piece is cut as it was planned, to half a mark of the tape.</summary>
    public bool IsAsPlanned(Piece piece, Length aside)
    {
        if (Twin(piece, piece.Course, aside) is not { } twin || twin.Kind != piece.Kind || twin.Cuts.Count != piece.Cuts.Count) return false;
        var (one, other) = (Own(piece), Own(twin));
        return one.Count == other.Count && one.Zip(other).All(pair => Near(pair.First.X - pair.Second.X) && Near(pair.First.Y - pair.Second.Y));
    }

    private static Sequence<Point> Own(Piece piece) => piece.Outline.Moved(-piece.Cell.Left, -piece.Cell.Bottom).Points;

    private bool Near(Length apart) => apart.Abs() * 2 <= job.Tape.Mark;
}
