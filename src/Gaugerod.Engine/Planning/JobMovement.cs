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
            var published = MovementLimits.Of(job.Region, request.Exposure, FloorFaces.Holds(job, run.Request));
            var most = request.Most ?? published.Most.Length;
            foreach (var faces in run.Faces.GroupBy(face => face.Face.SetOut, ReferenceEqualityComparer.Instance))
            {
                var (face, box) = (faces.First().Face.SetOut, faces.First().Face.SetOut.Field.Outer.Bounds);
                if (Length.Max(box.Width, box.Height) <= most) continue;
                var found = MovementJoints.Of(run.Request.Name, face, [.. faces.SelectMany(of => of.Pieces)], run.Best.Placing.Joint, most).ToList();
                joints.AddRange(found);
                foreach (var plumb in new[] { true, false })
                {
                    var field = plumb ? box.Width : box.Height;
                    if (field > most) findings.Add(MovementRules.Finding(run.Request.Name, face.Wall, field, plumb, found.FindAll(joint => joint.IsPlumb == plumb), request, published, job.Tape));
                }
            }
        }

        return (joints, findings);
    }
}
