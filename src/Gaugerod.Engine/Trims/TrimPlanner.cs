using System.Globalization;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Trims;

/// <summary>Plans the trims of a job: its lines, their corners, their pieces and what they are cut from.</summary>
internal static class TrimPlanner
{
    /// <summary>The trims beside the fields of some runs, a line at a time: nothing until the last.</summary>
    /// <param name="runs">The faces of each run with their pieces, left to right.</param>
    /// <param name="products">The job's trims.</param>
    /// <param name="tape">How lengths are said.</param>
    public static IEnumerable<TrimPlan?> Steps(IEnumerable<IReadOnlyList<TrimmedFace>> runs, Sequence<TrimProduct> products, Tape tape)
    {
        var remarks = new TrimRemarks(tape);
        var lines = new List<PlannedTrim>();
        var number = 0;
        var all = runs.ToList();
        var strips = all.SelectMany(run => Strips.Of(run, Named, remarks)).ToList();
        var corners = new CornerPieces(strips);
        foreach (var strip in strips)
        {
            var line = Line(strip, strip.Line(), remarks, number);
            number += line.Pieces.Count + line.Returns.Count;
            lines.Add(line with { AtBegin = corners.At(strip, atEnd: false), AtEnd = corners.At(strip, atEnd: true) });
            yield return null;
        }

        var stocks = new List<TrimStock>();
        foreach (var product in products.Where(product => !product.IsWorked && lines.Exists(line => string.Equals(line.Product, product.Name, StringComparison.Ordinal))))
        {
            stocks.Add(StockCutting.Cut(product, lines));
            yield return null;
        }

        foreach (var face in all.SelectMany(run => run))
        {
            lines.AddRange(WorkedEdges.Of(face, Named));
            foreach (var edge in face.Face.Edges.Where(edge => edge.Trimmed is { } asked && Named(asked.Of).IsWorked)) WorkedEdges.Say(remarks, face, edge);
        }

        yield return new(lines.ToSequence(), stocks.ToSequence(), remarks.Findings.ToSequence());

        TrimProduct Named(string name) => products.First(product => string.Equals(product.Name, name, StringComparison.Ordinal));
    }

    private static PlannedTrim Line(Strip strip, TrimLine line, TrimRemarks remarks, int before)
    {
        var (taken, ways) = TrimWays.Of(strip, line, remarks);
        var pieces = new List<TrimPiece>();
        for (var i = 0; i < (taken?.Pieces.Count ?? 0); i++)
        {
            var piece = taken!.Pieces[i];
            var (first, last) = (i == 0, i == taken.Pieces.Count - 1);
            var (begin, end) = Ends(first ? line.Begin : null, last ? line.End : null, piece.Length < line.Stock);
            pieces.Add(new(Id(before + i + 1), Length.FromSteps(piece.From), Length.FromSteps(piece.To), begin, end, strip.Outline(piece))
            {
                MitreTakes = Length.FromSteps(first && last && line.Leans ? Math.Max(strip.Begin.Shortens, strip.End.Shortens) : (first ? strip.Begin.Shortens : 0) + (last ? strip.End.Shortens : 0)),
            });
        }

        return new(
            strip.Face.Face.Name, strip.Edge.Name, strip.Product.Name, strip.Edge.Trimmed!.Joints,
            strip.At(-strip.Begin.Long, strip.Edge.Joint.Steps), strip.At(strip.Side + strip.End.Long, strip.Edge.Joint.Steps), line.Begin, line.End, Length.FromSteps(line.Length),
            pieces.ToSequence(), line.Beside.Select(joint => Length.FromSteps(TrimLine.Half(joint.Middle))).ToSequence(), ways)
        {
            Returns = [.. Returns(strip, before + pieces.Count)],
        };
    }

    private static IEnumerable<TrimReturn> Returns(Strip strip, int before)
    {
        foreach (var (end, atLeft) in new[] { (strip.Begin, false), (strip.End, true) })
        {
            if (end.Return > 0) yield return new(Id(++before), atLeft, Length.FromSteps(end.Return), strip.Product.Thickness);
        }
    }

    private static string Id(int number) => string.Create(CultureInfo.InvariantCulture, $"t{number}");

    /// <summary>How a piece ends; null for an end at a joint. A sawn end goes where it does not show, and of two where neither shows it is the one in the corner.</summary>
    private static (PieceEnd Begin, PieceEnd End) Ends(TrimEnd? begin, TrimEnd? end, bool trimmed)
    {
        var (one, other) = (begin == TrimEnd.Mitre ? PieceEnd.Mitred : PieceEnd.Factory, end == TrimEnd.Mitre ? PieceEnd.Mitred : PieceEnd.Factory);
        if (!trimmed || one == PieceEnd.Mitred || other == PieceEnd.Mitred) return (one, other);
        var atBegin = begin is { } first ? !TrimCost.Shows(first) : end is { } last && TrimCost.Shows(last);
        return atBegin ? (PieceEnd.Sawn, PieceEnd.Factory) : (PieceEnd.Factory, PieceEnd.Sawn);
    }
}
