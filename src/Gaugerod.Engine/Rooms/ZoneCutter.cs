using System.Globalization;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>Cuts a finished face into its zones and what they leave.</summary>
internal sealed class ZoneCutter
{
    private readonly FinishedFace _whole;
    private readonly Sequence<Zone> _zones;
    private readonly Length _edgeJoint;
    private readonly Tape _tape;
    private readonly ZoneOffers _offers;

    private readonly List<ZonePart> _parts = [];
    private readonly List<TakenZone> _taken = [];
    private readonly ZoneRest _rest;

    private ZoneCutter(FinishedFace whole, Sequence<Zone> zones, Length edgeJoint, Tape tape)
    {
        (_whole, _zones, _edgeJoint, _tape, _offers) = (whole, zones, edgeJoint, tape, new(tape));
        _rest = new(whole, tape);
    }

    /// <summary>The zones, then what is left under the face's own name; none, with remarks, where a zone cannot be cut.</summary>
    /// <param name="whole">The face as a whole.</param>
    /// <param name="zones">Its zones.</param>
    /// <param name="path">Where the face stands in the job.</param>
    /// <param name="edgeJoint">The joint of zones that state none.</param>
    /// <param name="remarks">Takes what is wrong.</param>
    public static IReadOnlyList<ZonePart> Cut(FinishedFace whole, Sequence<Zone> zones, string path, Length edgeJoint, Remarks remarks)
    {
        var cutter = new ZoneCutter(whole, zones, edgeJoint, remarks.Tape);
        var order = ZoneOrder.Of(zones);
        var asked = zones;
        zones = order.Select(i => asked[i]).ToSequence();
        for (var i = 0; i < zones.Count; i++)
        {
            if (cutter.Take(zones[i]) is not { } refusal) continue;
            var at = string.Create(CultureInfo.InvariantCulture, $"{path}.zones[{order[i]}]");
            var offer = refusal.Offers.FirstOrDefault(offer => Goes([.. zones.Take(i), offer.Zone, .. zones.Skip(i + 1)], all: true))
                ?? refusal.Offers.FirstOrDefault(offer => Goes([.. zones.Take(i), offer.Zone], all: false));
            remarks.Faults.Add(new(at + refusal.Field, refusal.Found, refusal.Expected, offer?.Words ?? refusal.Advice)
            {
                Mends = offer is null ? [] : ZoneMends.Of(at, zones[i], offer.Zone, remarks.Tape),
            });
            return [];
        }

        if (cutter.TakeRest()) return cutter._parts;
        remarks.Faults.Add(cutter.PartedRest($"{path}.zones", zones));
        return [];

        // That what is left is in several parts is another fault, with a nearest of its own.
        bool Goes(IReadOnlyList<Zone> others, bool all)
        {
            var trial = new ZoneCutter(whole, zones, edgeJoint, remarks.Tape);
            return others.All(zone => trial.Take(zone) is null) && (!all || trial._rest.Rings.Count > 0);
        }
    }

    private ZoneRefusal? Take(Zone zone) => zone switch
    {
        Zone.Strip strip => Take(strip),
        Zone.Rug rug => Take(rug),
        Zone.Border border => Take(border),
        _ => throw new ArgumentOutOfRangeException(nameof(zone), zone, "No way to cut this zone."),
    };

    private ZoneRefusal? Take(Zone.Strip strip)
    {
        if (_rest.Rings.Count == 0) return Nothing(strip);
        var (half, bounds) = (Half(strip), _rest.Bounds());
        if (strip.To <= strip.From) return Refused(".to", "a head above its foot");
        if (_taken.FirstOrDefault(taken => taken.IsMetBy(strip)) is { } met)
        {
            return Refused(strip.From > met.From || strip.To is null ? ".from" : ".to", $"heights clear of {met.Say(height => Say(height - strip.ReadFrom))}");
        }

        if (strip.From <= bounds.Bottom || strip.From >= bounds.Top || strip.To > bounds.Top)
        {
            return Refused(
                strip.From <= bounds.Bottom || strip.From >= bounds.Top ? ".from" : ".to",
                $"heights between which \"{_whole.Name}\" has tile: over {Say(bounds.Bottom - strip.ReadFrom)}{_rest.Which(bounds.Bottom)}, under {Say(bounds.Top - strip.ReadFrom)}{_rest.Which(bounds.Top)}");
        }

        var top = strip.To ?? bounds.Top + half + Length.FromMillimetres(1);
        var (inner, outer) = (_rest.Tag(_whole.Name), _rest.Tag(strip.Name));
        var rings = _rest.Between(strip.From + half, strip.To is null ? top : top - half, inner);
        if (!Add(strip, rings))
        {
            var across = _taken.FirstOrDefault(taken => taken.Zone is Zone.Strip && taken.From >= strip.From);
            return Refused("", across is null || rings.Count == 0 ? $"a band that is wider than its joint and lies where \"{_whole.Name}\" is in one part" : $"a band in one part: {across.Say(height => Say(height - strip.ReadFrom))}, lies across it");
        }

        _rest.Rings = [.. _rest.Between(bounds.Bottom - half, strip.From - half, outer), .. strip.To is null ? [] : _rest.Between(top + half, bounds.Top + half, outer)];
        _taken.Add(new(strip, strip.From, strip.To ?? bounds.Top));
        return null;

        ZoneRefusal Refused(string field, string expected) => new(
            field, strip.To is { } head ? $"a band from {Say(strip.From - strip.ReadFrom)} to {Say(head - strip.ReadFrom)}" : $"all from {Say(strip.From - strip.ReadFrom)} up",
            expected, _offers.Of(strip, [.. Marks(bounds, half).Append(_offers.Up(strip.From + (half * 2))).Distinct()]));
    }

