using System.Globalization;
using Gaugerod.App.Desk;
using Gaugerod.Engine.Surveys;

namespace Gaugerod.App.Stations.Measure;

/// <summary>Where the readings of a survey run in its drawing.</summary>
/// <param name="look">The survey.</param>
/// <param name="x">Where a place stands in the drawing.</param>
/// <param name="y">The same, downwards.</param>
internal sealed class ReadingLines(SurveyLook look, Func<Spot, double> x, Func<Spot, double> y)
{
    /// <summary>How far beside a side its reading is drawn, as a draughtsman does.</summary>
    private const double Off = 11;

    private const double Letter = 8.2;
    private const double Row = 16;

    // Where along a side a figure may stand, the best first; and along what runs across the face, clear of its middle, where the others cross.
    private static readonly double[] s_shares = [.5, .36, .64, .26, .74, .18, .82];
    private static readonly double[] s_across = [.33, .67, .27, .73, .4, .6, .2, .8, .5];

    private int Corners => look.Survey.Corners.Count;

    /// <summary>Whether it is read along one of the sides, straight from corner to corner.</summary>
    public bool IsSide(SurveyReading reading) =>
        reading.As is ReadAs.Straight && reading.First.At == reading.First.Towards && reading.Second.At == reading.Second.Towards && reading.First.At < Corners && reading.Second.At < Corners
        && ((reading.First.At + 1) % Corners == reading.Second.At || (reading.Second.At + 1) % Corners == reading.First.At);

    /// <summary>The letters of the corners, just outside them, and the names of other spots.</summary>
    public IEnumerable<(string Name, (double X, double Y) At)> Names()
    {
        for (var i = 0; i < look.Places.Count; i++)
        {
            var (px, py) = Screen(SurveySpot.Of(i));
            if (i >= Corners)
            {
                yield return (look.Places[i].Name, (px, py - 12));
                continue;
            }

            var (a, b) = (Outwards((i + Corners - 1) % Corners, i), Outwards(i, (i + 1) % Corners));
            var (ox, oy) = (a.X + b.X, a.Y + b.Y);
            var far = Math.Max(.3, Math.Sqrt((ox * ox) + (oy * oy)));
            yield return (look.Places[i].Name, (px + (ox / far * 15), py + (oy / far * 15)));
        }
    }

    /// <summary>Its line, as a path.</summary>
    public string Path(SurveyReading reading)
    {
        var (a, b) = Ends(reading);
        return reading.As is ReadAs.Strings
            ? $"{Move(a, Screen(new(reading.First.Towards, reading.First.Towards, default)))}{Move(Screen(reading.Second), Screen(reading.Third))}M{N(b.X - 4)} {N(b.Y)}a4 4 0 1 0 8 0a4 4 0 1 0 -8 0"
            : reading.As is ReadAs.Level or ReadAs.Plumb ? Move(a, b) + Move(b, Screen(reading.Second)) : Move(a, b);
    }

    /// <summary>Where its figure stands.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="room">Where figures stand already.</param>
    /// <param name="letters">How long it is.</param>
    /// <param name="rows">In how many rows it is written.</param>
    public (double X, double Y) Beside(SurveyReading reading, FigureRoom room, double letters, int rows)
    {
        var ((a, b), wide, high) = (Ends(reading), (letters * Letter) + 4, rows * Row);
        var (off, nx, ny) = (0.0, 0.0, 0.0);
        if (IsSide(reading))
        {
            (nx, ny) = Outwards(reading);
            off = (Math.Abs(nx) * wide / 2) + (Math.Abs(ny) * high / 2) + 3;
        }

        return room.Place((IsSide(reading) ? s_shares : s_across).Select(share => (a.X + ((b.X - a.X) * share) + (nx * off), a.Y + ((b.Y - a.Y) * share) + (ny * off))), wide, high);
    }

