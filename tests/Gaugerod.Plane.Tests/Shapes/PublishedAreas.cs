using System.Globalization;
using System.Text.Json;
using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;
using NetTopologySuite.Operation.Polygonize;
using NetTopologySuite.Triangulate.Polygon;
using Point = Gaugerod.Plane.Shapes.Point;
using Shape = NetTopologySuite.Geometries.Polygon;

namespace Gaugerod.Plane.Tests.Shapes;

/// <summary>An area of a published data set, in its own units.</summary>
/// <param name="Rings">Outlines counter-clockwise, holes clockwise.</param>
internal sealed record PublishedArea(List<(double X, double Y)[]> Rings)
{
    public double Area => Rings.Sum(PublishedAreas.Area);

    public double Width => Rings.SelectMany(r => r).Max(p => p.X) - Rings.SelectMany(r => r).Min(p => p.X);

    public double Height => Rings.SelectMany(r => r).Max(p => p.Y) - Rings.SelectMany(r => r).Min(p => p.Y);
}

/// <summary>A case of the clipping set: what is asked of a subject and a clip, and the area that was published for it.</summary>
internal sealed record PublishedClip(string Name, string Asked, string Filling, double Area, List<(double X, double Y)[]> Subjects, List<(double X, double Y)[]> Clips);

/// <summary>
/// Published polygons, read from tests/Data: clipping cases with their areas (Clipper2, Tests/Polygons.txt, BSL-1.0) and
/// polygons with holes (earcut, test/fixtures, ISC). Their licences lie beside them.
/// </summary>
internal static class PublishedAreas
{
    public static double Area((double X, double Y)[] ring) =>
        ring.Select((p, i) => (p.X * ring[(i + 1) % ring.Length].Y) - (ring[(i + 1) % ring.Length].X * p.Y)).Sum() / 2;

    /// <summary>
    /// The area that rings bound under a rule of filling, by the referee: the rings cut each other into faces, and how often
    /// they wind around a face says whether it belongs.
    /// </summary>
    public static Geometry Filled(List<(double X, double Y)[]> rings, string filling)
    {
        var lines = rings.Where(r => r.Distinct().Count() >= 3).Select(r => new LineString([.. r.Append(r[0]).Select(p => new Coordinate(p.X, p.Y))]));
        var faces = new Polygonizer();
        faces.Add(OverlayNGRobust.Overlay(new MultiLineString([.. lines]), null, SpatialFunction.Union));
        var kept = faces.GetPolygons().Where(face => Belongs(Winding(rings, face.InteriorPoint.Coordinate), filling)).ToArray();
        return OverlayNGRobust.Union((Geometry)new GeometryCollection(kept));
    }

    /// <summary>An area cut into triangles.</summary>
    public static IEnumerable<(double X, double Y)[]> Triangles(Geometry area)
    {
        if (area.IsEmpty) return [];
        var cut = new ConstrainedDelaunayTriangulator(area).GetResult();
        return Enumerable.Range(0, cut.NumGeometries).Select(i => Run(((Shape)cut.GetGeometryN(i)).ExteriorRing, 1));
    }

    /// <summary>An area's rings, each run the way it bounds.</summary>
    public static PublishedArea Of(Geometry area) => new([.. Enumerable.Range(0, area.NumGeometries).Select(area.GetGeometryN).OfType<Shape>()
        .Where(p => !p.IsEmpty).SelectMany(p => p.InteriorRings.Select(hole => Run(hole, -1)).Prepend(Run(p.ExteriorRing, 1)))]);

    public static IEnumerable<PublishedClip> Clips()
    {
        foreach (var block in File.ReadAllText(Path.Combine(Repo.Root, "tests/Data/clipping/Polygons.txt")).ReplaceLineEndings("\n").Split("CAPTION: ").Skip(1))
        {
            var lines = block.Split('\n', StringSplitOptions.TrimEntries);
            string Said(string word) => lines.First(l => l.StartsWith(word, StringComparison.Ordinal))[word.Length..].Trim();
            List<(double X, double Y)[]> Listed(string word) =>
                [.. lines.SkipWhile(l => l != word).Skip(1).TakeWhile(l => l.Length > 0 && !char.IsLetter(l[0])).Select(Ring)];
            yield return new(
                lines[0], Said("CLIPTYPE:"), Said("FILLRULE:"), double.Parse(Said("SOL_AREA:"), CultureInfo.InvariantCulture),
                Listed("SUBJECTS"), Listed("CLIPS"));
        }
    }

