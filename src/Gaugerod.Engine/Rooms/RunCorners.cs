namespace Gaugerod.Engine.Rooms;


/// <summary>Settles the corners of a run: which wall runs through, and what every edge takes.</summary>
internal static class RunCorners
{
    /// <summary>What each side of each face's outline takes, in the faces' and the sides' order.</summary>
    public static Take[][] Settle(RunOfFaces run, IReadOnlyList<DrawnFace> faces, Remarks remarks)
    {
        var through = ThroughFace(run, faces, remarks);
        for (var k = 0; k + 1 < faces.Count; k++) Agree(faces[k], faces[k + 1], remarks);
        return [.. faces.Select((face, k) => face.Outline.Sides.Select(side => TakeOf(side, k)).ToArray())];

        Take TakeOf(Side side, int k)
        {
            var take = EdgeTakes.Of(side, MeetingOf(side, k), run.EdgeJoint);
            Remark(side, take, k);
            return take;
        }

        Meeting MeetingOf(Side side, int k)
        {
            if (!side.IsCorner) return default;
            return side.Hand switch
            {
                Hand.Right when k + 1 < faces.Count => new(Facing(side, faces[k + 1]), run.BuildUp, through <= k),
                Hand.Left when k > 0 => new(Facing(side, faces[k - 1]), run.BuildUp, through >= k),
                _ => default,
            };
        }

        void Remark(Side side, Take take, int k)
        {
            var meeting = MeetingOf(side, k);
            var grows = side.Edge.Kind == EdgeKind.OutsideCorner
                && EdgeTakes.FinishOf(side, meeting.Other) is CornerFinish.BullnoseOver or CornerFinish.Mitre;
            if ((!take.Laps && !grows) || take.Inward != take.Joint || side.Edge.Cover is not null) return;
            // The edge is named as the place and not in the text, so that corners alike can be said in one.
            remarks.Find(FindingLevel.Warn, "build-up", $"{side.Name} edge of {faces[k].Face.Name}", NoBuildUp(take.Laps, meeting.Other is not null));
        }
    }

    private static string NoBuildUp(bool laps, bool hasNeighbour)
    {
        var (why, cure) = hasNeighbour
            ? ("The tile's thickness and its thinset are not given", "Give both with the tile, or this edge's cover.")
            : ("No wall of this run stands on the other side of this corner, and no cover is given", "Give this edge's cover: the thickness and thinset of the tile on the other side.");
        var follows = laps
            ? "so nothing is taken off at this corner for the other wall's tile, and cuts there come out too long by that much"
            : "so nothing is added at this corner to reach over the other wall's tile, and cuts there come out too short by that much";
        return $"{why}, {follows}. {cure}";
    }

    /// <summary>The other face's side at the same corner.</summary>
    public static Side? Facing(Side side, DrawnFace other)
    {
        var hand = side.Hand == Hand.Right ? Hand.Left : Hand.Right;
        return other.Outline.Sides.FirstOrDefault(s => s.Hand == hand && s.Edge.Kind == side.Edge.Kind);
    }

    private static int ThroughFace(RunOfFaces run, IReadOnlyList<DrawnFace> faces, Remarks remarks)
    {
        if (run.Through is null) return (faces.Count - 1) / 2;
        for (var k = 0; k < faces.Count; k++)
        {
            if (string.Equals(faces[k].Face.Name, run.Through, StringComparison.Ordinal)) return k;
        }

        remarks.Refuse($"{run.Path}.through", run.Through, "the name of a face of this run", string.Join(", ", faces.Select(f => f.Face.Name)));
        return 0;
    }

    /// <summary>Refuses a corner of which its two faces say things that cannot both be.</summary>
    private static void Agree(DrawnFace left, DrawnFace right, Remarks remarks)
    {
        var one = left.Outline.Sides.FirstOrDefault(s => s.Hand == Hand.Right && s.IsCorner);
        var other = right.Outline.Sides.FirstOrDefault(s => s.Hand == Hand.Left && s.IsCorner);
        if (one is null && other is null) return;
        if (one is null || other is null)
        {
            var (says, not) = one is null ? (right, left) : (left, right);
            remarks.Find(
                FindingLevel.Note, "corner", says.Face.Name,
                $"'{(one ?? other)!.Name}' is a corner towards '{not.Face.Name}', which has no corner there: nothing is taken off for its tile unless a cover is stated.");
            return;
        }

        var where = $"of the corner between '{left.Face.Name}' and '{right.Face.Name}'";
        if (one.Edge.Kind != other.Edge.Kind)
        {
            remarks.Refuse($"{other.Path}.kind", $"the two sides {where} differ in kind", "an inside or an outside corner on both", "say of both what the corner is");
        }
        else if (one.Edge.Kind == EdgeKind.InsideCorner && one.Edge.Lap == other.Edge.Lap && one.Edge.Lap != Lap.AsRun)
        {
            var both = one.Edge.Lap == Lap.Through ? "run through" : "lap";
            remarks.Refuse($"{other.Path}.lap", $"both sides {where} {both}", "one that runs through and one that laps", "say it of one side only");
        }
        else if (one.Edge.Finish is { } finish && other.Edge.Finish is { } otherFinish && otherFinish != EdgeTakes.Matching(finish))
        {
            remarks.Refuse($"{other.Path}.finish", $"the two finishes {where} do not go together", "bullnose over and under, or mitre, or profile on both", "say it of one side only");
        }
    }
}