    /// <summary>Where readings that run straight across the face cross one another.</summary>
    public IEnumerable<(double X, double Y)> Crossings()
    {
        var across = look.Survey.Readings.Where(one => one.As is ReadAs.Straight && !IsSide(one)).Select(Ends).ToList();
        for (var i = 0; i < across.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                var ((a, b), (c, d)) = (across[i], across[j]);
                var (ux, uy, ex, ey) = (b.X - a.X, b.Y - a.Y, d.X - c.X, d.Y - c.Y);
                var over = (ux * ey) - (uy * ex);
                if (Math.Abs(over) < 1e-9) continue;
                var (one, other) = ((((c.X - a.X) * ey) - ((c.Y - a.Y) * ex)) / over, (((c.X - a.X) * uy) - ((c.Y - a.Y) * ux)) / over);
                if (one is > .05 and < .95 && other is > .05 and < .95) yield return (a.X + (ux * one), a.Y + (uy * one));
            }
        }
    }

    /// <summary>Where the name of a side stands, within it.</summary>
    public (double X, double Y) Inside(int from, int to, FigureRoom room, int letters)
    {
        var (a, b, wide) = (Screen(SurveySpot.Of(from)), Screen(SurveySpot.Of(to)), (letters * Letter) + 4);
        var (nx, ny) = Outwards(from, to);
        var off = -((Math.Abs(nx) * wide / 2) + (Math.Abs(ny) * Row / 2) + 4);
        return room.Place(s_shares.Select(share => (a.X + ((b.X - a.X) * share) + (nx * off), a.Y + ((b.Y - a.Y) * share) + (ny * off))), wide, Row);
    }

    private ((double X, double Y) From, (double X, double Y) To) Ends(SurveyReading reading)
    {
        var (a, b) = (Screen(reading.First), Screen(reading.Second));
        switch (reading.As)
        {
            case ReadAs.Level:
                return (a, (b.X, a.Y));
            case ReadAs.Plumb:
                return (a, (a.X, b.Y));
            case ReadAs.Off:
                var towards = Screen(SurveySpot.Of(reading.First.Towards));
                var (dx, dy) = (towards.X - a.X, towards.Y - a.Y);
                var along = (((b.X - a.X) * dx) + ((b.Y - a.Y) * dy)) / Math.Max(1e-9, (dx * dx) + (dy * dy));
                return ((a.X + (dx * along), a.Y + (dy * along)), b);
            case ReadAs.Strings:
                return (Screen(SurveySpot.Of(reading.First.At)), Crossing(reading));
            default:
                if (!IsSide(reading)) return (a, b);
                var (nx, ny) = Outwards(reading);
                return ((a.X + (nx * Off), a.Y + (ny * Off)), (b.X + (nx * Off), b.Y + (ny * Off)));
        }
    }

    private (double X, double Y) Crossing(SurveyReading strings)
    {
        var (a, c) = (Screen(SurveySpot.Of(strings.First.At)), Screen(SurveySpot.Of(strings.First.Towards)));
        var (b, d) = (Screen(strings.Second), Screen(strings.Third));
        var (ux, uy, ex, ey) = (c.X - a.X, c.Y - a.Y, d.X - b.X, d.Y - b.Y);
        var over = (ux * ey) - (uy * ex);
        var along = Math.Abs(over) < 1e-9 ? .5 : (((b.X - a.X) * ey) - ((b.Y - a.Y) * ex)) / over;
        return (a.X + (ux * along), a.Y + (uy * along));
    }

    private (double X, double Y) Screen(SurveySpot spot)
    {
        // The level line has a height only: it is reached straight up or down from wherever one stands.
        if (spot.At >= look.Places.Count) return (x(Sketch.Of(look.Places[0].Place)), y(new(0, (double)(look.Shape.LevelLine?.Millimetres ?? 0))));
        var from = Sketch.Of(look.Places[spot.At].Place);
        if (spot.Towards == spot.At) return (x(from), y(from));
        var towards = Sketch.Of(look.Places[spot.Towards].Place);
        var (dx, dy) = (towards.X - from.X, towards.Y - from.Y);
        var share = (double)spot.Along.Millimetres / Math.Max(1, Math.Sqrt((dx * dx) + (dy * dy)));
        var at = new Spot(from.X + (dx * share), from.Y + (dy * share));
        return (x(at), y(at));
    }

    // A side may have been read either way.
    private (double X, double Y) Outwards(SurveyReading side) =>
        (side.First.At + 1) % Corners == side.Second.At ? Outwards(side.First.At, side.Second.At) : Outwards(side.Second.At, side.First.At);

    // Counter-clockwise the outside lies at the right of the way; the drawing counts downwards.
    private (double X, double Y) Outwards(int from, int to)
    {
        var (a, b) = (Sketch.Of(look.Places[from].Place), Sketch.Of(look.Places[to].Place));
        var (dx, dy) = (b.X - a.X, b.Y - a.Y);
        var far = Math.Max(1, Math.Sqrt((dx * dx) + (dy * dy)));
        return (dy / far, dx / far);
    }

    private static string Move((double X, double Y) a, (double X, double Y) b) => $"M{N(a.X)} {N(a.Y)}L{N(b.X)} {N(b.Y)}";

    private static string N(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
