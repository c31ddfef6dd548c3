using System.Text.Json.Nodes;
using Gaugerod.App.Desk;
using Gaugerod.App.Stations.Measure;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane.Measure;

namespace Gaugerod.App.Stations.Set;

/// <summary>Where the top of the last course set stands, as it was read; and where that of one set after it then does.</summary>
/// <param name="Left">At the left.</param>
/// <param name="Right">At the right.</param>
internal readonly record struct SetTop(Length Left, Length Right)
{
    /// <summary>What was read; null where nothing was, and where it cannot be understood.</summary>
    public static SetTop? Read(JobDesk desk, string place)
    {
        var top = JobPath.Get(desk.Root, place + ".top");
        var (left, right) = top is JsonObject both ? (FaceMeasures.Read(desk, both["left"]), FaceMeasures.Read(desk, both["right"])) : (FaceMeasures.Read(desk, top), null);
        return (left ?? right) is { } one ? new(left ?? one, right ?? one) : null;
    }

    /// <summary>Where the top of a course stands that was set after those: where its mark was by the best way, else as much off as the last.</summary>
    /// <param name="face">The face.</param>
    /// <param name="again">What the plan made of it last; null for nothing.</param>
    /// <param name="was">The course whose top this is.</param>
    /// <param name="now">The course set after it.</param>
    public SetTop After(FaceSet face, AgainFace? again, int was, int now)
    {
        var depth = face.Courses[0].Top - face.Courses[0].Bottom;
        if (again is not null && Is(At(was), face)) return At(now) ?? Off(face, now - was);
        return Off(face, now - was);

        SetTop? At(int course)
        {
            if (course == again.Courses && face.Course(course) is { } last) return new(last.Top + again.OffLeft, last.Top + again.OffRight);
            return again.Ways[0].Marks.FirstOrDefault(mark => mark.Course == course) is { } mark ? new(mark.Left + depth, mark.Right + depth) : null;
        }
    }

    /// <summary>As the job says it, to the tape's mark; null where the tape shows it as planned.</summary>
    public JsonNode? Typed(JobDesk desk, CourseToSet? planned)
    {
        var tape = Tapes.Of(desk);
        if (planned is not null && IsNear(Left - planned.Top, tape) && IsNear(Right - planned.Top, tape)) return null;
        var (left, right) = (FaceMeasures.Typed(desk, Left), FaceMeasures.Typed(desk, Right));
        return string.Equals(left.ToString(), right.ToString(), StringComparison.Ordinal) ? new JsonObject { ["left"] = left } : new JsonObject { ["left"] = left, ["right"] = right };
    }

    private static bool IsNear(Length off, Tape tape) => off.Abs() * 2 < tape.Mark;

    // To a quarter of the joint: it was typed to the tape's mark.
    private bool Is(SetTop? other, FaceSet face) => other is { } top && (top.Left - Left).Abs() * 4 <= face.Plan.Placing.Joint && (top.Right - Right).Abs() * 4 <= face.Plan.Placing.Joint;

    private SetTop Off(FaceSet face, int courses) => new(Left + (face.Rise * courses), Right + (face.Rise * courses));
}
