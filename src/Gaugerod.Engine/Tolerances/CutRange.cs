using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Tolerances;

/// <summary>How far the cuts at one edge may come out other than planned.</summary>
/// <param name="Face">The face.</param>
/// <param name="Edge">The edge, by its name on the face.</param>
/// <param name="Smallest">The smallest cut planned there.</param>
/// <param name="Whole">The tile's size that way.</param>
/// <param name="Tiles">At the most so many whole tiles stand between the snapped line and a cut.</param>
/// <param name="GiveOrTake">Nineteen cuts in twenty come out within this of what is planned.</param>
/// <param name="AtWorst">All come out within this: everything off at once, the same way, and by as much as it can be.</param>
public sealed record CutRange(string Face, string Edge, Length Smallest, Length Whole, int Tiles, Length GiveOrTake, Length AtWorst);

/// <summary>
/// Adds up what is off between a snapped line and an edge. What is its own for every tile or joint adds up by squares; the size of the
/// batch is the same for all, and adds up straight.
/// </summary>
internal readonly record struct ErrorStack
{
    /// <summary>Nineteen in twenty of the normal law.</summary>
    private const double NineteenInTwenty = 1.959963984540054;

    /// <summary>Readings and lines are no further off than three of their deviations: 997 in a thousand.</summary>
    private const double Most = 3;

    private readonly double _reading;
    private readonly double _setOut;
    private readonly double _variation;
    private readonly double _joint;

    public ErrorStack(SettingErrors errors, Length reading, Length variation) =>
        (_reading, _setOut, _variation, _joint) = (reading.Steps, errors.SetOut.Steps, variation.Steps, errors.Joint.Steps);

    /// <summary>
    /// The mean of a batch, as ten of its tiles measured to half a millimetre tell it (ISO 10545-2 measures ten; on site to about 0.5 mm),
    /// one standard deviation.
    /// </summary>
    private double BatchSquare => ((_variation * _variation) + (1600.0 * 1600)) / 12 / 10;

    /// <summary>Within how much of what is planned nineteen in twenty come out.</summary>
    /// <param name="tiles">How many tiles stand between.</param>
    /// <param name="joints">How many joints.</param>
    public Length GiveOrTake(int tiles, int joints)
    {
        var square = (_reading * _reading) + (_setOut * _setOut) + ((double)tiles * tiles * BatchSquare)
            + (tiles * _variation * _variation / 12) + (joints * _joint * _joint / 3);
        return Length.FromSteps((long)Math.Ceiling(NineteenInTwenty * Math.Sqrt(square)));
    }

    /// <summary>Within how much all come out.</summary>
    public Length AtWorst(int tiles, int joints) => Length.FromSteps((long)Math.Ceiling(
        (Most * (_reading + _setOut + (tiles * Math.Sqrt(BatchSquare)))) + (tiles * _variation / 2) + (joints * _joint)));
}
