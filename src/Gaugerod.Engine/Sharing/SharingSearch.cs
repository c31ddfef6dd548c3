namespace Gaugerod.Engine.Sharing;

/// <summary>
/// Which blanks share a tile, so that as few tiles as can be are taken. Goes on step by step: after each there is a plan and a
/// bound, and it ends when they meet or the work allowed is used up. Always the same for the same blanks.
/// </summary>
internal sealed class SharingSearch
{
    private readonly Wanted _wanted;
    private readonly TileFits _fits;
    private readonly TileFill _fill;
    private readonly Relaxed _relaxed;
    private readonly Repacking _repacking;
    private readonly Dive _dive;
    private readonly int[] _want;
    private readonly long _allowed;
    private IReadOnlyList<int[]> _best;
    private WeightProof _proof;
    private int _least;

    /// <param name="wanted">What is wanted.</param>
    /// <param name="allowed">How much work may be done, in blanks tried and places looked at; a step once begun is finished.</param>
    public SharingSearch(Wanted wanted, long allowed)
    {
        (_wanted, _allowed) = (wanted, allowed);
        _fits = new(wanted);
        var serving = new Serving(wanted);
        _fill = new(wanted, _fits);
        _relaxed = new(_fits, _fill, serving);
        _repacking = new(wanted, _fits);
        _dive = new(_relaxed, serving);
        _want = Array.ConvertAll(wanted.Kinds, k => k.Wanted);
        _best = [.. All.Select(kind => (int[])[kind])];

        // Each blank weighs what it takes of the tile, blade and all; a little less, for the rounding.
        _proof = WeightProof.Of(wanted, Array.ConvertAll(wanted.Area, a => (long)(a * (1 - 1e-9) * Relaxed.Unit)), Relaxed.Unit);
        _least = _proof.Tiles;
    }

    /// <summary>The best so far.</summary>
    public Shares Best => new(_best, _proof, _least);

    /// <summary>How much work was done so far.</summary>
    public long Work => _fill.Work + _repacking.Work + _fits.Work;

    private IEnumerable<int> All => _want.SelectMany((count, kind) => Enumerable.Repeat(kind, count));

    private bool Open => _best.Count > _least && !Stop();

    /// <summary>Runs to the end.</summary>
    public void Run()
    {
        foreach (var _ in Steps())
        {
        }
    }

    /// <summary>Runs on; the best so far after each step.</summary>
    public IEnumerable<Shares> Steps()
    {
        foreach (var _ in _repacking.Begin(All)) yield return Best;
        _best = [.. _repacking.Tiles];
        for (var i = 0; i < 80 && Open; i++)
        {
            Repack(10);
            yield return Best;
        }

        if (!Open) yield break;
        _relaxed.Know(_best.Concat(_repacking.WellFilled));
        var cover = _relaxed.ForBound(_want);
        foreach (var _ in cover.Steps())
        {
            if (Stop()) break;
            yield return Best;
        }

        foreach (var _ in Bound(cover.Weights)) yield return Best;
        yield return Best;
        for (var round = 0; Open; round++)
        {
            foreach (var _ in _dive.Down(_want, _best.Count - 1, round > 0))
            {
                if (Stop()) yield break;
                yield return Best;
            }

            if (_dive.Plan is { } plan) Take(plan);
            if (round == 0 && Open)
            {
                foreach (var _ in Complete()) yield return Best;
                yield return Best;
            }

            for (var i = 0; i < 40 && Open; i++)
            {
                Repack(10);
                yield return Best;
            }
        }
    }

    private bool Stop() => Work >= _allowed;

    private void Repack(int times)
    {
        _repacking.Improve(times, _least);
        if (_repacking.Tiles.Count < _best.Count) _best = [.. _repacking.Tiles];
    }

    private void Take(IReadOnlyList<int[]> plan)
    {
        _best = plan;
        _repacking.Begin(plan);
    }

    /// <summary>Weights are a proof whatever they are, once the heaviest tile is known; a bound is worth going on for as long again.</summary>
    private IEnumerable<bool> Bound(long[] weights)
    {
        foreach (var _ in _fill.Heaviest(weights, 0, _want))
        {
            if (Work >= 2 * _allowed) yield break;
            yield return true;
        }

        var proof = WeightProof.Of(_wanted, weights, _fill.Found.Count == 0 ? 1 : _fill.Found[^1].Weight);
        if (proof.Tiles > _proof.Tiles) (_proof, _least) = (proof, Math.Max(_least, proof.Tiles));
    }

    /// <summary>
    /// Looks for a plan of exactly as many tiles as the bound among all fills that such a plan can hold, while they are few. Where
    /// all of them have been tried in vain, one tile more is needed.
    /// </summary>
    private IEnumerable<bool> Complete()
    {
        while (Open)
        {
            // What is wanted weighs Total, and so many tiles hold no more than Least times Heaviest: the tiles of such a plan
            // fall short of the heaviest by no more than the difference, all together.
            var budget = (long)(((Int128)_least * _proof.Heaviest) - _proof.Total);
            foreach (var _ in _fill.All(_proof.Weights, _proof.Heaviest - budget - 1, _want, 20_000, 200_000)) yield return true;
            if (!_fill.IsWhole) yield break;
            var completion = new Completion(_want, _fill.Found.Select(f => (_proof.Heaviest - f.Weight, f.Fill)).ToList(), budget, 200_000);
            foreach (var _ in completion.Find()) yield return true;
            if (completion.Plan is { } plan) Take(plan);
            else if (completion.Patience > 0) _least++;
            else yield break;
        }
    }
}
