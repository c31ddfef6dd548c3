using Gaugerod.Plane;

namespace Gaugerod.Sheets.Drawings;

/// <summary>Something drawn. Marks are laid down in order, the later over the earlier.</summary>
public abstract record Mark
{
    private Mark()
    {
    }

    /// <summary>An area.</summary>
    /// <param name="Rings">Its outline, then its holes; what lies inside an odd number of rings is filled.</param>
    /// <param name="Fill">What it stands for.</param>
    /// <param name="Edge">How it is outlined; null for not at all.</param>
    /// <param name="Name">The piece, the opening, the fixture it is; null when it has no name.</param>
    public sealed record Area(Sequence<Sequence<Spot>> Rings, Fill Fill, Stroke? Edge, string? Name) : Mark;

    /// <summary>A line of one or more straight parts.</summary>
    /// <param name="Spots">Its places; two or more.</param>
    /// <param name="Stroke">What it stands for.</param>
    public sealed record Line(Sequence<Spot> Spots, Stroke Stroke) : Mark;

    /// <summary>A line of text.</summary>
    /// <param name="At">A place on its baseline.</param>
    /// <param name="Words">What it says.</param>
    /// <param name="Size">Its size in points of 1/72 in.</param>
    /// <param name="Bold">Whether it is bold.</param>
    /// <param name="Anchor">Which part of the baseline the place is.</param>
    /// <param name="Turned">Degrees it is turned counter-clockwise about its place.</param>
    /// <param name="Ink">What it stands for.</param>
    public sealed record Text(Spot At, string Words, double Size, bool Bold, Anchor Anchor, double Turned, Ink Ink) : Mark;
}

/// <summary>A neutral picture: it knows neither a file format nor a screen. Lengths are millimetres on paper, y runs down.</summary>
/// <param name="Width">How wide the paper is, in millimetres.</param>
/// <param name="Height">How high the paper is, in millimetres.</param>
/// <param name="Title">What it is, in a few words.</param>
/// <param name="Description">What it shows, for a person who cannot see it.</param>
/// <param name="Marks">What is drawn, the undermost first.</param>
public sealed record Drawing(double Width, double Height, string Title, string Description, Sequence<Mark> Marks);
