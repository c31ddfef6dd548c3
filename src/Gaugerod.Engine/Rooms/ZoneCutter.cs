using System.Globalization;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>Cuts a finished face into its zones and what they leave.</summary>
internal sealed class ZoneCutter
{
    private readonly FinishedFace _whole;
    private readonly string _path;
    private readonly Length _edgeJoint;
    private readonly Remarks _remarks;

    // What each tag of a side stands for: first the face's own edges, then what zones add.
    private readonly List<FieldEdge> _edges;
    private readonly List<ZonePart> _parts = [];
    private IReadOnlyList<TaggedCorner[]> _rest;

    private ZoneCutter(FinishedFace whole, string path, Length edgeJoint, Remarks remarks)
    {
        (_whole, _path, _edgeJoint, _remarks) = (whole, path, edgeJoint, remarks);
        _edges = [.. whole.Edges];
        _rest = whole.TaggedRings();
    }

    /// <summary>The zones, then what is left under the face's own name; none, with remarks, where a zone cannot be cut.</summary>
    /// <param name="whole">The face as a whole.</param>
    /// <param name="zones">Its zones.</param>
    /// <param name="path">Where the face stands in the job.</param>
    /// <param name="edgeJoint">The joint of zones that state none.</param>
    /// <param name="remarks">Takes what is wrong.</param>
    public static IReadOnlyList<ZonePart> Cut(FinishedFace whole, Sequence<Zone> zones, string path, Length edgeJoint, Remarks remarks)
    {
        var (cutter, before) = (new ZoneCutter(whole, path, edgeJoint, remarks), remarks.Faults.Count);
        for (var i = 0; i < zones.Count && remarks.Faults.Count == before; i++)
        {
            var at = string.Create(CultureInfo.InvariantCulture, $"{path}.zones[{i}]");
            switch (zones[i])
            {
                case Zone.Strip strip: cutter.Take(strip, at); break;
                case Zone.Rug rug: cutter.Take(rug, at); break;
                case Zone.Border border: cutter.Take(border, at); break;
                default: throw new ArgumentOutOfRangeException(nameof(zones), zones[i], "No way to cut this zone.");
            }
        }

        if (remarks.Faults.Count == before) cutter.TakeRest();
        return remarks.Faults.Count == before ? cutter._parts : [];
    }

    private void Take(Zone.Strip strip, string at)
    {
        var half = Half(strip);
        var bounds = Bounds();
        var (from, to) = (strip.From, strip.To ?? bounds.Top + half + Length.FromMillimetres(1));
        if (to <= from || from <= bounds.Bottom || from >= bounds.Top || (strip.To is { } head && head > bounds.Top))
        {
            _remarks.Refuse(
                strip.To is null || to > from ? at + ".from" : at + ".to",
                strip.To is null ? $"all from {_remarks.Say(from)} up" : $"a band from {_remarks.Say(from)} to {_remarks.Say(to)}",
                $"heights, the lower first, between which \"{_whole.Name}\" has tile: over {_remarks.Say(bounds.Bottom)}, under {_remarks.Say(bounds.Top)}",
                to <= from && strip.To is not null ? "the two heights exchanged" : null);
            return;
        }

        var (inner, outer) = (Tag(_whole.Name), Tag(strip.Name));
        Add(strip, Between(from + half, strip.To is null ? to : to - half, inner), at, $"a band where \"{_whole.Name}\" is not in several parts");
        _rest = [.. Between(bounds.Bottom - half, from - half, outer), .. strip.To is null ? [] : Between(to + half, bounds.Top + half, outer)];
    }

    /// <summary>What of the rest lies between two heights.</summary>
    private IReadOnlyList<TaggedCorner[]> Between(Length from, Length to, int tag)
    {
        var bounds = Bounds();
        if (from >= to) return [];
        var beyond = Length.FromMillimetres(1);
        var cut = BoxClip.Clip(_rest, new(bounds.Left - beyond, from, bounds.Right + beyond, to));
        return [.. cut.Select(ring => Array.ConvertAll(ring, node => node.Tag is BoxClip.Bottom or BoxClip.Top ? node with { Tag = tag } : node))];
    }

