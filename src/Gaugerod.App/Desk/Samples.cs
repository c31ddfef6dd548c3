namespace Gaugerod.App.Desk;

/// <summary>The jobs that come with the app, invented by us.</summary>
internal static class Samples
{
    public static IReadOnlyList<string> Names { get; } = ["guest-shower", "attic-shower", "cloakroom", "galley-splash", "porch-floor", "plain-wall"];

    public static string Title(string name) => name switch
    {
        "guest-shower" => "Guest shower, feet and inches",
        "attic-shower" => "Attic shower, from bare studs to the hand-over, millimetres",
        "galley-splash" => "Galley splash, herringbone, millimetres",
        "porch-floor" => "Porch floor, frame and rug, millimetres",
        "cloakroom" => "Cloakroom wall, millimetres",
        _ => "Plain wall, by hand",
    };

    public static string Text(string name)
    {
        using var stream = typeof(Samples).Assembly.GetManifestResourceStream($"samples/{name}.json")
            ?? throw new InvalidOperationException("No such sample: " + name);
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
