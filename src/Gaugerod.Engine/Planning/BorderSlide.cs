using Gaugerod.Engine.Layouts;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Planning;

/// <summary>A border as it is shown: each strip stands by itself. It is not moved by hand.</summary>
internal sealed class BorderSlide : RodSlide
{
    private readonly RodSlide[] _strips;

    private BorderSlide(RodSlide[] strips)
    {
        _strips = strips;
        Faces = strips.SelectMany(strip => strip.Faces).ToSequence();
        Tiles = strips.SelectMany(strip => strip.Tiles).ToSequence();
    }

    public static BorderSlide Make(Job job, RunPlan run) => new([.. run.Strips.Select(strip => Of(job, strip))]);

    public override Sequence<FinishedFace> Faces { get; }

    public override bool Restart => true;

    public override Sequence<Ring> Tiles { get; }

    public override Length Repeat(Axis rod) => _strips[0].Repeat(rod);

    public override Length Pitch(Axis rod) => _strips[0].Pitch(rod);

    public override SlideFigures At(Sequence<Placing> place)
    {
        var all = _strips.Select((strip, i) => strip.At(Own(place, i))).ToList();
        return new(
            all.Select(one => one.Score).Aggregate((one, other) => one.And(other)), all.SelectMany(one => one.Edges).ToSequence(), all.SelectMany(one => one.Wants).ToSequence());
    }

    public override Sequence<Length> ToWants(Sequence<Placing> place, Axis rod, int face) => [];

    public override IEnumerable<Ring> Lattice(Sequence<Placing> place, int face) => _strips[face].Lattice(Own(place, face), 0);

    public override (Length Right, Length Up) Shift(Sequence<Placing> drawn, Sequence<Placing> place, int face) => _strips[face].Shift(Own(drawn, face), Own(place, face), 0);

    public override void Cut(Sequence<Placing> place, int face, CutCells cells)
    {
        ArgumentNullException.ThrowIfNull(cells);
        var before = _strips.Take(face).Sum(strip => strip.Tiles.Count);
        _strips[face].Cut(Own(place, face), 0, cells);
        cells.Renumber(before);
    }

    public override HeldPlace Held(Sequence<Placing> place) => throw new InvalidOperationException("The strips of a border are not moved by hand.");

    private protected override Length Smallest(Sequence<Placing> place) => At(place).Score.SmallestCut;

    private static Sequence<Placing> Own(Sequence<Placing> place, int strip)
    {
        ArgumentNullException.ThrowIfNull(place);
        return [place[strip]];
    }
}
