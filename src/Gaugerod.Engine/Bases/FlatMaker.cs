using System.Globalization;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Surveys;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Bases;

/// <summary>Reckons how flat a face is from readings.</summary>
internal static class FlatMaker
{
    /// <summary>How flat it is; null, with remarks, where the readings cannot be used.</summary>
    /// <param name="face">The face as measured.</param>
    /// <param name="read">What was read.</param>
    /// <param name="limits">What is allowed for its tile.</param>
    /// <param name="remarks">Takes what is wrong.</param>
    public static FlatFace? Make(DrawnFace face, FlatReadings read, Sequence<GapLimit> limits, Remarks remarks)
    {
        var readings = Readings(read);
        if (!AreOn(face, read, readings, remarks)) return null;
        var ofPlane = (read.Grid is { } grid ? Profiles.Of(grid) : []).Concat(Profiles.Of(read.Points)).ToList();
        var profiles = ofPlane.Concat(read.Laid.Select(Profiles.Of)).ToList();
        var lengths = Lengths(remarks.Tape, limits);
        var gaps = lengths.Select(over => Worst(profiles, over, limits)).ToList();
        var flat = new FlatFace(face.Face.Name, [], gaps.OfType<WorstGap>().ToSequence()) { Untold = lengths.Where((_, i) => gaps[i] is null).ToSequence() };
        if (readings.Count < 3 || Plane(readings) is not { } plane) return flat;
        var off = readings.ConvertAll(plane.Off);
        var (high, low) = (off.Max(), off.Min());
        var triangles = Triangles(off);
        var raises = flat.Gaps.All(gap => gap.IsWithin) ? null : Filler.Raises(readings.ConvertAll(reading => Place.Of(reading.At)), [.. off], ofPlane, limits);
        return flat with
        {
            Fills = (raises ?? []).Select(BedMaker.Of).ToSequence(),
            ToStraightedges = raises is null ? null : Filled(raises),
            Spots = readings.Select((reading, i) => new FlatSpot(reading.At, reading.Out, BedMaker.Of(off[i]))).ToSequence(),
            Slope = (plane.Right, plane.Up),
            Facets = triangles.Select(triangle => new Facet(Corner(triangle.A), Corner(triangle.B), Corner(triangle.C))).ToSequence(),
            ToHighs = To(high, 0),
            ToLimit = limits.Count > 0 ? To(high - (double)limits[0].Most.Millimetres, (double)limits[0].Most.Millimetres) : null,
        };

        List<(Stand A, Stand B, Stand C)> Triangles(IReadOnlyList<double> stands)
        {
            if (read.Points.Count > 0) return [.. ReadSurface.Of([.. readings.Select((reading, i) => new Stand(Place.Of(reading.At), stands[i]))])];
            var numbers = readings.Select((reading, i) => (reading.At, i)).ToDictionary(one => one.At, one => one.i);
            return [.. ReadSurface.Of(read.Grid!, reading => stands[numbers[reading.At]])];
        }

        // What is filled is as a face that lies so far under its plane.
        Levelling Filled(double[] raises)
        {
            var (area, volume) = ReadSurface.Under(Triangles([.. raises.Select(raise => -raise)]), 0);
            return new(area, volume, BedMaker.Of(raises.Max()), Length.Zero);
        }

        static FacetCorner Corner(Stand stand) => new(At(stand.At), BedMaker.Of(stand.Off));

        Levelling To(double level, double allowed)
        {
            var (area, volume) = ReadSurface.Under(triangles, level);
            return new(area, volume, BedMaker.Of(Math.Max(0, level - low)), BedMaker.Of(Math.Max(0, high - low - allowed)));
        }
    }

    /// <summary>The straightedges: 10 ft, 2 m, 24 in and 12 in, or 3 m, 2 m, 600 and 300 mm.</summary>
    private static IReadOnlyList<Length> Lengths(Tape tape, Sequence<GapLimit> limits)
    {
        Length[] usual = tape.Unit == LengthUnit.Inch
            ? [Length.FromInches(120), Length.FromMillimetres(2000), Length.FromInches(24), Length.FromInches(12)]
            : [Length.FromMillimetres(3000), Length.FromMillimetres(2000), Length.FromMillimetres(600), Length.FromMillimetres(300)];
        return [.. usual.Concat(limits.Select(limit => limit.Over)).Distinct().OrderDescending()];
    }

    private static List<FlatReading> Readings(FlatReadings read)
    {
        var readings = new List<FlatReading>();
        if (read.Grid is { } grid)
        {
            for (var row = 0; row < grid.Rows.Count; row++) readings.AddRange(grid.Rows[row].Select((_, column) => Profiles.At(grid, column, row)));
        }

        readings.AddRange(read.Points);
        return readings;
    }

