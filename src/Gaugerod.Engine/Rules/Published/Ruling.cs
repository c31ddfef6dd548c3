using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules.Published;

/// <summary>The limit that a check goes by, and for which region it was asked.</summary>
/// <param name="Limit">The limit.</param>
/// <param name="Asked">The job's region; null where it names none.</param>
internal sealed record Ruling(PublishedLimit Limit, Region? Asked)
{
    private const long Half = Length.StepsPerMillimetre / 2;

    public Figure Least => Limit.Least!.Value;

    /// <summary>The least, as it is held on site: in millimetres a figure in inches is printed rounded down to half a millimetre, 1/8 in as 3 mm and 1/2 in as 12.5.</summary>
    public Length LeastOn(Tape tape) => tape.Unit == LengthUnit.Millimetre && Least.Unit is "in" ? Length.FromSteps(Least.Length.Steps / Half * Half) : Least.Length;

    public Figure Most => Limit.Most!.Value;

    public Figure At => Limit.At!.Value;

    /// <summary>Whether it is another region's, for want of one.</summary>
    public bool IsBorrowed => Asked is { } region && region != Limit.Region;

    /// <summary>Where it comes from, and that it is borrowed where it is.</summary>
    public string Source => Limit.Source + (IsBorrowed ? RegionWords.Borrowed(Asked) : "");

    /// <summary>What to do, behind a sentence; only where the job names its region, so that other plans stay as they were.</summary>
    public string Do => Asked is null ? "" : " " + Limit.Do;
}
