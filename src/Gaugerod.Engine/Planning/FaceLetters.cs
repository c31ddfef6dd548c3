namespace Gaugerod.Engine.Planning;

/// <summary>A, B, ... Z, AA, AB, ...: a letter for each face of the job.</summary>
internal sealed class FaceLetters
{
    private int _next;

    public string Next()
    {
        var text = "";
        for (var n = ++_next; n > 0; n = (n - 1) / 26) text = (char)('A' + ((n - 1) % 26)) + text;
        return text;
    }
}
