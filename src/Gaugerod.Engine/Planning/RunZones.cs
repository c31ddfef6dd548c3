using System.Globalization;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Planning;

/// <summary>Takes the zones that a run names out of its finished faces.</summary>
internal static class RunZones
{
    /// <summary>The run with the zones in place of their faces.</summary>
    /// <param name="job">The job.</param>
    /// <param name="run">The run.</param>
    /// <param name="path">Where it stands in the job.</param>
    /// <param name="faces">The faces it is on, in its order.</param>
    /// <param name="finished">Those faces, finished as wholes.</param>
    public static FinishedRun Of(Job job, RunRequest run, string path, Sequence<NumberedFace> faces, FinishedRun finished)
    {
        if (finished.Faults.Count > 0) return finished;
        var remarks = new Remarks(job.Tape);
        var parts = new List<ZonePart>();
        for (var k = 0; k < faces.Count; k++)
        {
            var (name, face) = (run.Faces[k], faces[k]);
            var at = string.Create(CultureInfo.InvariantCulture, $"faces[{face.Index}]");
            var before = remarks.Faults.Count;
            var cut = ZoneCutter.Cut(finished.Faces[k], face.Face.Zones, at, job.EdgeJoint, remarks);
            if (face.Face.Zones.Count > 0) HoleChecks.Check(finished.Faces[k], at, cut, remarks);
            var own = cut.Where(part => string.Equals(part.Zone, name, StringComparison.Ordinal)).Select(part => part with { Face = part.Face with { Wall = face.Face.Name } }).ToList();
            if (own.Count == 0 && remarks.Faults.Count == before) remarks.Refuse($"{path}.faces", $"\"{name}\", of which its zones leave nothing", "a face or a zone with something to tile");
            if (face.Face.Falls is not { } falls) parts.AddRange(own);
            else if (FoldedFloor.Of(finished.Faces[k], falls, run.Joint.Wanted, at, remarks) is { } folded) parts.AddRange(own.SelectMany(part => folded.Cut(part.Face, remarks).Select(plane => part with { Face = plane })));
        }

        var strips = parts.Any(part => part.IsStrip);
        if (strips && faces.Count > 1) remarks.Refuse($"{path}.faces", "a border with other faces", "a border alone in its run", "a run of its own for the border");
        if (strips && run.Wants.OfType<Want.EqualCuts>().Any(want => !string.Equals(want.One.Face, want.Other.Face, StringComparison.Ordinal)))
        {
            remarks.Refuse($"{path}.wants", "equal cuts at two strips of a border", "two edges of one strip: each is laid by itself");
        }

        Sequence<Finding> findings = [.. finished.Findings, .. remarks.Findings];
        return remarks.Faults.Count > 0
            ? new([], findings, remarks.Faults.ToSequence())
            : new(parts.Select(part => part.Face).ToSequence(), findings, []) { Strips = strips ? parts.Select(part => part.Turn).ToSequence() : [], Surveys = finished.Surveys };
    }
}
