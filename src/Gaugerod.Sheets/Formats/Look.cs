using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Formats;

/// <summary>A colour of the sheet.</summary>
internal readonly record struct Colour(byte Red, byte Green, byte Blue)
{
    public string Hex => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"#{Red:x2}{Green:x2}{Blue:x2}");
}

/// <summary>Fine parallel lines over a fill.</summary>
/// <param name="Angle">Degrees counter-clockwise from level.</param>
/// <param name="Spacing">Millimetres between two lines.</param>
/// <param name="Crossed">Whether a second set crosses the first square.</param>
/// <param name="Dash">Length of dash and gap in millimetres; null for unbroken lines.</param>
internal sealed record Hatch(double Angle, double Spacing, bool Crossed = false, double? Dash = null);

/// <summary>How a line is drawn.</summary>
/// <param name="Colour">Its colour.</param>
/// <param name="Width">Its width in millimetres.</param>
/// <param name="Dashes">Dash and gap in turn, in millimetres; empty for an unbroken line.</param>
internal sealed record Nib(Colour Colour, double Width, params double[] Dashes);

/// <summary>The look: paper white, graphite lines, one chalk-blue accent for lines to snap, clay for tile, a hatch of its own for each fill.</summary>
internal static class Look
{
    public const double HatchWidth = 0.13;

    public static readonly Colour HatchColour = new(0x8a, 0x5a, 0x3c);

    private static readonly Colour Graphite = new(0x2a, 0x2c, 0x30);
    private static readonly Colour Quiet = new(0x5a, 0x5e, 0x66);
    private static readonly Colour Chalk = new(0x1c, 0x62, 0xa6);

    public static Colour? Of(Fill fill) => fill switch
    {
        Fill.None => null,
        Fill.Wall => new(0xf1, 0xf0, 0xee),
        Fill.Full => new(0xfa, 0xf4, 0xee),
        Fill.Straight => new(0xf1, 0xdc, 0xca),
        Fill.Corner => new(0xea, 0xca, 0xb0),
        Fill.Notch => new(0xe6, 0xbf, 0xa0),
        Fill.Slot => new(0xee, 0xd0, 0xb4),
        Fill.Hole => new(0xf4, 0xe4, 0xd4),
        Fill.Taper => new(0xec, 0xd3, 0xc0),
        Fill.Shaped => new(0xe2, 0xb8, 0x98),
        Fill.Fixture => new(0xc9, 0xcb, 0xce),
        Fill.Opening => new(0xff, 0xff, 0xff),
        Fill.Offcut => new(0xff, 0xff, 0xff),
        Fill.High => new(0xec, 0xcd, 0xb4),
        Fill.Low => new(0xd7, 0xde, 0xe6),
        Fill.Band => new(0xea, 0xea, 0xe8),
        Fill.Paper => new(0xff, 0xff, 0xff),
        Fill.Ink => Graphite,
        _ => throw new ArgumentOutOfRangeException(nameof(fill), fill, "No look for this fill."),
    };

    public static Hatch? HatchOf(Fill fill) => fill switch
    {
        Fill.Straight => new(45, 2.0),
        Fill.Corner => new(45, 2.6, Crossed: true),
        Fill.Notch => new(0, 1.6),
        Fill.Slot => new(90, 1.6),
        Fill.Hole => new(0, 1.8, Dash: 0.5),
        Fill.Taper => new(135, 1.3),
        Fill.Shaped => new(0, 2.2, Crossed: true),
        Fill.Offcut => new(45, 3.2, Dash: 0.9),
        Fill.High => new(45, 1.4),
        Fill.Low => new(0, 1.8, Dash: 0.8),
        _ => null,
    };

    public static Nib Of(Stroke stroke) => stroke switch
    {
        Stroke.Outline => new(Graphite, 0.35),
        Stroke.TileEdge => new(Quiet, 0.12),
        Stroke.CutEdge => new(Graphite, 0.22),
        Stroke.FixtureEdge => new(Graphite, 0.3),
        Stroke.FoldLine => new(Graphite, 0.3, 3, 1, 0.6, 1),
        Stroke.SnapLine => new(Chalk, 0.5),
        Stroke.Dimension => new(Graphite, 0.16),
        Stroke.Leader => new(Graphite, 0.14),
        Stroke.Ghost => new(Quiet, 0.16, 1.2, 0.8),
        Stroke.Rule => new(new(0xb4, 0xb6, 0xba), 0.15),
        Stroke.TickBox => new(Graphite, 0.3),
        Stroke.Bar => new(Graphite, 0.3),
        _ => throw new ArgumentOutOfRangeException(nameof(stroke), stroke, "No look for this line."),
    };

    public static Colour Of(Ink ink) => ink switch
    {
        Ink.Body => Graphite,
        Ink.Quiet => Quiet,
        Ink.SnapLine => Chalk,
        Ink.OnInk => new(0xff, 0xff, 0xff),
        _ => throw new ArgumentOutOfRangeException(nameof(ink), ink, "No look for these letters."),
    };
}
