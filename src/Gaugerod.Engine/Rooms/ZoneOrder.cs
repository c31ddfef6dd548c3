using Gaugerod.Plane;

namespace Gaugerod.Engine.Rooms;

/// <summary>In which order zones are taken from a face.</summary>
internal static class ZoneOrder
{
    /// <summary>
    /// The zones' places: as they stand, but a rug that lies in a band as a whole before that band, which then has tile all round it.
    /// </summary>
    public static List<int> Of(Sequence<Zone> zones)
    {
        var order = new List<int>();
        for (var i = 0; i < zones.Count; i++)
        {
            var band = zones[i] is Zone.Rug rug ? order.FindIndex(at => zones[at] is Zone.Strip strip && strip.From < rug.Box.Bottom && (strip.To is not { } head || head > rug.Box.Top)) : -1;
            order.Insert(band < 0 ? order.Count : band, i);
        }

        return order;
    }
}
