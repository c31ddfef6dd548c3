using System.Globalization;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Takeoffs;

namespace Gaugerod.Engine.Rules;

/// <summary>Says what planned boxes do, and what no plan does.</summary>
internal static class BoxRules
{
    internal static Finding Finding(BoxPlan boxes)
    {
        var open = boxes.Boxes == boxes.Open ? "All boxes are open from the start" : string.Create(CultureInfo.InvariantCulture, $"{boxes.Open} boxes are open at a time");
        return new(
            FindingLevel.Note, "boxes", boxes.Product,
            $"{open} and their tiles are taken in turn, so that one of another shade is spread. Check that all boxes are of one lot and one caliber before any is opened; lay some courses out dry and step back before you set.",
            "", string.Create(CultureInfo.InvariantCulture, $"{boxes.Alike} of {boxes.Joints} joints lie between tiles of one box"), Remarks.NoSource);
    }
}
