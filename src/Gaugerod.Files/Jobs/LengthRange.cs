using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Files.Jobs;

/// <summary>What a length in a job file may be. The outer limits keep all arithmetic exact; common sense set the others, no source.</summary>
/// <param name="Least">No less than this.</param>
/// <param name="Most">No more than this.</param>
/// <param name="What">What the length is, in words.</param>
/// <param name="Words">What it may be in a job in millimetres, in words.</param>
internal sealed record LengthRange(Length Least, Length Most, string What, string Words)
{
    private static readonly Length Some = Length.FromSteps(1);

    public static readonly LengthRange TileSide = new(Product.LeastSide, Product.MostSide, "a tile's side", "from 5 mm to 4 m");
    public static readonly LengthRange Stagger = TileSide with { What = "a stagger" };
    public static readonly LengthRange Joint = new(Length.Zero, Mm(25), "a joint", "from 0 to 25 mm");
    public static readonly LengthRange Kerf = new(Length.Zero, Mm(10), "a kerf", "from 0 to 10 mm");
    public static readonly LengthRange Layer = new(Length.Zero, Mm(100), "a thickness", "from 0 to 100 mm");
    public static readonly LengthRange Tolerance = new(Length.Zero, Mm(50), "a difference", "from 0 to 50 mm");
    public static readonly LengthRange Accuracy = new(Length.FromSteps(32), Mm(100), "an accuracy", "from 0.01 to 100 mm");
    public static readonly LengthRange Mark = new(Length.FromSteps(320), Length.FromInches(1), "a tape's mark", "from 0.1 mm to 1 in");
    public static readonly LengthRange Size = new(Some, Mm(100_000), "a size", "of more than 0, at most 100 m");
    public static readonly LengthRange Position = new(Mm(-100_000), Mm(100_000), "a distance", "of at most 100 m");
    public static readonly LengthRange Lean = new(Mm(-1000), Mm(1000), "a lean", "of at most 1 m");
    public static readonly LengthRange Strip = new(Length.Zero, Mm(300), "a width", "from 0 to 300 mm");
    public static readonly LengthRange TrimLength = new(Product.LeastSide, Mm(10_000), "a trim's length", "from 5 mm to 10 m");
    public static readonly LengthRange TrimWidth = new(Some, Mm(300), "a width", "of more than 0, at most 300 mm");
    public static readonly LengthRange Bore = new(Some, Mm(4000), "a diameter", "of more than 0, at most 4 m");
    public static readonly LengthRange Cut = new(Length.Zero, Mm(4000), "a size", "from 0 to 4 m");

    public static readonly LengthRange Bed = Strip with { What = "a thickness" };
    public static readonly LengthRange Notch = new(Mm(1), Mm(30), "a notch", "from 1 to 30 mm");
    public static readonly LengthRange Depth = new(Some, Mm(100), "a depth", "of more than 0, at most 100 mm");
    public static readonly LengthRange Tooth = new(Length.Zero, Mm(30), "a tooth", "from 0 to 30 mm");
    public static readonly LengthRange OutOfFlat = new(Mm(-300), Mm(300), "a reading", "of at most 300 mm either way");
    public static readonly LengthRange Every = new(Mm(10), Mm(2000), "a distance", "from 10 mm to 2 m");
    public static readonly LengthRange Apart = new(Mm(500), Mm(100_000), "a distance", "from 0.5 to 100 m");
    public static readonly LengthRange Body = new(Mm(10), Mm(10_000), "a body's side", "from 10 mm to 10 m");
    public static readonly LengthRange Line = new(Mm(-4000), Mm(4000), "a height", "of at most 4 m");

    public static readonly LengthRange BoardSide = new(BoardProduct.LeastSide, Product.MostSide, "a board's side", "from 300 mm to 4 m");
    public static readonly LengthRange NicheDepth = new(Mm(20), Mm(1000), "a niche's depth", "from 20 mm to 1 m");
    public static readonly LengthRange SeamWidth = new(Mm(10), Mm(300), "a width", "from 10 to 300 mm");
    public static readonly LengthRange Gap = Joint with { What = "a gap" };
    public static readonly LengthRange ScrewsApart = new(Mm(50), Mm(600), "a distance between screws", "from 50 to 600 mm");
    public static readonly LengthRange Inset = new(Mm(5), Mm(50), "an inset", "from 5 to 50 mm");
    public static readonly LengthRange StudSpacing = new(Mm(100), Mm(1500), "a spacing of studs", "from 100 mm to 1.5 m");
    public static readonly LengthRange StudWidth = new(Mm(20), Mm(300), "a stud's width", "from 20 to 300 mm");

    /// <summary>What the length may be, in words and on the job's tape; in inches the ends are rounded into the range.</summary>
    public string Say(Tape tape)
    {
        if (tape.Unit == LengthUnit.Millimetre || this == Mark) return $"{What} {Words}";
        var most = Most < Length.FromInches(48) ? LengthText.Down(Most, tape) : LengthText.FeetDown(Most, tape);
        if (Least == Some) return $"{What} of more than 0, at most {most}";
        if (Least.IsNegative) return $"{What} of at most {most}";
        return Least == Length.Zero ? $"{What} from 0 to {most}" : $"{What} from {LengthText.Nearest(tape.Down(Least) + tape.Mark, tape)} to {most}";
    }

    public bool Holds(Length length) => length >= Least && length <= Most;

    /// <summary>The nearest length on the tape that the range holds, in words; null when the end of the range is no useful answer. A minus sign is taken for a slip.</summary>
    public string? NearestTo(Length length, Tape tape)
    {
        if (length.IsNegative && Holds(length.Abs())) return LengthText.Nearest(length.Abs(), tape);
        if (length > Most) return LengthText.Down(Most, tape);
        if (Least == Some) return null;
        var down = tape.Down(Least);
        return LengthText.Down(down == Least ? down : down + tape.Mark, tape);
    }

    private static Length Mm(long millimetres) => Length.FromMillimetres(millimetres);
}
