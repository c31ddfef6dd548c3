using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rooms;

/// <summary>What the run knows of the other side of a corner.</summary>
/// <param name="Other">The other face's side there; null where the run has none.</param>
/// <param name="BuildUp">The other face's build-up.</param>
/// <param name="IsNearer">Whether this face is the one nearer to the face that runs through.</param>
internal readonly record struct Meeting(Side? Other, Length BuildUp, bool IsNearer);

/// <summary>Reckons what an edge takes from the tile.</summary>
internal static class EdgeTakes
{
    public static Take Of(Side side, Meeting meeting, Length edgeJoint)
    {
        var edge = side.Edge;
        var joint = edge.Joint ?? edgeJoint;
        var known = edge.Cover ?? (meeting.Other is null ? Length.Zero : meeting.BuildUp);
        switch (edge.Kind)
        {
            case EdgeKind.InsideCorner:
                var laps = Laps(side, meeting);
                return new(laps ? known + joint : joint, joint, laps);

            case EdgeKind.OutsideCorner:
                return FinishOf(side, meeting.Other) switch
                {
                    // The tile stands before the other's edge, or meets it on the corner: nothing is sealed unless a joint is stated.
                    CornerFinish.BullnoseOver or CornerFinish.Mitre => new((edge.Joint ?? Length.Zero) - known, edge.Joint ?? Length.Zero),
                    CornerFinish.Profile => new(ProfileWidth(side, meeting.Other) + joint, joint),
                    _ => new(joint, joint),
                };

            case EdgeKind.Free:
                var beside = edge.Joint ?? (edge.Trim > Length.Zero ? edgeJoint : Length.Zero);
                return new(edge.Trim + beside, beside);

            case EdgeKind.Floor or EdgeKind.Ceiling or EdgeKind.Fixture or EdgeKind.Threshold:
                return new((edge.Cover ?? Length.Zero) + joint, joint);

            default:
                throw new ArgumentException($"Edge '{side.Name}' is of no known kind.", nameof(side));
        }
    }

    /// <summary>The joint that is sealed at an edge: where tile meets what does not move with it. Beside trims it is grouted.</summary>
    public static Length Soft(Edge edge, Length edgeJoint) =>
        edge is { IsSealed: true, Kind: EdgeKind.InsideCorner or EdgeKind.Floor or EdgeKind.Ceiling or EdgeKind.Fixture or EdgeKind.Threshold } ? edge.Joint ?? edgeJoint : Length.Zero;

    /// <summary>Whether the tile is cut to the other wall's finished face: as said here, else as the other side implies, else as the run decides.</summary>
    public static bool Laps(Side side, Meeting meeting) => (side.Edge.Lap, meeting.Other?.Edge.Lap) switch
    {
        (Lap.Laps, _) => true,
        (Lap.Through, _) => false,
        (_, Lap.Laps) => false,
        (_, Lap.Through) => true,
        (_, null) => side.Edge.Cover is not null,
        _ => !meeting.IsNearer,
    };

    /// <summary>How this side of an outside corner is finished: as said here, else to match the other side, else as its trim says.</summary>
    public static CornerFinish FinishOf(Side side, Side? other) => (side.Edge.Finish, other?.Edge.Finish) switch
    {
        ({ } said, _) => said,
        (null, { } otherSaid) => Matching(otherSaid),
        _ => ProfileWidth(side, other) > Length.Zero ? CornerFinish.Profile : CornerFinish.BullnoseUnder,
    };

    /// <summary>The finish that goes with another across a corner.</summary>
    public static CornerFinish Matching(CornerFinish finish) => finish switch
    {
        CornerFinish.BullnoseOver => CornerFinish.BullnoseUnder,
        CornerFinish.BullnoseUnder => CornerFinish.BullnoseOver,
        _ => finish,
    };

    private static Length ProfileWidth(Side side, Side? other) =>
        side.Edge.Trim > Length.Zero || other is null ? side.Edge.Trim : other.Edge.Trim;
}
