using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Trims;

/// <summary>Finds the strips that are asked for round the fields of a run, and settles their corners.</summary>
internal static class Strips
{
    /// <summary>The strips of a run's faces, in the order of faces and edges.</summary>
    public static List<Strip> Of(IReadOnlyList<TrimmedFace> run, Func<string, TrimProduct> product, TrimRemarks remarks)
    {
        var byFace = run.Select(face => Of(face, product, remarks)).ToList();
        for (var i = 1; i < byFace.Count; i++)
        {
            // One bar stands on a corner, though both its edges may name it.
            if (byFace[i - 1].Exists(strip => OnCorner(strip, atRight: true))) byFace[i].RemoveAll(strip => OnCorner(strip, atRight: false));
            WallCorner.Settle(byFace[i - 1], byFace[i], remarks);
        }

        return [.. byFace.SelectMany(strips => strips)];
    }

    private static List<Strip> Of(TrimmedFace face, Func<string, TrimProduct> product, TrimRemarks remarks)
    {
        var strips = new List<Strip>();
        foreach (var ring in Rings(face.Face.Edges))
        {
            Straighten(ring);
            var n = ring.Count;
            var products = ring.ConvertAll(edge => edge.Trimmed is { } asked && product(asked.Of) is { IsWorked: false } of ? of : null);
            var corners = Enumerable.Range(0, n).Select(i => StripCorner.Of(ring[i], products[i], ring[(i + 1) % n], products[(i + 1) % n])).ToList();
            for (var i = 0; i < n; i++)
            {
                if (products[i] is not { } of) continue;
                if (ring[i].IsRound)
                {
                    remarks.RoundEdge(face.Face.Name, ring[i].Name);
                    continue;
                }

                strips.Add(new(face, ring[i], of, corners[(i + n - 1) % n].Begin!.Value, corners[i].End!.Value));
                if (products[(i + 1) % n] is { } next) CornerRemarks.Say(remarks, face.Face.Name, ring[i], of, ring[(i + 1) % n], next);
                CornerRemarks.Returns(remarks, strips[^1]);
                CornerRemarks.Leans(remarks, strips[^1]);
            }
        }

        strips.AddRange(face.Bands.Select(band => Across(face, band, product(band.Trimmed.Of), remarks)));
        return strips;
    }

    /// <summary>A band between two fields; it runs from right to left, so that the lower field lies to its left as a field does below a trim.</summary>
    private static Strip Across(TrimmedFace face, TrimmedBand of, TrimProduct product, TrimRemarks remarks)
    {
        var (band, joint, asked) = (of.Band, of.Joint, of.Trimmed);
        var box = band.Field.Outer.Bounds;
        if ((box.Height - product.Width).Abs() > remarks.Tape.Mark)
        {
            remarks.Add(
                FindingLevel.Warn, "trim-band", $"{face.Face.Name}, {band.Name}", $"The band is {remarks.Say(box.Height)} high between its joints and {product.Name} is {remarks.Say(product.Width)} wide. Nearest: \"to\" {remarks.Say(of.Foot + product.Width + joint)}, and what lies above from there on.",
                remarks.Say(product.Width), remarks.Say(box.Height));
        }

        var (above, below) = (box.Top + joint, box.Bottom - joint);
        var edge = new FieldEdge(new(box.Right, below), new(box.Left, below), band.Name, EdgeKind.Zone) { Trim = product.Width, Joint = joint, Trimmed = asked };
        var corners = band.Edges.Where(side => side.Kind != EdgeKind.Zone).ToList();
        return new(face, edge, product, Ending(atRight: true, asked.Right), Ending(atRight: false, asked.Left)) { Across = (new(box.Right, above), new(box.Left, above)) };

        StripEnd Ending(bool atRight, TrimEnding said)
        {
            var meets = corners.FirstOrDefault(side => side.To.Y > side.From.Y == atRight, edge);
            return new StripEnd(meets.Trimmed is null && meets.Kind is EdgeKind.Free or EdgeKind.OutsideCorner ? TrimEnd.Stop : TrimEnd.Hidden, 0, 0, meets).Finished(product, said);
        }
    }

    private static bool OnCorner(Strip strip, bool atRight) => strip.Edge.Kind == EdgeKind.OutsideCorner && strip.Edge.Hand == (atRight ? Hand.Right : Hand.Left);

    /// <summary>An edge that bends once has two strips, and what is asked for at an end is asked for where the edge ends and not at its bend.</summary>
    private static void Straighten(List<FieldEdge> ring)
    {
        for (var i = 0; i < ring.Count; i++)
        {
            var next = (i + 1) % ring.Count;
            if (ring[i].Trimmed is not { } asked || ring[next].Trimmed is not { } askedNext || ring[i].IsRound || !string.Equals(ring[i].Name, ring[next].Name, StringComparison.Ordinal)) continue;
            ring[i] = ring[i] with { Trimmed = asked with { Left = default } };
            ring[next] = ring[next] with { Trimmed = askedNext with { Right = default } };
        }
    }

    private static IEnumerable<List<FieldEdge>> Rings(Sequence<FieldEdge> edges)
    {
        var ring = new List<FieldEdge>();
        foreach (var edge in edges)
        {
            ring.Add(edge);
            if (edge.To != ring[0].From) continue;
            yield return ring;
            ring = [];
        }
    }
}
