using System.Globalization;
using Gaugerod.Engine.Rules.Published;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>How large a field may be without a soft joint across it.</summary>
internal static class MovementRules
{
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
