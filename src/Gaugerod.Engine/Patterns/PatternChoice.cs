using Gaugerod.Engine.Lines;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Patterns;

/// <summary>
/// The places scored at every turn, and the one chosen of them. Places that the tape shows as equals are parted by what comes
/// next in the order, but only where their smallest cuts lie within <see cref="Worth"/> of the largest reached: of others one
/// would be chosen that a proof of 1 mm could not speak for.
/// </summary>
internal sealed class PatternChoice
{
    private readonly ScoreOrder _order;
    private readonly double _worth;
    private readonly List<TurnedPlace> _seen = [];

    // The best reached in what comes up to the smallest cut, to the step and not to the tape's mark: what promises must beat.
    private Score _reached;

    public PatternChoice(RunProblem run) => (_order, _worth) = (new(run.Order), Worth(run.Tape).Steps);

    /// <summary>
    /// By how much a smallest cut must be larger to be worth moving a bond for: 1/64 in or half a millimetre, and never more than
    /// the tape's mark. As much may be lost again in choosing, so that a proof's gap is twice this at the most.
    /// </summary>
    public static Length Worth(Tape tape) =>
        Length.Min(tape.Mark, tape.Unit == LengthUnit.Inch ? Length.FromInches(0, 1, 64) : Length.FromSteps(Length.FromMillimetres(1).Steps / 2));

    /// <summary>The place chosen; null while none is scored.</summary>
    public TurnedPlace? Best { get; private set; }

    /// <summary>The places scored, in the order met.</summary>
    public IReadOnlyList<TurnedPlace> Seen => _seen;

    /// <summary>Whether a promise, a score up to the smallest cut, beats what is reached.</summary>
    public bool Beats(Score promise) => Best is null || _order.Compare(promise, _reached) < 0;

    /// <summary>Takes in a place.</summary>
    public void Add(PatternModel model, PatternPlacing place)
    {
        var scored = new TurnedPlace(model, place);
        _seen.Add(scored);
        var exact = _order.UpToSmallest(place.Score with { SmallestCut = Length.FromSteps((long)place.Smallest) });
        if (Beats(exact)) _reached = exact;
        if (Best is { } best && IsWithin(best)) Choose(scored);
        else Best = _seen.Where(IsWithin).Aggregate(scored, (one, other) => _order.Compare(other.Place.Score, one.Place.Score) < 0 ? other : one);
    }

    private void Choose(TurnedPlace place)
    {
        if (IsWithin(place) && _order.Compare(place.Place.Score, Best!.Place.Score) < 0) Best = place;
    }

    // Within a step less: what is reached is known to the step.
    private bool IsWithin(TurnedPlace place) =>
        place.Place.Smallest >= _reached.SmallestCut.Steps - _worth + 1 && _order.NoWorseBeforeSmallest(place.Place.Score, _reached);
}
