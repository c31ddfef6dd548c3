using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Lines;

/// <summary>What placings are compared by. They are compared by the first in the run's order, ties by the next, and so on.</summary>
public enum Criterion
{
    /// <summary>Fewest musts missed.</summary>
    Musts,

    /// <summary>Least weight of wishes missed.</summary>
    Wishes,

    /// <summary>Fewest slivers.</summary>
    Slivers,

    /// <summary>Largest smallest cut.</summary>
    Smallest,

    /// <summary>Least difference between the cuts at the two sides of each face.</summary>
    Mirror,

    /// <summary>Fewest cut tiles.</summary>
    Cuts,

    /// <summary>Fewest tiles to buy.</summary>
    Tiles,
}

/// <summary>How a placing does.</summary>
/// <param name="MustsMissed">How many musts it misses.</param>
/// <param name="WishesMissed">The weight of the wishes it misses.</param>
/// <param name="Slivers">How many tiles are left with a leg under the sliver limit.</param>
/// <param name="SmallestCut">The narrowest leg of any cut tile; the tile's shorter side when nothing is cut.</param>
/// <param name="Mirror">The differences between the smallest cuts at the left and at the right of each face, added up.</param>
/// <param name="Cuts">How many tiles are cut at an edge; drilled holes do not count.</param>
/// <param name="Tiles">How many tiles the cut plan takes.</param>
/// <param name="WantsMissed">How many wants it misses, musts and wishes.</param>
public readonly record struct Score(int MustsMissed, int WishesMissed, int Slivers, Length SmallestCut, Length Mirror, int Cuts, int Tiles, int WantsMissed)
{
    /// <summary>The weight of what the tool wishes for unasked where things may be moved, their edges on joints among it, and misses: it counts after slivers.</summary>
    public int UnaskedMissed { get; init; }

    /// <summary>
    /// The narrowest leg less by how much cuts at its edge may come out smaller, which may be less than nothing; null, the default,
    /// where cuts are compared as they are planned.
    /// </summary>
    public Length? AtWorst { get; init; }

    /// <summary>What smallest cuts are compared by.</summary>
    internal Length Judged => AtWorst ?? SmallestCut;

    /// <summary>Better than any placing can be.</summary>
    internal static Score Perfect { get; } = new(0, 0, 0, Length.FromSteps(long.MaxValue), Length.Zero, 0, 0, 0);

    /// <summary>The score of this face and another together.</summary>
    internal Score And(Score other) => new(
        MustsMissed + other.MustsMissed, WishesMissed + other.WishesMissed, Slivers + other.Slivers,
        Length.Min(SmallestCut, other.SmallestCut), Mirror + other.Mirror, Cuts + other.Cuts, Tiles + other.Tiles, WantsMissed + other.WantsMissed)
    {
        UnaskedMissed = UnaskedMissed + other.UnaskedMissed,
        AtWorst = AtWorst is null && other.AtWorst is null ? null : Length.Min(Judged, other.Judged),
    };

    /// <summary>The score with another smallest cut to be compared by.</summary>
    internal Score JudgedAs(Length smallest) => AtWorst is null ? this with { SmallestCut = smallest } : this with { AtWorst = smallest };
}

/// <summary>What is allowed on a run.</summary>
/// <param name="Smallest">No cut may be narrower: a must. Null for none.</param>
/// <param name="Sliver">A cut narrower than this is a sliver. Default 2 in or 50 mm.</param>
/// <param name="HalfTile">Whether "no cut under half a tile" is wished for. Default true.</param>
public sealed record Limits(Length? Smallest, Length Sliver, bool HalfTile)
{
    /// <summary>Whether smallest cuts are compared by what may come of them with all off at once, not as they are planned. Default no.</summary>
    public bool AtWorst { get; init; }
}

/// <summary>What is proved of the placing chosen.</summary>
public enum ProofKind
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>No placing has a smallest cut above the bound without missing more of what counts before it.</summary>
    Bounded,

    /// <summary>No placing does better in the run's order.</summary>
    Exact,
}

/// <summary>The proof of a search.</summary>
/// <param name="Kind">What is proved.</param>
/// <param name="Bound">The largest smallest cut that any placing could have that does as well in what counts before it.</param>
/// <param name="Examined">How many placings were reckoned out in full.</param>
/// <param name="Words">The same for a person.</param>
public sealed record Proof(ProofKind Kind, Length Bound, long Examined, string Words);

/// <summary>How a want came out.</summary>
/// <param name="Want">The want.</param>
/// <param name="Held">Whether it is met.</param>
/// <param name="Text">The want and its outcome in words.</param>
public sealed record WantOutcome(Want Want, bool Held, string Text)
{
    /// <summary>Of a joint on an edge that is missed: whether a tile's side meets it all the same where it stands furthest out, or in some courses.</summary>
    public bool MeetsInPart { get; init; }

    /// <summary>How sure it is that what is held as planned is held on the wall; null where that does not hang on a cut at an edge.</summary>
    public Sureness? Sure { get; init; }
}

/// <summary>How sure it is that a want comes out on the wall as it is planned.</summary>
public enum Sureness
{
    /// <summary>Held, whatever is off.</summary>
    Held,

    /// <summary>Held nineteen times in twenty.</summary>
    WithinRange,

    /// <summary>Not even that.</summary>
    AtRisk,
}
