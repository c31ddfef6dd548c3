namespace Gaugerod.Engine.Lines;

/// <summary>Says the names of edges as one says them on the wall.</summary>
public static class EdgeWords
{
    /// <summary><c>bench.left</c> of north as <c>the left side of the bench on north</c>.</summary>
    public static string Of(string face, string edge)
    {
        var (thing, side) = Parts(edge);
        if (thing.Length > 0) return $"{Side(side)} of {The(thing)} on {face}";
        return IsSide(edge) ? $"{Side(edge)} of {face}" : $"{The(edge)} on {face}";
    }

    /// <summary>The same where the face is known.</summary>
    public static string Of(string edge)
    {
        var (thing, side) = Parts(edge);
        if (thing.Length > 0) return $"{Side(side)} of {The(thing)}";
        return IsSide(edge) ? Side(edge) : The(edge);
    }

    private static (string Thing, string Side) Parts(string edge)
    {
        var dot = edge.IndexOf('.', StringComparison.Ordinal);
        return dot < 0 ? ("", edge) : (edge[..dot], edge[(dot + 1)..]);
    }

    private static bool IsSide(string edge) => edge is "left" or "right" or "foot" or "head" or "top" or "bottom" || HasNumber(edge) || IsBetweenCorners(edge);

    private static string Side(string side) => side switch
    {
        "left" or "right" => $"the {side} side",
        _ when IsBetweenCorners(side) => "side " + side,
        _ => HasNumber(side) ? side : "the " + side,
    };

    /// <summary>A name that ends in a number needs no article: side 2, opening 1.</summary>
    private static string The(string name) => name.StartsWith("the ", StringComparison.Ordinal) || name.LastIndexOf(' ') is > 0 and var space && name[(space + 1)..].All(char.IsAsciiDigit) ? name : "the " + name;

    /// <summary>Sides of a survey are called by their corners, such as BC.</summary>
    private static bool IsBetweenCorners(string name) => name is [var from, var to] && char.IsAsciiLetterUpper(from) && char.IsAsciiLetterUpper(to);

    /// <summary>Edges that were given no name are called side 1, side 2 and so on.</summary>
    private static bool HasNumber(string name) => name.StartsWith("side ", StringComparison.Ordinal);
}
