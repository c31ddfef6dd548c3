using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Takeoffs;

/// <summary>A body that is built up solid before it is tiled: a curb, a bench, a step.</summary>
/// <param name="Name">Its name, unique among the job's fills.</param>
/// <param name="Of">The supply that it is built of.</param>
/// <param name="Length">How long it is, before board, membrane and tile; more than zero.</param>
/// <param name="Width">How wide it is.</param>
/// <param name="Height">How high it stands over what it is built on, in the middle of a top that falls.</param>
public sealed record FillRequest(string Name, string Of, Length Length, Length Width, Length Height)
{
    /// <summary>Its volume, in litres.</summary>
    internal double Litres => (double)Length.Millimetres * (double)Width.Millimetres * (double)Height.Millimetres / 1e6;
}
