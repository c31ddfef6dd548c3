namespace Gaugerod.App.Stations.Measure;

/// <summary>Where figures stand in a drawing, so that none is written over another.</summary>
/// <param name="wide">How wide the drawing is.</param>
/// <param name="high">How high.</param>
internal sealed class FigureRoom(double wide, double high)
{
    private readonly List<(double Left, double Top, double Right, double Bottom)> _taken = [];

    /// <summary>Takes room around a middle.</summary>
    public void Take(double x, double y, double width, double height) => _taken.Add(Box(x, y, width, height));

    /// <summary>The first of some places that is free, else the one that covers least; it is then taken.</summary>
    public (double X, double Y) Place(IEnumerable<(double X, double Y)> places, double width, double height)
    {
        var best = (X: 0.0, Y: 0.0, Over: double.MaxValue);
        foreach (var (px, py) in places)
        {
            var (x, y) = (Math.Clamp(px, Math.Min(width / 2, wide / 2), Math.Max(wide - (width / 2), wide / 2)), Math.Clamp(py, height / 2, high - (height / 2)));
            var box = Box(x, y, width, height);
            var over = _taken.Sum(other => Math.Max(0, Math.Min(box.Right, other.Right) - Math.Max(box.Left, other.Left)) * Math.Max(0, Math.Min(box.Bottom, other.Bottom) - Math.Max(box.Top, other.Top)));
            if (over >= best.Over) continue;
            best = (x, y, over);
            if (over == 0) break;
        }

        Take(best.X, best.Y, width, height);
        return (best.X, best.Y);
    }

    private static (double Left, double Top, double Right, double Bottom) Box(double x, double y, double width, double height) => (x - (width / 2), y - (height / 2), x + (width / 2), y + (height / 2));
}
