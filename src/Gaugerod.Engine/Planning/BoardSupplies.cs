using System.Globalization;
using Gaugerod.Engine.Boards;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>What is bought for boards: the sheets, and screws and tape by the pack where a board names them.</summary>
internal static class BoardSupplies
{
    /// <summary>The sheets.</summary>
    public static IEnumerable<OrderLine> Sheets(Job job, BoardPlan plan)
    {
        foreach (var stock in plan.Stocks)
        {
            var board = job.Boards.First(board => string.Equals(board.Name, stock.Product, StringComparison.Ordinal));
            var sure = stock.LowerBound == stock.Sheets.Count ? "no fewer give these pieces" : string.Create(CultureInfo.InvariantCulture, $"{stock.LowerBound} might do");
            var (area, sheet) = (plan.Faces.Where(face => face.Product == board).Sum(face => (decimal)face.Area), board.Width.Millimetres * board.Length.Millimetres);
            var flat = string.Create(CultureInfo.InvariantCulture, $"by area and 10 % it would be {TileOrder.ByArea(decimal.Round(area), 10, sheet).Packs}");
            yield return new Extra(board.Breakage, 0, null).Line(board.Name, "sheet", 1, stock.Sheets.Count, "board plan", $"{sure}; {flat}");
        }
    }

    /// <summary>Screws and tape, face by face, then the tape of inside corners.</summary>
    public static IEnumerable<(string Of, SupplyUse Use)> Of(Job job, BoardPlan plan)
    {
        foreach (var face in plan.Faces)
        {
            if (face.Product.Screws is { } screws) yield return (screws, new(face.Face, face.Screws, string.Create(CultureInfo.InvariantCulture, $"{face.Screws} screws in {Pieces(face)}")));
            if (face.Product.Tape is { } tape && face.SeamLength > Length.Zero) yield return (tape, new(face.Face, Metres(face.SeamLength), $"{Said(face.SeamLength)} of seams"));
            if (face.Product.Tape is { } lining) foreach (var niche in face.Niches) yield return (lining, new(face.Face, Metres(niche.Seams), $"{Said(niche.Seams)} of joints in {niche.Opening}"));
            if (face.Product.TapeMortar is { } mortar && face.SeamLength + face.NicheSeams is var seams && seams > Length.Zero) yield return (mortar.Of, Bedded(face.Face, seams, mortar));
        }

        // Which board's tape goes into a corner of two boards is nobody's question.
        if (plan.Corners > Length.Zero && plan.Faces.Where(face => face.Corners > Length.Zero).Select(face => face.Product.Tape).FirstOrDefault(name => name is not null) is { } of)
        {
            yield return (of, new("inside corners", Metres(plan.Corners), $"{Said(plan.Corners)}, a corner of two faces once"));
        }

        if (plan.Corners > Length.Zero && plan.Faces.Where(face => face.Corners > Length.Zero).Select(face => face.Product.TapeMortar).FirstOrDefault(mortar => mortar is not null) is { } bed)
        {
            yield return (bed.Of, Bedded("inside corners", plan.Corners, bed));
        }

        SupplyUse Bedded(string where, Length seams, SeamMortar mortar) => new(
            where, Metres(seams) * (double)mortar.Width.Millimetres * (double)mortar.Thickness.Millimetres / 1000,
            $"under {Said(seams)} of tape, {LengthText.Nearest(mortar.Width, job.Tape)} wide, {LengthText.Nearest(mortar.Thickness, job.Tape)} thick") { IsUnder = true };

        string Said(Length length) => Amounts.Distance(1000 * Metres(length), job.Tape);
    }

    private static string Pieces(BoardedFace face) => face.Cut.Count() is var count && count == 1 ? "1 piece" : string.Create(CultureInfo.InvariantCulture, $"{count} pieces");

    private static double Metres(Length length) => (double)length.Millimetres / 1000;
}
