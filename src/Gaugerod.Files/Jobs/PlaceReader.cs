using System.Globalization;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Json;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads where a person wants a run's bond to sit.</summary>
internal sealed class PlaceReader(Values values, int faces, Corners corners)
{
    public HeldPlace? Read(Entry? entry, JointRange? range)
    {
        if (Fields.Open(entry, Forms.Place, values) is not { } fields) return null;
        var (x, y, joint) = (Along(fields["x"]), fields.Length("y", LengthRange.Position), fields.Length("joint", LengthRange.Joint));
        if (joint is { } width && range is not null && (width < range.Least || width > range.Most))
        {
            values.Log.AddSaid(fields["joint"]!, "a joint that the run does not allow", "a joint within the run's own", "leave \"joint\" out for the wanted one");
        }

        return x is null || y is not { } up ? null : new(x, up, joint);
    }

    private Sequence<Length>? Along(Entry? entry)
    {
        if (entry is not Entry.List list) return values.Length(entry, LengthRange.Position) is { } only ? [only] : null;
        var each = list.Items.Select(item => values.Length(item, LengthRange.Position)).ToList();
        if (corners == Corners.Wrap && list.Items.Count != 1)
        {
            values.Log.AddSaid(entry, "a list on a run that wraps its corners", "one x for the run", "\"corners\": \"restart\" for one on each face");
            return null;
        }

        if (list.Items.Count != faces && list.Items.Count != 1)
        {
            values.Log.AddSaid(
                entry, string.Create(CultureInfo.InvariantCulture, $"a list of {list.Items.Count}"), string.Create(CultureInfo.InvariantCulture, $"one x, or one for each of the {faces} faces"));
            return null;
        }

        return each.Contains(null) ? null : each.Select(length => length!.Value).ToSequence();
    }
}
