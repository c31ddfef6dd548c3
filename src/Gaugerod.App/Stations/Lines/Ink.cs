using System.Globalization;
using System.Text;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.App.Stations.Lines;

/// <summary>Writes shapes of one face as SVG path text, in tenths of a millimetre, x to the right and y down from the picture's upper left.</summary>
/// <param name="left">Where the picture begins, on the face.</param>
/// <param name="top">Where it ends above, on the face.</param>
internal sealed class Ink(Length left, Length top)
{
    private const long Unit = Length.StepsPerMillimetre / 10;

    private readonly StringBuilder _path = new();

    /// <summary>A length in the picture's units.</summary>
    public static long Units(Length length) => length.Steps / Unit;

    public long X(Length x) => Units(x - left);

    public long Y(Length y) => Units(top - y);

    /// <summary>The way back: a length on the face of a place in the picture.</summary>
    public Length FaceX(double x) => left + Length.FromSteps((long)(x * Unit));

    public Length FaceY(double y) => top - Length.FromSteps((long)(y * Unit));

    public Ink Box(Box box)
    {
        var (x, y, w, h) = (X(box.Left), Y(box.Top), Units(box.Width), Units(box.Height));
        _path.Append(CultureInfo.InvariantCulture, $"M{x} {y}h{w}v{h}h{-w}z");
        return this;
    }

    public Ink Ring(Ring ring)
    {
        var letter = 'M';
        foreach (var point in ring.Points)
        {
            _path.Append(CultureInfo.InvariantCulture, $"{letter}{X(point.X)} {Y(point.Y)}");
            letter = 'L';
        }

        _path.Append('z');
        return this;
    }

    public Ink Line(Point from, Point to)
    {
        _path.Append(CultureInfo.InvariantCulture, $"M{X(from.X)} {Y(from.Y)}L{X(to.X)} {Y(to.Y)}");
        return this;
    }

    public Ink Circle(Point centre, Length diameter)
    {
        var r = Units(diameter) / 2;
        _path.Append(CultureInfo.InvariantCulture, $"M{X(centre.X) - r} {Y(centre.Y)}a{r} {r} 0 1 0 {2 * r} 0a{r} {r} 0 1 0 {-2 * r} 0z");
        return this;
    }

    public Ink Rings(IEnumerable<Ring> rings)
    {
        foreach (var ring in rings) Ring(ring);
        return this;
    }

    public Ink Polygon(Polygon area) => Ring(area.Outer).Rings(area.Inner);

    public override string ToString() => _path.ToString();
}
