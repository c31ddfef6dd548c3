using Gaugerod.Plane.Measure;

namespace Gaugerod.Sheets.Sheets;

/// <summary>Writes lengths as the job's tape shows them: cuts to the last mark below, everything else to the nearest.</summary>
internal sealed record Figures(Tape Tape)
{
    public string Unit => Tape.Unit == LengthUnit.Inch ? "in" : "mm";

    /// <summary>The unit written out.</summary>
    public string Units => Tape.Unit == LengthUnit.Inch ? "inches" : "millimetres";

    public string Near(Length length) => LengthText.NearestBare(length, Tape);

    public string Cut(Length length) => LengthText.DownBare(length, Tape);

    /// <summary>The smallest cut: never nothing.</summary>
    public string Narrowest(Length length) => LengthText.NarrowestBare(length, Tape);

    public string NarrowestWithUnit(Length length) => LengthText.Narrowest(length, Tape);

    public string NearWithUnit(Length length) => LengthText.Nearest(length, Tape);

    public string CutWithUnit(Length length) => LengthText.Down(length, Tape);

    /// <summary>A height or a gap that the tape's own marks would hide: to 1/64 in or 0.1 mm.</summary>
    public string Fine(Length length) => LengthText.NearestBare(length, Tape.Nearest(length) == length ? Tape : Finest);

    public string FineWithUnit(Length length) => $"{Fine(length)} {Unit}";

    /// <summary>The same with its sign; nothing has none.</summary>
    public string Signed(Length length) => Finest.Nearest(length) is var near && near == Length.Zero ? "0" : (length.IsNegative ? "\u2212" : "+") + Fine(length.Abs());

    private Tape Finest => new(Tape.Unit, Tape.Unit == LengthUnit.Inch ? Length.FromInches(0, 1, 64) : Length.FromSteps(Length.StepsPerMillimetre / 10));

    /// <summary>Whether two lengths are the same mark when they are cut.</summary>
    public bool SameCut(Length one, Length other) => Tape.Down(one) == Tape.Down(other);

    /// <summary>Nothing, one or many of something.</summary>
    public static string Count(int number, string one, string many) => number switch
    {
        0 => "no " + many,
        1 => "1 " + one,
        _ => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{number} {many}"),
    };

    public static string Number(long number) => number.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