    /// <summary>Heights at which a band may end.</summary>
    private IEnumerable<Length> Marks(Box bounds, Length half)
    {
        foreach (var taken in _taken)
        {
            yield return taken.From;
            yield return taken.To;
        }

        // Zones that are still to come, too: they go on where this one ends.
        foreach (var other in _zones.OfType<Zone.Strip>())
        {
            yield return other.From;
            if (other.To is { } to) yield return to;
        }

        yield return _offers.Up(bounds.Bottom);
        yield return _offers.Up(bounds.Bottom + (half * 2));
        yield return _offers.Down(bounds.Top);
        yield return _offers.Down(bounds.Top - (half * 2) - Length.FromSteps(1));
    }

    private ZoneRefusal? Take(Zone.Rug rug)
    {
        if (_rest.Rings.Count == 0) return Nothing(rug);
        var half = Half(rug);
        var (inside, outside) = (Grown(rug.Box, -half), Grown(rug.Box, half));
        if (inside.Width <= Length.Zero || inside.Height <= Length.Zero) return Refused("", $"a rectangle wider and higher than its joint of {Say(half * 2)}");
        var (around, all) = (Ring.Of(outside), _whole.Field.Outer.Bounds);
        if (outside.Left >= all.Right || outside.Right <= all.Left || outside.Bottom >= all.Top || outside.Top <= all.Bottom)
        {
            return Refused("", $"a rectangle on the tile of \"{_whole.Name}\", from {Say(all.Left)} to {Say(all.Right)} across and from {Say(all.Bottom - rug.ReadFrom)} to {Say(all.Top - rug.ReadFrom)} up; it lies outside the wall");
        }

        if ((Over(rug) ?? _rest.InTheWay(around)) is { } way) return Refused("", $"a rectangle with tile of \"{_whole.Name}\" all round it{way}");

        var (inner, outer) = (_rest.Tag(_whole.Name), _rest.Tag(rug.Name));
        var zone = BoxClip.Clip(_rest.Rings, inside).Select(ring => Array.ConvertAll(ring, node => node.Tag < 0 ? node with { Tag = inner } : node)).ToList();
        if (!Add(rug, zone)) return Refused("", "a rectangle with tile all over it");

        // What stood in the rug goes with it; around it the rest gets a hole, run clockwise.
        TaggedCorner[] hole = [.. around.Points.Reverse().Select(point => new TaggedCorner(point.X.Steps, point.Y.Steps, outer))];
        _rest.Rings = [.. _rest.Rings.Where(ring => RingChecks.Locate(around, ring[0].Point) != Whereabouts.Inside), hole];
        _taken.Add(new(rug, rug.Box.Bottom, rug.Box.Top));
        return null;

        ZoneRefusal Refused(string field, string expected) => new(
            field, $"a rug from {Say(rug.Box.Left)} to {Say(rug.Box.Right)} across and from {Say(rug.Box.Bottom - rug.ReadFrom)} to {Say(rug.Box.Top - rug.ReadFrom)} up",
            expected, Rugs(rug, half)) { Advice = "a band, for a part that goes from edge to edge" };
    }

    /// <summary>Says that a rug lies in a band, where it does.</summary>
    private string? Over(Zone.Rug rug) =>
        _taken.FirstOrDefault(taken => taken.Zone is Zone.Strip && taken.From <= rug.Box.Bottom && taken.To >= rug.Box.Top) is { } band ? $"; the zone \"{band.Zone.Name}\" is in the way" : null;

    private IEnumerable<ZoneOffer> Rugs(Zone.Rug rug, Length half)
    {
        var (least, bounds) = (half + half, _rest.Bounds());
        var boxes = _rest.Holes.Select(ring => Box.Around(ring.Select(node => node.Point))).ToList();
        IReadOnlyCollection<Length> After(Length edge, Func<Box, Length> far) => [.. boxes.Select(far).Append(edge).Select(at => _offers.Up(at + half)).Distinct()];
        IReadOnlyCollection<Length> Before(Length edge, Func<Box, Length> near) => [.. boxes.Select(near).Append(edge).Select(at => _offers.Down(at - half - Length.FromSteps(1))).Distinct()];
        var offers = _offers.Of(
            rug, After(bounds.Left, box => box.Right), Before(bounds.Right, box => box.Left), After(bounds.Bottom, box => box.Top), Before(bounds.Top, box => box.Bottom), _offers.Up(least + Product.LeastSide));
        return offers.Where(offer => offer.Zone is Zone.Rug { Box: var box } && box.Width > least && box.Height > least);
    }