    private static WorstGap? Worst(List<Profile> profiles, Length over, Sequence<GapLimit> limits)
    {
        var length = (double)over.Millimetres;
        var (hollow, hump) = (((Sag Worst, Profile Along)?)null, ((Sag Worst, Profile Along)?)null);
        foreach (var profile in profiles)
        {
            if (Straightedge.Worst(profile, length) is { } gap && (hollow is null || gap.By > hollow.Value.Worst.By)) hollow = (gap, profile);
            var turned = profile with { Out = Array.ConvertAll(profile.Out, height => -height) };
            if (Straightedge.Worst(turned, length) is { } rise && (hump is null || rise.By > hump.Value.Worst.By)) hump = (rise, turned);
        }

        if (hollow is not { } down || hump is not { } up) return null;
        var (worse, along) = up.Worst.By > down.Worst.By ? up : down;
        var (first, last) = (Array.IndexOf(along.Places, worse.From), Array.IndexOf(along.Places, worse.To));
        return new(over, BedMaker.Of(down.Worst.By), BedMaker.Of(up.Worst.By), At(worse.From), At(worse.To), At(worse.At))
        {
            Limit = limits.FirstOrDefault(limit => limit.Over == over),
            Places = Enumerable.Range(first, last - first + 1).Select(i => (BedMaker.Of(along.Along[i] - along.Along[first]), BedMaker.Of(Straightedge.Over(along, first, last, i)))).ToSequence(),
        };
    }

    private static Point At(Place place) => Nearby.Of((place.X * Length.StepsPerMillimetre, place.Y * Length.StepsPerMillimetre));

    private sealed record BestPlane(Place Middle, double Mean, double Right, double Up)
    {
        public double Off(FlatReading reading)
        {
            var place = Place.Of(reading.At) - Middle;
            return (double)reading.Out.Millimetres - Mean - (Right * place.X) - (Up * place.Y);
        }
    }

    /// <summary>The plane from which the squares of what the readings are off add up to the least; null where all lie on one line.</summary>
    private static BestPlane? Plane(List<FlatReading> readings)
    {
        var places = readings.ConvertAll(reading => Place.Of(reading.At));
        var middle = new Place(places.Average(place => place.X), places.Average(place => place.Y));
        double[][] columns = [[.. places.Select(_ => 1.0)], [.. places.Select(place => place.X - middle.X)], [.. places.Select(place => place.Y - middle.Y)]];
        var squares = new LeastSquares(columns, 1e-6);
        if (squares.Rank < 3) return null;
        var solved = squares.Solve([.. readings.Select(reading => (double)reading.Out.Millimetres)]);
        return new(middle, solved[0], solved[1], solved[2]);
    }

    private static bool AreOn(DrawnFace face, FlatReadings read, List<FlatReading> readings, Remarks remarks)
    {
        var bounds = face.Outline.Ring.Bounds;
        var before = remarks.Faults.Count;
        var path = face.Path + ".flatness";
        var ofGrid = readings.Count - read.Points.Count;
        if (readings.Take(ofGrid).Select(reading => (Point?)reading.At).FirstOrDefault(at => !IsOn(at!.Value)) is { } grid)
        {
            remarks.Refuse(path + ".grid", $"a grid with a reading at {DrainChecks.Say(grid, remarks)}, off the face \"{face.Face.Name}\"", "a grid that lies on the face", "another \"from\" or \"step\", or fewer readings");
        }

        for (var i = 0; i < read.Points.Count; i++) Check(string.Create(CultureInfo.InvariantCulture, $"{path}.points[{i}].at"), read.Points[i].At);
        for (var i = 0; i < read.Laid.Count; i++)
        {
            Check(string.Create(CultureInfo.InvariantCulture, $"{path}.straightedge[{i}].from"), read.Laid[i].From);
            Check(string.Create(CultureInfo.InvariantCulture, $"{path}.straightedge[{i}].to"), read.Laid[i].To);
        }

        return remarks.Faults.Count == before;

        bool IsOn(Point at) => RingChecks.Locate(face.Outline.Ring, at) != Whereabouts.Outside || Nearby.Off(face.Outline.Ring, at).Distance <= Math.Max(remarks.Tape.Mark.Steps, Length.FromMillimetres(3).Steps);

        void Check(string at, Point place)
        {
            if (IsOn(place)) return;
            var inside = new Point(Length.Max(bounds.Left, Length.Min(bounds.Right, place.X)), Length.Max(bounds.Bottom, Length.Min(bounds.Top, place.Y)));
            remarks.Refuse(at, $"{DrainChecks.Say(place, remarks)}, off the face \"{face.Face.Name}\"", "a place on the face", IsOn(inside) ? DrainChecks.Say(inside, remarks) : null);
        }
    }
}
