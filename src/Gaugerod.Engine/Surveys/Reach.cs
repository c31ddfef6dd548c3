namespace Gaugerod.Engine.Surveys;

/// <summary>Where a tape can be pulled straight inside a shape.</summary>
/// <param name="places">x and y of its corners, counter-clockwise, and of other spots after them.</param>
/// <param name="corners">How many corners there are.</param>
internal sealed class Reach(double[] places, int corners)
{
    /// <summary>How long the side after a corner is, in mm.</summary>
    public double Side(int corner)
    {
        var ((ax, ay), (bx, by)) = (Corner(corner), Corner(corner + 1));
        return Math.Sqrt(((bx - ax) * (bx - ax)) + ((by - ay) * (by - ay)));
    }

    /// <summary>Whether nothing of the shape's sides stands between two spots, and the way lies inside.</summary>
    public bool Sees(Spot one, Spot other)
    {
        var (a, b) = (ReadingSlope.Place(one, places), ReadingSlope.Place(other, places));
        for (var side = 0; side < corners; side++)
        {
            if (Cross(a, b, Corner(side), Corner(side + 1))) return false;
        }

        return Contains(((a.X + b.X) / 2, (a.Y + b.Y) / 2));
    }

    /// <summary>Whether two strings cross well away from their ends, where it can be seen to a hair.</summary>
    public bool Crosses(in Reading strings)
    {
        const double Away = 100;
        var (a, c) = (ReadingSlope.Place(Spot.At(strings.First.From), places), ReadingSlope.Place(Spot.At(strings.First.Towards), places));
        var (b, d) = (ReadingSlope.Place(strings.Second, places), ReadingSlope.Place(strings.Third, places));
        var (ux, uy, ex, ey) = (c.X - a.X, c.Y - a.Y, d.X - b.X, d.Y - b.Y);
        var over = (ux * ey) - (uy * ex);
        var (one, other) = (Math.Sqrt((ux * ux) + (uy * uy)), Math.Sqrt((ex * ex) + (ey * ey)));

        // Flatter than one in two they cross anywhere.
        if (Math.Abs(over) < 0.45 * one * other) return false;
        var (along, across) = ((((b.X - a.X) * ey) - ((b.Y - a.Y) * ex)) / over * one, (((b.X - a.X) * uy) - ((b.Y - a.Y) * ux)) / over * other);
        return along > Away && along < one - Away && across > Away && across < other - Away;
    }

    private (double X, double Y) Corner(int corner) => (places[2 * (corner % corners)], places[(2 * (corner % corners)) + 1]);

    // Touching is not crossing: a tape may lie along a wall and start in its corner.
    private static bool Cross((double X, double Y) a, (double X, double Y) b, (double X, double Y) c, (double X, double Y) d) =>
        Side(a, b, c) * Side(a, b, d) < 0 && Side(c, d, a) * Side(c, d, b) < 0;

    private static int Side((double X, double Y) a, (double X, double Y) b, (double X, double Y) of)
    {
        var doubled = ((b.X - a.X) * (of.Y - a.Y)) - ((b.Y - a.Y) * (of.X - a.X));
        var length = Math.Sqrt(((b.X - a.X) * (b.X - a.X)) + ((b.Y - a.Y) * (b.Y - a.Y)));
        return Math.Abs(doubled) <= 1e-6 * length ? 0 : Math.Sign(doubled);
    }

    private bool Contains((double X, double Y) at)
    {
        var inside = false;
        for (var side = 0; side < corners; side++)
        {
            var (a, b) = (Corner(side), Corner(side + 1));
            if (Side(a, b, at) == 0 && ((at.X - a.X) * (at.X - b.X)) + ((at.Y - a.Y) * (at.Y - b.Y)) <= 0) return true;
            if (a.Y > at.Y != b.Y > at.Y && at.X < a.X + ((at.Y - a.Y) / (b.Y - a.Y) * (b.X - a.X))) inside = !inside;
        }

        return inside;
    }
}
