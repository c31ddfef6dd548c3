using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Patterns;

/// <summary>
/// A run with a bond of any kind, ready to be scored wherever the bond is moved. A place of the bond is (x, y), where its
/// origin lies on the run as the bond lies: turned back to straight.
/// </summary>
internal sealed class PatternModel
{
    private readonly Reckoning _reckoning;
    private readonly PatternCheck[] _checks;
    private readonly MirrorPair[] _mirrors;

    // What the smallest cut is where nothing is cut: no leg is longer.
    private readonly double _deepest;

    // Where the place scored last lies, within one step of the lattice each way.
    private long _right, _up;

    public PatternModel(PatternProblem problem)
    {
        Problem = problem;
        Bond = problem.MakeBond().Bond ?? throw new ArgumentException("These tiles do not make the bond; check the job first.", nameof(problem));
        Heading = Heading.Of(problem.Turn);
        Fields = [.. problem.Run.Faces.Select(face => new TurnedField(FieldRings.Of(face), Heading))];
        Judged = Bond.Chips ?? Bond;
        Domain = new(Judged.Lattice);
        var maker = new PatternChecks(this);
        (Lines, _checks, _mirrors) = (maker.Lines, maker.Checks, maker.Mirrors);
        _deepest = Lines.Max(line => line.GreatestDepth);
        _reckoning = new(Lines, [.. Judged.Motif.Select(tile => new TileShape(tile))], maker.Slots, problem.Run.Limits.Sliver.Steps, _checks.OfType<PatternCheck.Equal>().SelectMany(equal => equal.Lines.Concat(equal.OtherLines)));
    }

    public PatternProblem Problem { get; }

    public Bond Bond { get; }

    /// <summary>What placings are judged by: the bond itself, or the chips of its sheets.</summary>
    public Bond Judged { get; }

    public Heading Heading { get; }

    public TurnedField[] Fields { get; }

    public FieldLine[] Lines { get; }

    public IReadOnlyList<PatternCheck> Checks => _checks;

    /// <summary>The places that differ.</summary>
    public OffsetDomain Domain { get; }

    /// <summary>How many places were scored.</summary>
    public long Examined { get; private set; }

    /// <summary>How much was reckoned: tiles near lines looked at.</summary>
    public long Work => _reckoning.Work;

    /// <summary>The score of a place; tiles are not counted here. Lengths in it are those that the tape shows.</summary>
    public PatternPlacing At(long x, long y)
    {
        Examined++;
        (_right, _up) = Domain.Within(x, y);
        var (score, smallest) = Score(Shifts.Only(_right, _up));
        var tape = Problem.Run.Tape;
        var shown = score with { SmallestCut = tape.Down(score.SmallestCut), Mirror = tape.Nearest(score.Mirror) };
        return new(x, y, shown, smallest);
    }

    /// <summary>A score no place among some does better than in what comes up to the smallest cut, and the smallest cut behind it.</summary>
    /// <param name="shifts">The places.</param>
    public (Score Score, double Smallest) Promise(in Shifts shifts) => Score(shifts);

    /// <summary>Which wants are held at a place.</summary>
    public bool[] Held(PatternPlacing placing)
    {
        _ = At(placing.X, placing.Y);
        return [.. _checks.Select(check => !check.IsMissed(_reckoning, Shifts.Only(_right, _up)))];
    }

    /// <summary>The narrowest leg at each line, for the place scored last; the greatest number where nothing is cut.</summary>
    public ReadOnlySpan<double> LeastAtLine => _reckoning.Least;

    /// <summary>The tiles of a face that a side cuts, for the place scored last, each once.</summary>
    public IEnumerable<(int Tile, long X, long Y)> CutTiles(int face) => _reckoning.CutTiles
        .Where(cut => cut.Face == face).Select(cut => (cut.Tile, (long)cut.X + _right, (long)cut.Y + _up));

    /// <summary>Whether a place leaves any leg under half of its tile's depth there.</summary>
    public bool HasUnderHalf(PatternPlacing placing)
    {
        _ = At(placing.X, placing.Y);
        const double Half = 0.5 - 1e-9;
        return Enumerable.Range(0, Lines.Length).Any(i => Lines[i].Edge >= 0 && _reckoning.LeastShare[i] < Half);
    }

    private (Score Score, double Smallest) Score(in Shifts shifts)
    {
        _reckoning.Reckon(shifts);
        var smallest = Math.Min(_reckoning.Smallest, _deepest);
        var mirror = 0.0;
        if (shifts.IsOne)
        {
            foreach (var pair in _mirrors) mirror += pair.Off(_reckoning);
        }

        var (musts, wishes, late, missed) = (0, 0, 0, 0);
        foreach (var check in _checks)
        {
            if (!check.IsMissed(_reckoning, shifts)) continue;
            if (check.Must) musts++;
            else if (check.IsLate) late += check.Weight;
            else wishes += check.Weight;
            if (check.Want >= 0) missed++;
        }

        return (new(
            musts, wishes, _reckoning.Slivers, Length.FromSteps((long)smallest),
            Length.FromSteps((long)mirror), _reckoning.Cuts, 0, missed) { UnaskedMissed = late }, smallest);
    }
}

/// <summary>A place of a bond, scored.</summary>
/// <param name="X">Where the bond's origin lies on the run, as the bond lies, to the right, in steps.</param>
/// <param name="Y">The same, up.</param>
/// <param name="Score">Its score.</param>
/// <param name="Smallest">The smallest cut before the tape rounds it, in steps.</param>
internal sealed record PatternPlacing(long X, long Y, Score Score, double Smallest);

/// <summary>The lines at the left and at the right of one face.</summary>
internal sealed record MirrorPair(int[] Left, int[] Right, double Whole)
{
    /// <summary>By how much the narrowest cuts at the two sides differ.</summary>
    public double Off(Reckoning reckoning) => Math.Abs(PatternCheck.Narrowest(reckoning.Least, Left, Whole) - PatternCheck.Narrowest(reckoning.Least, Right, Whole));
}