    private ZoneRefusal? Take(Zone.Border border)
    {
        if (_rest.Rings.Count == 0) return Nothing(border);
        var found = $"a border of {Say(border.Width)}";
        if (_rest.Field(_whole.Name, _rest.Rings) is not { } left)
        {
            return new("", found, $"a border round one part of \"{_whole.Name}\", which the zones before it leave in several", []) { Advice = "the border first of the zones" };
        }

        if (BorderFrame.ArcOf(left) is { } arc) return new("", $"a border along the arc \"{arc}\"", "a border along straight sides: a strip is laid along each", []) { Advice = "a rug or a band" };
        var half = Half(border);
        if (BorderFrame.Of(left, border, half) is not { } frame)
        {
            if (border.Width <= half) return new(".width", Say(border.Width), $"a border wider than half its joint of {Say(half * 2)}", Widths(left, border, half));
            var way = BorderFrame.HoleInTheWay(left, border, half) is { } hole ? $", clear of {ZoneRest.Named(left.Edges.First(edge => edge.From == hole))}" : "";
            return new(".width", Say(border.Width), $"a border that leaves more than {Say(Product.LeastSide)} of \"{_whole.Name}\" inside it{way}", Widths(left, border, half));
        }

        foreach (var strip in frame.Strips) _parts.Add(new(strip.Face, border.Name, strip.Turn, IsStrip: true));
        var outer = _rest.Tag(border.Name);
        TaggedCorner[] inside = [.. frame.Inside.Points.Select(point => new TaggedCorner(point.X.Steps, point.Y.Steps, outer))];
        _rest.Rings = [inside, .. _rest.Rings.Skip(1)];
        return null;
    }

    /// <summary>The widest border there is room for, on a mark of the tape, or the narrowest.</summary>
    private IEnumerable<ZoneOffer> Widths(FinishedFace left, Zone.Border border, Length half)
    {
        var (fits, most) = (_offers.Up(half), Length.Min(border.Width, Length.Max(left.Field.Outer.Bounds.Width, left.Field.Outer.Bounds.Height)));
        if (border.Width > fits)
        {
            while (most - fits > _tape.Mark)
            {
                var middle = _offers.Down(Length.FromSteps((fits + most).Steps / 2));
                if (BorderFrame.Of(left, border with { Width = middle }, half) is null) most = middle;
                else fits = middle;
            }
        }

        // Later zones may leave it less room: then half of it, and half of that.
        for (var width = fits; width > half; width = _offers.Down(Length.FromSteps(width.Steps / 2))) yield return new(border with { Width = width }, Say(width));
    }

    private bool TakeRest()
    {
        if (_rest.Rings.Count == 0) return true;
        if (_rest.Field(_whole.Name, _rest.Rings) is not { } rest) return false;
        _parts.Add(new(rest, _whole.Name, Angle.Zero, IsStrip: false));
        return true;
    }

    private Fault PartedRest(string path, Sequence<Zone> zones)
    {
        const string Expected = "zones that leave one part";
        var found = $"zones that leave \"{_whole.Name}\" in several parts";
        // The band that parts it has something left both above and below.
        if (_taken.LastOrDefault(taken => taken.Zone is Zone.Strip { To: { } head } && !_taken.Exists(other => other.Zone is Zone.Strip && other.From == head) && _rest.Rings.Any(ring => ring.Any(node => node.Y > head.Steps)))?.Zone is not Zone.Strip { To: { } to } band) return new(path, found, Expected);
        var above = $"{{ \"kind\": \"band\", \"name\": {Mend.Of("", "above " + band.Name).Value}, \"from\": {Mend.Of("", to, _tape).Value} }}";
        return new(path, found, Expected, $"a zone more for what lies above \"{band.Name}\", a band \"above {band.Name}\" from {LengthText.Finer(to, _tape)} up") { Mends = [new(string.Create(CultureInfo.InvariantCulture, $"{path}[{zones.Count}]"), above)] };
    }

    private ZoneRefusal Nothing(Zone zone) => new("", $"\"{zone.Name}\" where the zones before it leave nothing", "a zone with something to tile", []) { Advice = "leave it out" };

    private bool Add(Zone zone, IReadOnlyList<TaggedCorner[]> rings)
    {
        if (_rest.Field(zone.Name, rings) is not { } field) return false;
        _parts.Add(new(field, zone.Name, Angle.Zero, IsStrip: false));
        return true;
    }

    private string Say(Length length) => LengthText.Finer(length, _tape);

    private Length Half(Zone zone) => Grid.HalfDown(zone.Joint ?? _edgeJoint);

    private static Box Grown(Box box, Length by) => new(box.Left - by, box.Bottom - by, box.Right + by, box.Top + by);
}