    /// <summary>Each polygon as it was given; where its rings cross or touch, as the referee mends it: the outline less all the holes. Null where nothing is left.</summary>
    public static IEnumerable<(string Name, bool Mended, PublishedArea? Area)> Polygons() =>
        from file in Directory.EnumerateFiles(Path.Combine(Repo.Root, "tests/Data/polygons"), "*.json").Order(StringComparer.Ordinal)
        let rings = JsonSerializer.Deserialize<double[][][]>(File.ReadAllText(file))!.Select(r => r.Select(p => (p[0], p[1])).ToArray()).ToList()
        let sound = Sound(rings)
        select (Path.GetFileNameWithoutExtension(file), sound is null, sound ?? Mended(rings));

    /// <summary>Rings of which none crosses itself or meets another, each in an even number of others an outline and in an odd number a hole.</summary>
    public static PublishedArea? Sound(List<(double X, double Y)[]> given)
    {
        // In thousandths of the set's unit, to ask our own exact answers; said-twice corners are left out.
        var rings = given.Select(r => r.Where((p, i) => p != r[(i + 1) % r.Length]).ToArray()).ToList();
        var exact = rings.ConvertAll(r => new Ring(r.Select(p => Point.FromSteps((long)Math.Round(p.X * 1000), (long)Math.Round(p.Y * 1000))).ToSequence()));
        if (rings.Count == 0 || exact.Exists(r => r.Points.Count < 3 || !RingChecks.IsSimple(r))) return null;
        if (exact.Where((r, i) => exact.Skip(i + 1).Any(other => RingChecks.FirstMeeting(r, other) is not null)).Any()) return null;
        var inside = exact.ConvertAll(r => exact.Count(other => other != r && RingChecks.Locate(other, r.Points[0]) == Whereabouts.Inside));
        return new([.. rings.Select((r, i) => Area(r) > 0 == (inside[i] % 2 == 0) ? r : [.. r.Reverse()])]);
    }

    private static PublishedArea? Mended(List<(double X, double Y)[]> rings)
    {
        var shapes = rings.Where(r => r.Distinct().Count() >= 3).Select(Fixed).ToList();
        if (shapes.Count == 0) return null;
        var left = shapes.Skip(1).Aggregate(shapes[0], (whole, hole) => whole.Difference(hole));
        return left.Area == 0 ? null : Of(left);
    }

    private static bool Belongs(int winding, string filling) => filling switch
    {
        "EVENODD" => winding % 2 != 0,
        "NONZERO" => winding != 0,
        "POSITIVE" => winding > 0,
        "NEGATIVE" => winding < 0,
        _ => throw new NotSupportedException(filling),
    };

    private static int Winding(List<(double X, double Y)[]> rings, Coordinate at)
    {
        var turns = 0;
        foreach (var ring in rings)
        {
            for (var i = 0; i < ring.Length; i++)
            {
                var (a, b) = (ring[i], ring[(i + 1) % ring.Length]);
                if (a.Y > at.Y == b.Y > at.Y) continue;
                var left = ((b.X - a.X) * (at.Y - a.Y)) - ((b.Y - a.Y) * (at.X - a.X)) > 0;
                if (left == b.Y > a.Y) turns += left ? 1 : -1;
            }
        }

        return turns;
    }

    private static Geometry Fixed((double X, double Y)[] ring) =>
        GeometryFixer.Fix(new Shape(new([.. ring.Append(ring[0]).Select(p => new Coordinate(p.X, p.Y))])));

    private static (double X, double Y)[] Run(LineString line, int way)
    {
        var ring = line.Coordinates.Skip(1).Select(c => (c.X, c.Y)).ToArray();
        return Math.Sign(Area(ring)) == way ? ring : [.. ring.Reverse()];
    }

    private static (double X, double Y)[] Ring(string line)
    {
        var numbers = line.Split([',', ' '], StringSplitOptions.RemoveEmptyEntries).Select(n => double.Parse(n, CultureInfo.InvariantCulture)).ToArray();
        return [.. numbers.Chunk(2).Where(p => p.Length == 2).Select(p => (p[0], p[1]))];
    }
}
