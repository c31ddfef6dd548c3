using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>Finds the fields of a job that are too large without a soft joint across them, and where one would stand.</summary>
internal static class JobMovement
{
    public static (IReadOnlyList<MovementJoint> Joints, IReadOnlyList<Finding> Findings) Of(Job job, IReadOnlyList<RunPlan> runs)
    {
        var (joints, findings) = (new List<MovementJoint>(), new List<Finding>());
        foreach (var run in runs.Where(run => !run.IsBorder))
        {
            var request = run.Request.Movement ?? new(Exposure.Inside, null);
            var isFloor = FloorFaces.Holds(job, run.Request);
            var published = MovementLimits.Of(job.Region, request.Exposure, isFloor);
            var most = request.Most ?? published.Most.Length;
            foreach (var faces in run.Faces.GroupBy(face => face.Face.SetOut, ReferenceEqualityComparer.Instance))
            {
                var (face, box) = (faces.First().Face.SetOut, faces.First().Face.SetOut.Field.Outer.Bounds);
                var longest = Length.Max(box.Width, box.Height);
                var found = longest <= most ? [] : MovementJoints.Of(run.Request.Name, face, [.. faces.SelectMany(of => of.Pieces)], run.Best.Placing.Joint, most).ToList();
                joints.AddRange(found);
                if (isFloor)
                {
                    if (request.Exposure == Exposure.Sun) findings.AddRange(MovementRules.Area(run.Request.Name, face.Wall, Part(box.Left, box.Right, found, plumb: true) * Part(box.Bottom, box.Top, found, plumb: false), job.Region, job.Tape));
                    findings.AddRange(MovementRules.Edges(run.Request.Name, face.Wall, longest, Shut(job, face), job.Region, job.Tape));
                }

                foreach (var plumb in new[] { true, false })
                {
                    var field = plumb ? box.Width : box.Height;
                    if (field > most) findings.Add(MovementRules.Finding(run.Request.Name, face.Wall, field, plumb, found.FindAll(joint => joint.IsPlumb == plumb), request, published, job.Tape));
                }
            }
        }

        return (joints, findings);
    }

    /// <summary>The longest stretch between joints one way, in mm.</summary>
    private static double Part(Length from, Length to, IEnumerable<MovementJoint> joints, bool plumb)
    {
        var at = joints.Where(joint => joint.IsPlumb == plumb).Select(joint => joint.At).Append(from).Append(to).Order().ToList();
        return (double)at.Zip(at.Skip(1), (one, next) => next - one).Max().Millimetres;
    }

    /// <summary>The edges of a floor where tile is tight against what does not move with it. One that is sealed elsewhere has its joint.</summary>
    private static List<string> Shut(Job job, FinishedFace floor) =>
        [.. job.Faces.Where(face => floor.IsCalled(face.Name) || string.Equals(floor.Wall, face.Name, StringComparison.Ordinal)).SelectMany(FloorFaces.Edges)
            .Where(edge => edge.Kind is EdgeKind.InsideCorner or EdgeKind.Fixture && (edge.Joint ?? job.EdgeJoint) == Length.Zero).Select(edge => edge.Name)];
}
