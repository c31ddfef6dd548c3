using Gaugerod.Plane;

namespace Gaugerod.Engine.Rooms;

/// <summary>Finishes the faces of a run: draws them, settles their corners, takes off what edges take, and unrolls them.</summary>
internal static class RoomBuilder
{
    /// <summary>The run's faces with their fields, or every fault that stands in the way.</summary>
    /// <exception cref="ArgumentException">The run has no faces.</exception>
    public static FinishedRun Finish(RunOfFaces run) => FaceByFace(run).Last()!;

    /// <summary>As <see cref="Finish"/>, a face at a time: nothing until the last.</summary>
    /// <exception cref="ArgumentException">The run has no faces.</exception>
    public static IEnumerable<FinishedRun?> FaceByFace(RunOfFaces run)
    {
        if (run.Faces.Count == 0) throw new ArgumentException("A run has at least one face.", nameof(run));
        var remarks = new Remarks(run.Tape);
        var faces = new List<DrawnFace>();
        foreach (var face in run.Faces)
        {
            if (FaceDrawing.Draw(face, remarks) is { } drawn) faces.Add(drawn);
            yield return null;
        }

        if (faces.Count < run.Faces.Count)
        {
            yield return Refused();
            yield break;
        }

        var takes = RunCorners.Settle(run, faces, remarks);
        if (remarks.Faults.Count > 0)
        {
            yield return Refused();
            yield break;
        }

        var fields = new List<Field>();
        for (var k = 0; k < faces.Count; k++)
        {
            if (FieldBuilder.Build(faces[k], takes[k], run.EdgeJoint, remarks) is { } field) fields.Add(field);
            yield return null;
        }

        if (fields.Count < faces.Count)
        {
            yield return Refused();
            yield break;
        }

        var unrolled = Unrolling.Unrolled(fields, takes, run.EdgeJoint);
        var raised = Unrolling.Raised(faces, remarks);
        var struck = faces.Select(face => face.LevelLine).FirstOrDefault(line => line is not null);
        var finished = fields.Select((field, k) => new FinishedFace(
            faces[k].Face.Name, faces[k].Outline.Ring, faces[k].Openings.Select(o => new NamedRing(o.Name, o.Ring)).ToSequence(),
            faces[k].Face.Holes, field.Shape, field.Edges(run.EdgeJoint), unrolled[k], raised[k]) 
        {
            LevelLine = struck - raised[k],
            OutlineNames = faces[k].Outline.Sides.Select(side => side.Name).ToSequence(),
        });
        yield return new(finished.ToSequence(), remarks.Findings.ToSequence(), []) { Surveys = remarks.Surveys.ToSequence() };

        FinishedRun Refused() => new([], remarks.Findings.ToSequence(), remarks.Faults.ToSequence()) { Surveys = remarks.Surveys.ToSequence() };
    }
}
