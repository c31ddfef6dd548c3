using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>What the job left open by a range: said before the first tile, and dimensioned where it is drawn, for it is built first.</summary>
public static class BuiltThings
{
    /// <summary>The things on the walls of a run.</summary>
    public static IReadOnlyList<ToBuild> Of(Plan plan, RunPlan run)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(run);
        return [.. plan.ToBuild.Where(thing => run.Faces.Any(face => string.Equals(face.Face.Wall, thing.Face, StringComparison.Ordinal)))];
    }

    internal static void Add(Flow flow, IReadOnlyList<ToBuild> things)
    {
        var rows = things.Select(thing => Block.Together(
            Block.Words($"{thing.Words}.", flow.Width, 10, bold: true, after: 0.3), Block.Words($"On {thing.Face}. {thing.From}", flow.Width, 8, ink: Ink.Quiet, after: 1))).ToList();
        flow.Add(Block.Heading("To build first", flow.Width), rows);
    }

    /// <summary>Dimensions a wall's openings and fixtures that were left open: from the left, from the foot, across and up.</summary>
    internal static void Dimension(Pen pen, FacePicture picture, Plan plan, PieceNumbers numbers, Figures figures)
    {
        var face = plan.Job.Faces.FirstOrDefault(face => string.Equals(face.Name, picture.Plan.Face.Wall, StringComparison.Ordinal));
        if (face is null) return;
        foreach (var opening in face.Openings.Where(opening => opening.Range is not null)) Box(opening.Ring.Bounds, opening.Range!.Under);
        foreach (var fixture in (face.Shape as FaceShape.Read)?.Fixtures.Where(fixture => fixture.Range is not null) ?? [])
        {
            var end = fixture.To ?? picture.Plan.Face.Outline.Bounds.Right;
            // Inside the fixture, beside its name.
            var quarter = fixture.From + Grid.HalfDown(Grid.HalfDown(end - fixture.From));
            if (fixture.Range!.From is not null && fixture.From > Length.Zero) Across(Length.Zero, fixture.From, fixture.HeightLeft);
            Across(fixture.From, end, fixture.HeightLeft, inside: true);
            Up(fixture.Range.Under, fixture.HeightLeft, quarter);
        }

        void Box(Box box, Length under)
        {
            var (middle, height) = (box.Left + Grid.HalfDown(box.Width), box.Bottom + Grid.HalfDown(box.Height));
            Across(Length.Zero, box.Left, height);
            Across(box.Left, box.Right, box.Bottom);
            Up(under, box.Bottom, middle);
            Up(box.Bottom, box.Top, box.Left);
        }

        void Across(Length from, Length to, Length height, bool inside = false)
        {
            var (one, other) = (picture.Map.At(new(from, height)), picture.Map.At(new(to, height)));
            numbers.KeepLine(one, other);
            numbers.Keep(Measures.Level(pen, one.X, other.X, one.Y + (inside ? 5 : -1.2), figures.Near(to - from), onPaper: true));
        }

        void Up(Length from, Length to, Length across)
        {
            var (low, high) = (picture.Map.At(new(across, Length.Min(from, to))), picture.Map.At(new(across, Length.Max(from, to))));
            numbers.KeepLine(low, high);
            numbers.Keep(Measures.Upright(pen, low.X + 1.5, high.Y, low.Y, $"{figures.Near((to - from).Abs())}{(to < from ? " below" : "")}", onPaper: true));
        }
    }
}
