using System.Globalization;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Tests.Lines;

/// <summary>How many rooms were swept, and how search and sweep came out against each other.</summary>
internal sealed class SweepTally
{
    private readonly Lock _gate = new();
    private readonly List<long> _gain = [];
    private readonly List<int> _ties = [];
    private long _placings;

    /// <summary>In how many rooms a swept place is ahead in the order.</summary>
    public int Behind { get; private set; }

    /// <summary>By how much at the most the search's smallest cut is behind a swept one.</summary>
    public Length MostBehind => Length.FromSteps(Math.Max(0, -_gain.Min()));

    /// <summary>Takes in a room as it stands.</summary>
    public void Add(SweptRoom room)
    {
        lock (_gate)
        {
            _placings += room.Placings;
            if (room.AgainstSweepInAll() > 0) Behind++;
            _gain.Add((room.Found.Best.Score.SmallestCut - room.Sweep.SmallestCut).Steps);
        }
    }

    /// <summary>Takes in that so many places had their tiles counted in a room.</summary>
    public void AddTies(int counted)
    {
        lock (_gate) _ties.Add(counted);
    }

    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{_gain.Count} rooms, {_placings} placings swept on the grid; the search's smallest cut is larger in {_gain.Count(g => g > 0)}, equal in {_gain.Count(g => g == 0)}, smaller in {_gain.Count(g => g < 0)} ({string.Join(' ', _gain.Where(g => g < 0))} steps); worse in the order in {Behind}; tiles counted in {_ties.Count} rooms at {_ties.Sum()} places");
}
