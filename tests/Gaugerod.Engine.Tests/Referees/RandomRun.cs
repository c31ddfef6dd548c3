using System.Globalization;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Tests.Referees;

/// <summary>A run of random faces, with a tile and a bond for it.</summary>
internal sealed record RandomRun(Sequence<FinishedFace> Faces, Product Product, BondRequest Bond, bool Restart, Length Joint)
{
    public Bond Laid => BondMaker.Straight(Bond, Product, Joint);

    /// <summary>
    /// After so many courses the tiling comes round again. With one move for all faces a run one way comes round at once, moved
    /// along by its step; where each upright face begins anew the move is shared and a face cannot make that up.
    /// </summary>
    public int Repeat => Bond switch
    {
        BondRequest.Running { Stepping: Stepping.BackAndForth } => 2,
        BondRequest.Running running when Restart && running.Lay == Lay.Upright => running.Denominator,
        _ => 1,
    };

    public bool IsSquare => Faces.All(face => face.Edges.All(edge => edge.From.X == edge.To.X || edge.From.Y == edge.To.Y));

    public RunProblem Problem(Limits limits, Sequence<Criterion> order, params Want[] wants) =>
        new(Faces, Product, Bond, Restart, JointRange.Only(Joint), limits, wants.ToSequence(), order, Tape.Millimetres);

    /// <summary>All of it in steps, so that a failing case can be drawn by hand.</summary>
    public override string ToString()
    {
        var faces = Faces.Select(face => string.Create(
            CultureInfo.InvariantCulture,
            $"{face.Name} at {face.Unrolled.Steps},{face.Raised.Steps}: {string.Join(' ', face.Edges.Select(e => $"{e.Name}:{e.From.X.Steps},{e.From.Y.Steps}>{e.To.X.Steps},{e.To.Y.Steps}"))}"
            + $" holes {string.Join(' ', face.Holes.Select(h => $"{h.Centre.X.Steps},{h.Centre.Y.Steps} d {h.Diameter.Steps}"))}"));
        return string.Create(
            CultureInfo.InvariantCulture,
            $"tile {Product.Width.Steps}x{Product.Height.Steps} joint {Joint.Steps} {Bond} restart {Restart}\n{string.Join('\n', faces)}");
    }
}
