using Gaugerod.Engine.Planning;
using Gaugerod.Files.Json;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads what is set on a face already.</summary>
internal sealed class SetReader(Values values, IReadOnlyList<string?> faces)
{
    private const int MostCourses = 10_000;

    private readonly HashSet<string> _said = new(StringComparer.Ordinal);

    public SetSoFar? Read(Entry entry)
    {
        if (Fields.Open(entry, Forms.SetSoFar, values) is not { } fields) return null;
        var (face, courses) = (KnownNames.FaceOf(faces, fields["face"], values), values.Whole(fields["courses"], 0, MostCourses));
        var from = fields["from"] is { } first ? values.Whole(first, 1, MostCourses) : 1;
        var (left, right) = Top(fields["top"]);
        var aside = fields.Length("aside", LengthRange.Lean, Length.Zero);
        var cut = fields.Items("cut").Select(item => values.Name(item)).ToList();
        if (face is null || courses is not { } set || from is not { } lowest || cut.Contains(null)) return null;
        if (_said.Add(face)) return new(face, set, left, right) { From = lowest, Aside = aside, Cut = cut.OfType<string>().ToSequence() };
        values.Log.AddSaid(fields["face"]!, $"\"{face}\" a second time", "each face once");
        return null;
    }

    private (Length? Left, Length? Right) Top(Entry? entry)
    {
        if (entry is not Entry.Group) return (values.Length(entry, LengthRange.Position), null);
        var fields = Fields.Open(entry, Forms.SetTop, values);
        return (fields?.Length("left", LengthRange.Position), fields?.Length("right", LengthRange.Position));
    }
}
