using Gaugerod.Plane;

namespace Gaugerod.Engine.Rooms;

/// <summary>Finishes the faces of a run: draws them, settles their corners, takes off what edges take, and unrolls them.</summary>
internal static class RoomBuilder
{
    /// <summary>The run's faces with their fields, or every fault that stands in the way.</summary>
    /// <exception cref="ArgumentException">The run has no faces.</exception>
    public static FinishedRun Finish(RunOfFaces run)
    {
        if (run.Faces.Count == 0) throw new ArgumentException("A run has at least one face.", nameof(run));
        var remarks = new Remarks(run.Tape);
        var drawn = run.Faces.Select(face => FaceDrawing.Draw(face, remarks)).ToList();
        if (drawn.Contains(null)) return Refused();

        var faces = drawn.Select(face => face!).ToList();
        var takes = RunCorners.Settle(run, faces, remarks);
        if (remarks.Faults.Count > 0) return Refused();

        var fields = faces.Select((face, k) => FieldBuilder.Build(face, takes[k], run.EdgeJoint, remarks)).ToList();
        if (fields.Contains(null)) return Refused();

        var unrolled = Unrolling.Unrolled([.. fields.Select(f => f!)], takes, run.EdgeJoint);
        var raised = Unrolling.Raised(faces, remarks);
        var struck = faces.Select(face => face.LevelLine).FirstOrDefault(line => line is not null);
        var finished = fields.Select((field, k) => new FinishedFace(
            faces[k].Face.Name, faces[k].Outline.Ring, faces[k].Openings.Select(o => new NamedRing(o.Name, o.Ring)).ToSequence(),
            faces[k].Face.Holes, field!.Shape, field.Edges(), unrolled[k], raised[k]) { LevelLine = struck - raised[k] });
        return new(finished.ToSequence(), remarks.Findings.ToSequence(), []);

        FinishedRun Refused() => new([], remarks.Findings.ToSequence(), remarks.Faults.ToSequence());
    }
}
