using Gaugerod.Engine.Surveys;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>One flat thing that gets tile, as it was measured, before anything is taken off for joints and trims.</summary>
/// <param name="Name">Its name, unique in the job.</param>
/// <param name="Shape">Its outline, or the readings that give it.</param>
/// <param name="Openings">Windows, niches and the like, wholly inside the face.</param>
/// <param name="Holes">Round penetrations.</param>
public sealed record Face(string Name, FaceShape Shape, Sequence<Opening> Openings, Sequence<Hole> Holes)
{
    /// <summary>Parts of it with fields of their own, in the order in which they are taken from it. Default none.</summary>
    public Sequence<Zone> Zones { get; init; } = [];

    /// <summary>Where it bends; null, the default, for a flat face.</summary>
    public Falls? Falls { get; init; }

    /// <summary>The beds that edges of it stand on. Default none.</summary>
    public Sequence<OnBed> Beds { get; init; } = [];

    /// <summary>How high edges of it run, where that is known better than its shape says: it has been reckoned from <see cref="Beds"/>.</summary>
    internal Sequence<EdgeHeights> Heights { get; init; } = [];

    /// <summary>What goes on it before its tile; null, the default, where that is not reckoned.</summary>
    public UnderTile? Under { get; init; }

    /// <summary>Readings of how flat it is; null where none were taken.</summary>
    public FlatReadings? Flatness { get; init; }

    /// <summary>How it is boarded; null, the default, where no board is planned.</summary>
    public BoardRequest? Board { get; init; }
}

/// <summary>How a face is given.</summary>
public abstract record FaceShape
{
    private FaceShape()
    {
    }

    /// <summary>By its corners.</summary>
    /// <param name="Ring">The corners, counter-clockwise as seen from the room.</param>
    /// <param name="Edges">One for each side, the first from the first corner to the second. The chords of an arc, one after another, have the same edge.</param>
    /// <param name="LevelLine">How high above the lowest left corner's level (y = 0) the run's level line crosses this face. Default zero.</param>
    public sealed record Outline(Ring Ring, Sequence<Edge> Edges, Length LevelLine) : FaceShape;

    /// <summary>By its corners and what was read between them.</summary>
    /// <param name="Survey">What was read.</param>
    /// <param name="Edges">One for each side, the first from the first corner to the second.</param>
    public sealed record Surveyed(FaceSurvey Survey, Sequence<Edge> Edges) : FaceShape
    {
        /// <summary>The surveys it is weighed with, its own among them; null where it is weighed by itself. Default null.</summary>
        public JoinedSurveys? Room { get; init; }

        internal SurveyedOutline Draw(ReadingPlace place) => Room is { } room ? SurveyToOutline.Draw(room, place) : SurveyToOutline.Draw(Survey, place);
    }

    /// <summary>By readings of a wall with four sides.</summary>
    /// <param name="Readings">What was read.</param>
    /// <param name="Foot">The lower edge, where no fixture stands.</param>
    /// <param name="Right">The right edge.</param>
    /// <param name="Head">The upper edge.</param>
    /// <param name="Left">The left edge.</param>
    /// <param name="Fixtures">What stands at the foot or hangs at the head, in any order.</param>
    public sealed record Read(FaceReadings Readings, Edge Foot, Edge Right, Edge Head, Edge Left, Sequence<Fixture> Fixtures) : FaceShape;
}

/// <summary>A box that stands at a wall's foot, or hangs from its head, and keeps the tile off: a bath, a bench, a soffit, a doorway.</summary>
/// <param name="Name">Its name; its edges on the face are <c>name</c>, <c>name.left</c> and <c>name.right</c>.</param>
/// <param name="AtHead">Whether it hangs from the head.</param>
/// <param name="From">Where it begins, from the left corner at the foot.</param>
/// <param name="To">Where it ends; null when it reaches the right corner.</param>
/// <param name="HeightLeft">How high above y = 0 its tiled edge runs at its left end.</param>
/// <param name="HeightRight">The same at its right end.</param>
/// <param name="Edge">The level edge the tile meets.</param>
/// <param name="Side">Its upright edges.</param>
public sealed record Fixture(string Name, bool AtHead, Length From, Length? To, Length HeightLeft, Length HeightRight, Edge Edge, Edge Side)
{
    /// <summary>How it may be moved and resized; null when it is settled.</summary>
    public FixtureRange? Range { get; init; }
}

/// <summary>A hole in a face with edges of its own.</summary>
/// <param name="Name">Its name; its edges on the face are <c>name.edge</c>.</param>
/// <param name="Ring">Its corners on the face, counter-clockwise.</param>
/// <param name="Edges">One for each side, in the ring's order, the chords of an arc with the same; a rectangle's are <c>bottom</c>, <c>right</c>, <c>top</c>, <c>left</c>.</param>
public sealed record Opening(string Name, Ring Ring, Sequence<Edge> Edges)
{
    /// <summary>How it may be moved and resized, of a rectangle; null when it is settled.</summary>
    public OpeningRange? Range { get; init; }

    /// <summary>How deep a niche is, from the front of its wall's board to the front of the board at its back; null, the default, where its lining is not planned.</summary>
    public Length? Depth { get; init; }
}

/// <summary>A round penetration: a pipe, a valve, a drain.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Centre">Its middle on the face.</param>
/// <param name="Diameter">The hole to be drilled, clearance included; more than zero.</param>
public sealed record Hole(string Name, Point Centre, Length Diameter)
{
    /// <summary>The spot of the face's survey that it stands at, in place of <see cref="Centre"/>; null, the default, where its middle was measured on the face.</summary>
    public string? Spot { get; init; }

    /// <summary>How much of the diameter, on either side, is clearance round what goes through; default zero.</summary>
    public Length Clearance { get; init; }

    /// <summary>How much tile must stand between the hole and a side of the tile it is drilled in; null where nothing is asked.</summary>
    public Length? EdgeClear { get; init; }
}
