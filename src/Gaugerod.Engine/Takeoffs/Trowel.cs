using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Takeoffs;

/// <summary>What the gap between two teeth of a trowel looks like from its end.</summary>
public enum NotchShape
{
    /// <summary>Straight down and straight across.</summary>
    Square,

    /// <summary>A half round at the bottom, as wide as the notch.</summary>
    Round,

    /// <summary>To a point.</summary>
    Vee,
}

/// <summary>A notched trowel, and how it is held.</summary>
/// <param name="Width">How wide a notch is at its mouth; 1 to 30 mm.</param>
/// <param name="Depth">How deep it is; 1 to 30 mm, and of a round one at least half its width.</param>
/// <param name="Tooth">How wide the tooth between two notches is; 0 to 30 mm, and 0 only where notches meet in points.</param>
public sealed record Trowel(Length Width, Length Depth, Length Tooth)
{
    /// <summary>What a notch looks like. Default square.</summary>
    public NotchShape Shape { get; init; }

    /// <summary>How far the trowel leans: the angle between its blade and the wall, 30 to 90 degrees. Default 45.</summary>
    public int Degrees { get; init; } = 45;

    /// <summary>
    /// How thick the ridges lie once they are pressed flat, in mm: what a notch lets through, spread over a notch and a tooth. A blade
    /// that leans lets less through, by the sine of its angle. Geometry, no source; docs/materials.md holds it against printed coverage.
    /// </summary>
    internal double Bed
    {
        get
        {
            var (wide, deep) = (Mm(Width), Mm(Depth));
            var opening = Shape switch
            {
                NotchShape.Round => (wide * deep) - (wide * wide * (0.5 - (Math.PI / 8))),
                NotchShape.Vee => wide * deep / 2,
                _ => wide * deep,
            };
            return opening / (wide + Mm(Tooth)) * Math.Sin(Degrees * Math.PI / 180);
        }
    }

    private static double Mm(Length length) => length.Steps / 3200.0;
}
