namespace Gaugerod.Engine.Surveys;

/// <summary>What a reading should come to where the corners stand, and how it changes as they move.</summary>
internal static class ReadingSlope
{
    /// <summary>What a reading should come to.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="places">x and y of every corner, one after another.</param>
    /// <param name="slope">Gets how it changes with each of them; as long as the places, and empty of anything.</param>
    public static double Of(in Reading reading, ReadOnlySpan<double> places, Span<double> slope)
    {
        var (first, second) = (reading.First, reading.Second);
        switch (reading.Of)
        {
            case ReadingOf.Across:
                return Apart(first, second, places, slope, 1, 0);
            case ReadingOf.Up:
                return Apart(first, second, places, slope, 0, 1);
            case ReadingOf.Length:
                var (fx, fy) = Place(first, places);
                var (sx, sy) = Place(second, places);
                var length = Math.Max(1e-9, Math.Sqrt(((sx - fx) * (sx - fx)) + ((sy - fy) * (sy - fy))));
                return Apart(first, second, places, slope, (sx - fx) / length, (sy - fy) / length);
            case ReadingOf.Off:
                return Off(first, second, places, slope);
            case ReadingOf.Crossing:
                return Crossing(first, second, reading.Third, places, slope);
            case ReadingOf.Alike:
                return Longer(second, 1, places, slope) + Longer(first, -1, places, slope);
            default:
                return Square(first, second, places, slope);
        }
    }

    /// <summary>Where a spot lies.</summary>
    public static (double X, double Y) Place(Spot spot, ReadOnlySpan<double> places)
    {
        var (x, y) = (places[2 * spot.From], places[(2 * spot.From) + 1]);
        if (spot.IsCorner) return (x, y);
        var (ux, uy, _) = Heading(spot.From, spot.Towards, places);
        return (x + (spot.Along * ux), y + (spot.Along * uy));
    }

    private static double Apart(Spot first, Spot second, ReadOnlySpan<double> places, Span<double> slope, double wx, double wy)
    {
        Add(second, wx, wy, places, slope);
        Add(first, -wx, -wy, places, slope);
        var (fx, fy) = Place(first, places);
        var (sx, sy) = Place(second, places);
        return ((sx - fx) * wx) + ((sy - fy) * wy);
    }

    // A spot moved by its corners, seen along w: the mark goes with its first corner, and swings about it with the other.
    private static void Add(Spot spot, double wx, double wy, ReadOnlySpan<double> places, Span<double> slope)
    {
        slope[2 * spot.From] += wx;
        slope[(2 * spot.From) + 1] += wy;
        if (spot.IsCorner) return;
        var (ux, uy, length) = Heading(spot.From, spot.Towards, places);
        var (along, share) = ((wx * ux) + (wy * uy), spot.Along / length);
        Swing(spot.From, spot.Towards, share * (wx - (along * ux)), share * (wy - (along * uy)), slope);
    }

    private static void Swing(int from, int towards, double x, double y, Span<double> slope)
    {
        slope[2 * towards] += x;
        slope[(2 * towards) + 1] += y;
        slope[2 * from] -= x;
        slope[(2 * from) + 1] -= y;
    }

    private static double Off(Spot line, Spot spot, ReadOnlySpan<double> places, Span<double> slope)
    {
        var (ux, uy, length) = Heading(line.From, line.Towards, places);
        var (x, y) = Place(spot, places);
        var (dx, dy) = (x - places[2 * line.From], y - places[(2 * line.From) + 1]);
        var (along, off) = ((dx * ux) + (dy * uy), (dy * ux) - (dx * uy));
        Add(spot, -uy, ux, places, slope);
        slope[2 * line.From] += uy;
        slope[(2 * line.From) + 1] -= ux;
        Swing(line.From, line.Towards, along / length * uy, -along / length * ux, slope);
        return off;
    }

    // With u from A to C and e from B to D: t = (B - A) x e / (u x e).
    private static double Crossing(Spot one, Spot from, Spot to, ReadOnlySpan<double> places, Span<double> slope)
    {
        var (ux, uy, length) = Heading(one.From, one.Towards, places);
        var (bx, by) = Place(from, places);
        var (dx, dy) = Place(to, places);
        var (px, py, ex, ey) = (bx - places[2 * one.From], by - places[(2 * one.From) + 1], dx - bx, dy - by);
        var over = (ux * ey) - (uy * ex);
        if (Math.Abs(over) < 1e-9) over = 1e-9;
        var along = ((px * ey) - (py * ex)) / over;
        Add(Spot.At(one.From), -ey / over, ex / over, places, slope);
        Add(from, (ey + py - (along * uy)) / over, (-ex - px + (along * ux)) / over, places, slope);
        Add(to, (-py + (along * uy)) / over, (px - (along * ux)) / over, places, slope);
        var (wx, wy) = (-along * ey / over, along * ex / over);
        var with = (wx * ux) + (wy * uy);
        Swing(one.From, one.Towards, (wx - (with * ux)) / length, (wy - (with * uy)) / length, slope);
        return along;
    }

    private static double Longer(Spot line, int sign, ReadOnlySpan<double> places, Span<double> slope)
    {
        var (ux, uy, length) = Heading(line.From, line.Towards, places);
        Swing(line.From, line.Towards, sign * ux, sign * uy, slope);
        return sign * length;
    }

    private static double Square(Spot corner, Spot other, ReadOnlySpan<double> places, Span<double> slope)
    {
        const double Arm = 1000;
        var (ux, uy, one) = Heading(corner.From, corner.Towards, places);
        var (vx, vy, two) = Heading(corner.From, other.From, places);
        var cosine = (ux * vx) + (uy * vy);
        Swing(corner.From, corner.Towards, Arm * (vx - (cosine * ux)) / one, Arm * (vy - (cosine * uy)) / one, slope);
        Swing(corner.From, other.From, Arm * (ux - (cosine * vx)) / two, Arm * (uy - (cosine * vy)) / two, slope);
        return Arm * cosine;
    }

    private static (double X, double Y, double Length) Heading(int from, int towards, ReadOnlySpan<double> places)
    {
        var (dx, dy) = (places[2 * towards] - places[2 * from], places[(2 * towards) + 1] - places[(2 * from) + 1]);
        var length = Math.Max(1e-9, Math.Sqrt((dx * dx) + (dy * dy)));
        return (dx / length, dy / length, length);
    }
}
