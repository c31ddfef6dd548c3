using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Takeoffs;

/// <summary>Something that stays in the room, and the lots that were noted of it.</summary>
/// <param name="Of">Its name.</param>
/// <param name="What">What it is: tile, trim, grout.</param>
/// <param name="Notes">The lots; none where nobody noted any.</param>
public sealed record UsedLots(string Of, string What, Sequence<LotNote> Notes);

/// <summary>What is left of a tile or a trim, by the plan. What really is left is counted on site.</summary>
/// <param name="Of">Its name.</param>
/// <param name="Unit">What one of it is, such as <c>tile</c>.</param>
/// <param name="Spares">How many were ordered to be left with the client.</param>
/// <param name="Over">How many more whole ones the last packs hold.</param>
/// <param name="Breakage">How many more are left where nothing broke: those ordered for that, and by a flat share.</param>
/// <param name="Offcuts">How many offcuts are large enough to keep.</param>
public sealed record LeftOver(string Of, string Unit, int Spares, int Over, int Breakage, int Offcuts);

/// <summary>A soft joint along an edge. A corner of two faces is one joint, said by the face where it measures longer.</summary>
/// <param name="Run">The run.</param>
/// <param name="Face">The face.</param>
/// <param name="Edge">The edge.</param>
/// <param name="Kind">What tile meets there.</param>
/// <param name="Width">How wide it is.</param>
/// <param name="Long">How long, in mm.</param>
/// <param name="With">The same corner's edges on other faces. Default none.</param>
public sealed record SoftEdge(string Run, string Face, string Edge, EdgeKind Kind, Length Width, double Long, Sequence<string> With);

/// <summary>What the client is handed over: what is in the plan beside what the setter noted.</summary>
/// <param name="Request">What the setter noted.</param>
/// <param name="Lots">What was used, noted or not, in the job's order.</param>
/// <param name="Left">What is left of tiles and trims.</param>
/// <param name="Soft">The soft joints along edges, face by face.</param>
/// <param name="Across">Those across fields.</param>
/// <param name="ToPhotograph">What is worth a photograph; none where one was noted.</param>
public sealed record HandedOver(
    HandOverRequest Request, Sequence<UsedLots> Lots, Sequence<LeftOver> Left, Sequence<SoftEdge> Soft, Sequence<MovementJoint> Across, Sequence<string> ToPhotograph);
