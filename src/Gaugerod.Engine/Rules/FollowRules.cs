using Gaugerod.Engine.Bases;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>Whether tile follows a bed that is bent round its drain and not folded.</summary>
internal static class FollowRules
{
    internal static Finding Of(Bed bed, string run, Product product, BondRequest bond, Length joint, Length rim, bool hasFolds, Tape tape, Region? region)
    {
        var (allowed, lippage) = LippageLimits.At(joint, product.Warpage ?? Length.Zero, region);
        var side = BedRules.Largest(bed, rim, allowed);
        var (width, height) = bond is BondRequest.Mosaic(var across, var up) ? (Chip(product.Width, across), Chip(product.Height, up)) : (product.Width, product.Height);
        var follows = Length.Max(width, height) <= side;
        var why = hasFolds ? "It falls alike everywhere, so it is bent between its folds too" : "No folds are cut on it";
        return new(
            follows ? FindingLevel.Note : FindingLevel.Warn, "bed", run,
            follows ? $"{why}: a tile of {Shown.Fine(width, tape)} by {Shown.Fine(height, tape)} follows it from the drain's rim on." : $"{why}: the corners of a tile of {Shown.Fine(width, tape)} by {Shown.Fine(height, tape)} stand off beside the drain. Square tile of up to {LengthText.Down(side, tape)} follows it; larger is cut along folds of a bed with a level edge.",
            $"at most {Shown.Fine(allowed, tape)} at a corner", "", $"lippage: {lippage}; the bend of a cone reckoned");

        Length Chip(Length sheet, int count) => Length.FromSteps((sheet + joint).Steps / count) - joint;
    }
}
