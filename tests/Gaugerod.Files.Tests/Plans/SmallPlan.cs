using Gaugerod.Engine;
using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Layouts;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Files.Tests.Plans;

/// <summary>A plan put together by hand, with one of everything that a plan can hold; its numbers prove nothing.</summary>
internal static class SmallPlan
{
    public static Plan Make()
    {
        var job = Samples.Job("guest-shower");
        var run = job.Runs[0] with
        {
            Wants =
            [
                .. job.Runs[0].Wants, .. Samples.Job("cloakroom").Runs[0].Wants,
                new Want.JointAtHeight("west", Inches(18), true, 1), new Want.AtLeast(new("west", "head"), Inches(2), null, false, 4),
            ],
        };
        var placing = new Placing(Inches(1), Inches(3), Length.FromInches(0, 1, 8));
        var score = new Score(0, 2, 1, Length.FromInches(2, 1, 16), Inches(1), 5, 4, 1);
        var best = new Proposal(placing, [placing, placing, placing], score, run.Wants.Select((w, i) => new WantOutcome(w, i % 2 == 0, $"want {i}")).ToSequence(), "A full course on the bench, 2 1/16\" at the \"head\".");
        var other = best with { Why = "One cut fewer, but the smallest is 1 1/2 in." };
        var proof = new Proof(ProofKind.Exact, Length.FromInches(2, 1, 16), 1234, "No better place exists.");
        var plan = new RunPlan(
            run, best, proof, [other],
            [new SnapLine(Axis.Level, "west", Inches(18), "the bench top")],
            [new Rod(Axis.Plumb, "west", "the bench top", Inches(18), [-Inches(4), Length.Zero, Length.FromInches(4, 1, 16)])],
            [new FacePlan(West(), placing, Pieces())]);
        var cutting = new ProductCutting(
            "wall tile",
            [new CutTile(1, [new PieceInTile("A1", Square(0, 0, 12, 4), 0)]), new CutTile(2, [new PieceInTile("A2", Square(0, 0, 5, 4), 2)])],
            2, 2, [new PairingProof("width", 1, 0, 1, 1)], [new SawSetting(Inches(5), true, ["A2"])], ["A3"]);
        var order = new OrderLine("wall tile", 14, "tile", 24, 1, 2, 6, 6, 0, "2 in the cut plan, 6 for breakage, 6 to leave");
        var finding = new Finding(FindingLevel.Warn, "sliver", "west", "One cut is under 2 in.", "2 in", "1 1/2 in", "common practice, no source");
        return new Plan(job with { Runs = [run] }, [plan], [cutting], [order], [finding]);
    }

    private static FinishedFace West()
    {
        var outline = Square(0, 0, 36, 96);
        var hole = Square(7, 42, 19, 66);
        return new FinishedFace(
            "west", outline, [new NamedRing("niche", hole)], [new Hole("valve", Point.FromSteps(1, 2), Inches(1))],
            new Polygon(outline, [hole]), [new FieldEdge(outline.Points[0], outline.Points[1], "tray", EdgeKind.Fixture)], Length.Zero, Length.Zero);
    }

    private static Sequence<Piece> Pieces() =>
    [
        new("A1", PieceKind.Full, "west", 2, 1, "wall tile", Square(0, 4, 12, 8).Bounds, Square(0, 4, 12, 8), [], Inches(4), []),
        new("A2", PieceKind.Straight, "west", 1, 1, "wall tile", Square(0, 0, 12, 4).Bounds, Square(0, 0, 5, 4), [], Inches(4), [new CutMark(TileSide.Right, Inches(5), Inches(5), Length.Zero, Inches(4), "right")]),
        new("A3", PieceKind.Hole, "west", 1, 2, "wall tile", Square(12, 0, 24, 4).Bounds, Square(12, 0, 24, 4), [Square(14, 1, 15, 2)], Inches(4), []),
    ];

    private static Ring Square(int left, int bottom, int right, int top) => Ring.Of(new Box(Inches(left), Inches(bottom), Inches(right), Inches(top)));

    private static Length Inches(int inches) => Length.FromInches(inches);
}
