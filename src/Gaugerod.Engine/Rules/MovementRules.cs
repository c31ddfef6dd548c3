using System.Globalization;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules.Published;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>How large a field may be without a soft joint across it.</summary>
internal static class MovementRules
{
    /// <summary>A part of a heated floor that is larger than its region has it, though no side of it is too long; none where the region has no figure.</summary>
    /// <param name="run">The run.</param>
    /// <param name="face">The face.</param>
    /// <param name="part">The largest part between soft joints, in mm².</param>
    /// <param name="region">The job's region; null where it names none.</param>
    /// <param name="tape">How it is said.</param>
    public static IEnumerable<Finding> Area(string run, string face, double part, Region? region, Tape tape) => LimitTable.Each(region, LimitKeys.MovementArea)
        .Where(limit => part > limit.Most.Area)
        .Select(limit => new Finding(FindingLevel.Warn, "movement-area", run, $"If the screed under it is heated: between soft joints {face} is larger than tile goes there, taken by the box around it. {limit.Limit.Do}", $"at most {limit.Most}", Amounts.Area(part, tape), limit.Source));

    /// <summary>Edges of a large floor that stand without a soft joint; none where the region has no figure.</summary>
    /// <param name="run">The run.</param>
    /// <param name="face">The face.</param>
    /// <param name="side">The floor's longer side.</param>
    /// <param name="shut">The edges where tile is tight against what it meets.</param>
    /// <param name="region">The job's region; null where it names none.</param>
    /// <param name="tape">How it is said.</param>
    public static IEnumerable<Finding> Edges(string run, string face, Length side, IReadOnlyList<string> shut, Region? region, Tape tape) => LimitTable.Each(region, LimitKeys.MovementPerimeter)
        .Where(limit => shut.Count > 0 && side > limit.At.Length)
        .Select(limit => new Finding(
            FindingLevel.Warn, "movement-edges", run, $"Of {face} {string.Join(", ", shut)} {(shut.Count == 1 ? "has" : "have")} no soft joint: a floor this large has one along all its edges. {limit.Limit.Do}",
            $"a soft joint along each edge from {limit.At} on", LengthText.Nearest(side, tape), limit.Source));

    /// <summary>What there is to say of a field that is larger.</summary>
    /// <param name="run">The run.</param>
    /// <param name="face">The face.</param>
    /// <param name="field">How long the field is that way.</param>
    /// <param name="plumb">Whether the joints that are needed stand upright.</param>
    /// <param name="joints">Those joints; none where no joint of the bond helps.</param>
    /// <param name="request">What was asked.</param>
    /// <param name="published">What is published for it.</param>
    /// <param name="tape">How it is said.</param>
    public static Finding Finding(string run, string face, Length field, bool plumb, IReadOnlyList<MovementJoint> joints, MovementRequest request, Ruling published, Tape tape)
    {
        var most = request.Most ?? published.Most.Length;
        var (long1, from) = plumb ? ("wide", "from the left, x") : ("high", "up, y");
        var cut = joints.Sum(joint => joint.Cut);
        var places = string.Join(", ", joints.Select(joint => LengthText.Nearest(joint.At, tape)));
        var text = joints.Count == 0
            ? $"Tile on {face} is too {long1} to go without a soft joint across it, and no joint of the bond stands where it would help. Ask the designer where one may stand."
            : $"Tile on {face} is too {long1} to go without a soft joint across it. {(joints.Count == 1 ? "One does" : string.Create(CultureInfo.InvariantCulture, $"{joints.Count} do"))}, at {places} ({from}), {(cut == 0 ? "on joints all the way" : string.Create(CultureInfo.InvariantCulture, $"{cut} {(cut == 1 ? "tile is" : "tiles are")} cut along it"))}: leave it open down to what is under the mortar, and seal it.";
        return new(FindingLevel.Warn, "movement-joint", run, text, Said(most), Said(field), request.Most is null ? published.Source : "as asked for here");

        string Said(Length length) => tape.Unit == LengthUnit.Inch ? LengthText.FeetNearest(length, tape) : LengthText.Nearest(length, tape);
    }
}
