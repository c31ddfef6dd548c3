using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Lines;

/// <summary>Moves that hang on two teeth.</summary>
internal sealed partial class Sawtooth
{
    /// <summary>Moves at which two legs and a saw's kerf just make a tile, and a step to either side.</summary>
    public void PairMoves(long kerf, List<long> moves)
    {
        for (var i = 0; i < _teeth.Count; i++)
        {
            for (var j = i; j < _teeth.Count; j++)
            {
                if (_teeth[i].TileAfter != _teeth[j].TileAfter) continue;
                var twice = _teeth[i].At + _teeth[j].At - size + (_teeth[i].TileAfter ? -kerf : kerf);
                for (var hair = -2; hair <= 2; hair += 2) Halves(twice + hair, moves);
            }
        }
    }

    /// <summary>Moves at which the leg at one tooth equals the leg at another that runs the other way, or differs from it by just so much.</summary>
    /// <param name="one">Which teeth; only growing ones count.</param>
    /// <param name="other">Which others; only shrinking ones count.</param>
    /// <param name="difference">The difference; zero for equal legs only.</param>
    /// <param name="moves">Where to put them.</param>
    public void EqualMoves(Func<Tooth, bool> one, Func<Tooth, bool> other, long difference, List<long> moves)
    {
        foreach (var grows in _teeth.Where(tooth => tooth.TileAfter && one(tooth)))
        {
            foreach (var shrinks in _teeth.Where(tooth => !tooth.TileAfter && other(tooth)))
            {
                var twice = grows.At + shrinks.At - size;
                Halves(twice, moves);
                if (difference == 0) continue;
                Halves(twice - difference, moves);
                Halves(twice + difference, moves);
            }
        }
    }

    /// <summary>Both moves that are half of a sum, a half step to either side.</summary>
    private void Halves(long twice, List<long> moves)
    {
        for (var half = 0; half <= 1; half++)
        {
            moves.Add(Grid.Mod(Grid.FloorDiv(twice + (half * period), 2), period));
            moves.Add(Grid.Mod(Grid.FloorDiv(twice + (half * period) + 1, 2), period));
        }
    }
}
