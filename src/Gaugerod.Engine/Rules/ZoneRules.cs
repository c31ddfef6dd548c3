using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>Borders and rugs that a little more or less width would let whole tiles fill.</summary>
internal static class ZoneRules
{
    internal static IEnumerable<Finding> Findings(IEnumerable<Zone> zones, Product product, BondRequest bond, Length joint, Length edgeJoint, Tape tape)
    {
        foreach (var zone in zones)
        {
            if (zone is Zone.Border border && WholeTiles.Width(border, product, bond, joint, edgeJoint) is { } width && (width - border.Width).Abs() >= tape.Mark)
            {
                yield return new(
                    FindingLevel.Warn, "border", border.Name, "Every tile of the border is cut along it, for its width is not that of whole tiles and their joints.",
                    $"{LengthText.Finer(width, tape)} wide for whole tiles", LengthText.Finer(border.Width, tape), Remarks.NoSource);
            }

            if (zone is Zone.Rug rug && WholeTiles.Size(rug, product, bond, joint, edgeJoint) is { } size && ((size.Width - rug.Box.Width).Abs() >= tape.Mark || (size.Height - rug.Box.Height).Abs() >= tape.Mark))
            {
                yield return new(
                    FindingLevel.Note, "rug", rug.Name, "Tiles of the rug are cut at its edges, for its size is not that of whole tiles and their joints.",
                    $"{LengthText.Finer(size.Width, tape)} by {LengthText.Finer(size.Height, tape)} for whole tiles", $"{LengthText.Finer(rug.Box.Width, tape)} by {LengthText.Finer(rug.Box.Height, tape)}", Remarks.NoSource);
            }
        }
    }
}
