namespace Gaugerod.App.Desk;

/// <summary>The jobs that come with the app, invented by us.</summary>
internal static class Samples
{
    public static IReadOnlyList<string> Names { get; } = ["guest-shower", "cloakroom", "plain-wall"];

    public static string Title(string name) => name switch
    {
        "guest-shower" => "Guest shower, feet and inches",
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

    /// <summary>One wall and one tile to begin with, in sizes that can be worked at once.</summary>
    public static string Empty(bool inches) => inches
        ? """
        {
          "format": "gaugerod-job/1",
          "name": "New job",
          "units": "in",
          "products": [ { "name": "tile", "width": "12", "height": "12", "thickness": "3/8", "perBox": 10 } ],
          "faces": [
            { "name": "wall 1", "readings": { "width": { "foot": "60", "top": "60" }, "height": { "left": "96", "right": "96" } } }
          ],
          "runs": [ { "name": "run 1", "product": "tile", "faces": ["wall 1"], "bond": { "kind": "grid" }, "joint": "1/8" } ]
        }
        """ + "\n"
        : """
        {
          "format": "gaugerod-job/1",
          "name": "New job",
          "units": "mm",
          "products": [ { "name": "tile", "width": 300, "height": 300, "thickness": 9, "perBox": 10 } ],
          "faces": [
            { "name": "wall 1", "readings": { "width": { "foot": 1500, "top": 1500 }, "height": { "left": 2400, "right": 2400 } } }
          ],
          "runs": [ { "name": "run 1", "product": "tile", "faces": ["wall 1"], "bond": { "kind": "grid" }, "joint": 3 } ]
        }
        """ + "\n";
}
