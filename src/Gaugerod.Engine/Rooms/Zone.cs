using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>
/// A part of a face with a field, a run and a placing of its own. A face's zones are taken from it one after another, each
/// from what those before it left; what is left at last goes by the face's own name.
/// </summary>
/// <param name="Name">Its name; runs call it like a face.</param>
public abstract record Zone(string Name)
{
    /// <summary>The joint between the zone and what lies beside it; null for the job's edge joint.</summary>
    public Length? Joint { get; init; }

    /// <summary>How high above y = 0 its heights were read from; default zero. What is said of them is said from there.</summary>
    public Length ReadFrom { get; init; }

    /// <summary>A band from one height to another, or all from a height up.</summary>
    /// <param name="Name">Its name.</param>
    /// <param name="From">The height of its foot above the face's y = 0, in the middle of the joint.</param>
    /// <param name="To">The height of its head; null where it goes all the way up.</param>
    public sealed record Strip(string Name, Length From, Length? To) : Zone(Name)
    {
        /// <summary>The trim that it is made of, a line of pieces between two fields; null, the default, for a band that a run tiles.</summary>
        public TrimRequest? Trimmed { get; init; }

        /// <summary>What the height of its foot may be, so that it meets a joint below; its head goes with it. Null when it is settled.</summary>
        public Span? Range { get; init; }
    }

    /// <summary>A rectangle with tile all round it.</summary>
    /// <param name="Name">Its name.</param>
    /// <param name="Box">Where it lies, to the middle of the joint round it.</param>
    public sealed record Rug(string Name, Box Box) : Zone(Name);

    /// <summary>A frame along the outer edge of what is left of the face: one strip for each side, named after the zone and the side.</summary>
    /// <param name="Name">Its name.</param>
    /// <param name="Width">How wide it is, from the edge of the tile to the middle of the joint inside it.</param>
    /// <param name="Mitred">Whether its strips meet on the mitre; else each runs to the outer edge at its end and butts against the one before it.</param>
    public sealed record Border(string Name, Length Width, bool Mitred) : Zone(Name);
}
