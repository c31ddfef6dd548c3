using Gaugerod.Engine.Bonds;
using Gaugerod.Plane.Measure;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Bonds;

/// <summary>The set of four sizes, read back from its geometry on a ring of six by six units.</summary>
public sealed class ModularBondTests
{
    private const int Side = 6;

    private static readonly (Length, Length)[] s_set = [(Mm(597), Mm(397)), (Mm(397), Mm(397)), (Mm(397), Mm(197)), (Mm(197), Mm(197))];

    private readonly Bond _bond = Make.Bond(new BondRequest.Modular(), Mm(3), s_set);
    private readonly int[,] _tile = new int[Side, Side];

    public ModularBondTests()
    {
        var covered = 0;
        for (var i = 0; i < _bond.Motif.Count; i++)
        {
            var cell = _bond.Motif[i].Cell;
            for (var x = cell.Left; x < cell.Right; x += Mm(200))
            {
                for (var y = cell.Bottom; y < cell.Top; y += Mm(200))
                {
                    _tile[Wrapped(x.Steps / Mm(200).Steps), Wrapped(y.Steps / Mm(200).Steps)] = i;
                    covered++;
                }
            }
        }

        Assert.Equal(Side * Side, covered);
    }

    [Fact]
    public void No_four_tiles_meet_at_a_point()
    {
        for (var x = 0; x < Side; x++)
        {
            for (var y = 0; y < Side; y++)
            {
                int[] around = [At(x, y), At(x - 1, y), At(x, y - 1), At(x - 1, y - 1)];
                Assert.InRange(around.Distinct().Count(), 1, 3);
            }
        }
    }

    [Fact]
    public void No_joint_runs_straight_for_more_than_five_units()
    {
        for (var line = 0; line < Side; line++)
        {
            Assert.InRange(Longest(at => At(line, at) != At(line - 1, at)), 0, 5);
            Assert.InRange(Longest(at => At(at, line) != At(at, line - 1)), 0, 5);
        }
    }

    [Fact]
    public void No_two_of_the_smallest_lie_side_by_side()
    {
        for (var x = 0; x < Side; x++)
        {
            for (var y = 0; y < Side; y++)
            {
                if (!IsSmall(x, y)) continue;
                Assert.False(IsSmall(x + 1, y) || IsSmall(x, y + 1), $"{x}, {y}");
            }
        }
    }

    private bool IsSmall(int x, int y) => _bond.Motif[At(x, y)].Product == 3;

    private int At(int x, int y) => _tile[Wrapped(x), Wrapped(y)];

    private static int Wrapped(long at) => (int)(((at % Side) + Side) % Side);

    /// <summary>The longest run of units that have a joint, round the repeat; twice the repeat where it never ends.</summary>
    private static int Longest(Func<int, bool> joint)
    {
        var (longest, run) = (0, 0);
        for (var at = 0; at < 2 * Side; at++)
        {
            run = joint(at) ? run + 1 : 0;
            longest = Math.Max(longest, run);
        }

        return longest;
    }
}
