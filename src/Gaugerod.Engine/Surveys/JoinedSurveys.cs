using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Surveys;

/// <summary>A side that was read on two faces: a wall's foot and the floor's side under it, the corner of two walls.</summary>
/// <param name="Side">The corner that it begins at on its own face.</param>
/// <param name="Face">The other face's name.</param>
/// <param name="Other">The corner that it begins at there.</param>
/// <param name="Within">How far the two lengths may differ, one standard deviation. More than zero.</param>
public sealed record SharedSide(int Side, string Face, int Other, Length Within);

/// <summary>A face's survey among those it is reckoned with.</summary>
/// <param name="Face">The face's name.</param>
/// <param name="At">Its place in the job, counted from zero.</param>
/// <param name="Survey">What was read on it.</param>
public sealed record FaceSurveyed(string Face, int At, FaceSurvey Survey);

/// <summary>The surveys of a room that share sides, directly or through others: their readings are weighed all together.</summary>
public sealed class JoinedSurveys : IEquatable<JoinedSurveys>
{
    // Reckoned at the first look: every face of the room asks for the same.
    private readonly Lazy<JoinedNetwork> _network;

    private JoinedSurveys(Sequence<FaceSurveyed> faces)
    {
        Faces = faces;
        _network = new(() => JoinedNetwork.Of(faces));
    }

    /// <summary>The faces, in the job's order.</summary>
    public Sequence<FaceSurveyed> Faces { get; }

    internal JoinedNetwork Network => _network.Value;

    /// <summary>One for each of the faces: a room's for those that share sides, one of its own for any other.</summary>
    /// <param name="faces">Every surveyed face of a job. Sides shared with others than these do not count.</param>
    public static Sequence<JoinedSurveys> Of(Sequence<FaceSurveyed> faces)
    {
        var room = Enumerable.Range(0, faces.Count).ToArray();
        for (var i = 0; i < faces.Count; i++)
        {
            foreach (var shared in faces[i].Survey.Same)
            {
                var other = IndexOf(faces, shared.Face);
                if (other < 0 || room[other] == room[i]) continue;
                var (kept, gone) = (Math.Min(room[i], room[other]), Math.Max(room[i], room[other]));
                for (var k = 0; k < room.Length; k++) room[k] = room[k] == gone ? kept : room[k];
            }
        }

        var joined = room.Distinct().ToDictionary(of => of, of => new JoinedSurveys(faces.Where((_, i) => room[i] == of).ToSequence()));
        return room.Select(of => joined[of]).ToSequence();
    }

    /// <summary>A face's survey by itself.</summary>
    internal static JoinedSurveys Alone(string face, FaceSurvey survey) => new([new(face, 0, survey)]);

    /// <summary>Where a face stands among them; -1 where it does not.</summary>
    internal static int IndexOf(Sequence<FaceSurveyed> faces, string face)
    {
        for (var i = 0; i < faces.Count; i++)
        {
            if (string.Equals(faces[i].Face, face, StringComparison.Ordinal)) return i;
        }

        return -1;
    }

    /// <inheritdoc/>
    public bool Equals(JoinedSurveys? other) => other is not null && Faces.Equals(other.Faces);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as JoinedSurveys);

    /// <inheritdoc/>
    public override int GetHashCode() => Faces.GetHashCode();
}
