using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Bases;

/// <summary>Reckons the bed of a floor that falls.</summary>
internal static class BedMaker
{
    /// <summary>The bed; null where none is asked for, or, with remarks, where it cannot fall so.</summary>
    /// <param name="face">The floor as measured.</param>
    /// <param name="falls">How it is to fall.</param>
    /// <param name="remarks">Takes what is wrong.</param>
    public static Bed? Make(DrawnFace face, Falls falls, Remarks remarks)
    {
        if (falls.Bed is not { } request || BedDrains.Of(face, falls, remarks) is not { } drains) return null;
        var surface = Surface(face, request, drains);
        var (paths, floor) = (surface.Paths, surface.Paths.Floor);
        if (!BedChecks.Hold(face, falls, paths, surface, remarks)) return null;
        var (area, falling) = (floor.Area, surface.Falls);
        var ways = BedStakes.Ways(face.Outline, paths, surface, remarks.Tape).ToSequence();
        var stakes = BedStakes.Of(face.Outline, request.Toward is null ? drains : [], ways, remarks.Tape).Select(stake =>
        {
            var over = Of(surface.At(Place.Of(stake.Place)));
            return new Stake(stake.On, stake.Along, stake.Place, over, request.Least + over);
        });
        return new(face.Face.Name, request, drains, area, surface.Volume + (area * (double)request.Least.Millimetres), request.Least + Of(surface.Rise), Of(surface.Catchment.Farthest))
        {
            LeastFall = falling.Least,
            GreatestFall = falling.Most,
            Nearest = Of(surface.Catchment.Nearest.Length),
            SteepestFrom = request.Perimeter == Perimeter.Level && surface.Catchment.Nearest.Side is var side && side >= 0 && side < face.Outline.Sides.Count ? face.Outline.Sides[side].Name : null,
            Ways = ways,
            Edges = BedEdges.Of(face.Outline, surface).ToSequence(),
            Stakes = stakes.ToSequence(),
        };
    }

    /// <summary>How high it stands anywhere.</summary>
    public static BedSurface Surface(DrawnFace face, BedRequest request, IReadOnlyList<FoldLine> drains)
    {
        var middles = drains.Where(drain => drain.From == drain.To).Select(drain => Place.Of(drain.From));
        var channels = drains.Where(drain => drain.From != drain.To).Select(drain => new Channel(Place.Of(drain.From), Place.Of(drain.To)));
        return new(new WaterPaths(BedDrains.Floor(face, drains), middles, [.. channels]), request.Perimeter, request.Fall);
    }

    /// <summary>The nearest step; what all but lies in the middle of two goes up, so that every machine says the same.</summary>
    internal static Length Of(double millimetres) => Grid.Nearest((millimetres * Length.StepsPerMillimetre) + 1e-6);
}