    private void Take(Zone.Rug rug, string at)
    {
        var half = Half(rug);
        var (inside, outside) = (Grown(rug.Box, -half), Grown(rug.Box, half));
        var around = Ring.Of(outside);
        var outline = new Ring(_rest[0].Select(node => node.Point).ToSequence());
        var meets = _rest.Any(ring => RingChecks.FirstMeeting(around, new(ring.Select(node => node.Point).ToSequence())) is not null);
        if (inside.Width <= Length.Zero || inside.Height <= Length.Zero || meets || RingChecks.Locate(outline, around.Points[0]) != Whereabouts.Inside || _rest.Count(IsOutline) != 1)
        {
            _remarks.Refuse(
                at, $"a rug from {_remarks.Say(rug.Box.Left)} to {_remarks.Say(rug.Box.Right)} across and from {_remarks.Say(rug.Box.Bottom)} to {_remarks.Say(rug.Box.Top)} up",
                $"a rectangle with tile of \"{_whole.Name}\" all round it, clear of openings", "a band, for a part that goes from edge to edge");
            return;
        }

        var (inner, outer) = (Tag(_whole.Name), Tag(rug.Name));
        var zone = BoxClip.Clip(_rest, inside).Select(ring => Array.ConvertAll(ring, node => node.Tag < 0 ? node with { Tag = inner } : node)).ToList();
        Add(rug, zone, at, "a rectangle with tile all over it");

        // What stood in the rug goes with it; around it the rest gets a hole, run clockwise.
        TaggedCorner[] hole = [.. around.Points.Reverse().Select(point => new TaggedCorner(point.X.Steps, point.Y.Steps, outer))];
        _rest = [.. _rest.Where(ring => RingChecks.Locate(around, ring[0].Point) != Whereabouts.Inside), hole];

        static bool IsOutline(TaggedCorner[] ring) => new Ring(ring.Select(node => node.Point).ToSequence()).DoubledArea > 0;
    }

    private void Take(Zone.Border border, string at)
    {
        if (ZoneField.Of(_whole, _whole.Name, _rest, _edges) is not { } left)
        {
            _remarks.Refuse(at, "a border round what is in several parts", $"a border round one part of \"{_whole.Name}\"", "the border first of the zones");
            return;
        }

        var frame = BorderFrame.Of(left, border, at, Half(border), _remarks);
        if (frame is null) return;
        foreach (var strip in frame.Strips) _parts.Add(new(strip.Face, border.Name, strip.Turn, IsStrip: true));
        var outer = Tag(border.Name);
        TaggedCorner[] inside = [.. frame.Inside.Points.Select(point => new TaggedCorner(point.X.Steps, point.Y.Steps, outer))];
        _rest = [inside, .. _rest.Skip(1)];
    }

    private void TakeRest()
    {
        if (_rest.Count == 0) return;
        if (ZoneField.Of(_whole, _whole.Name, _rest, _edges) is { } rest) _parts.Add(new(rest, _whole.Name, Angle.Zero, IsStrip: false));
        else _remarks.Refuse(_path + ".zones", $"zones that leave \"{_whole.Name}\" in several parts", "zones that leave one part", "a zone more, for what lies above a band: { \"name\": \"upper\", \"from\": ... }");
    }

    private void Add(Zone zone, IReadOnlyList<TaggedCorner[]> rings, string at, string expected)
    {
        if (ZoneField.Of(_whole, zone.Name, rings, _edges) is { } field) _parts.Add(new(field, zone.Name, Angle.Zero, IsStrip: false));
        else _remarks.Refuse(at, $"a zone \"{zone.Name}\" in {(rings.Count == 0 ? "no part" : "several parts")}", expected);
    }

    /// <summary>A new tag for sides at which the tile of another zone begins.</summary>
    private int Tag(string name)
    {
        _edges.Add(new(default, default, name, EdgeKind.Zone));
        return _edges.Count - 1;
    }

    private Length Half(Zone zone) => Grid.HalfDown(zone.Joint ?? _edgeJoint);

    private Box Bounds() => Box.Around(_rest.SelectMany(ring => ring).Select(node => node.Point));

    private static Box Grown(Box box, Length by) => new(box.Left - by, box.Bottom - by, box.Right + by, box.Top + by);
}
