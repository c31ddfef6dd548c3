using System.Globalization;
using CsCheck;
using Gaugerod.Plane.Measure;
using Gaugerod.Testing;

namespace Gaugerod.Plane.Tests.Measure;

/// <summary>What holds for every length and every text, whatever the machine's language.</summary>
public class LengthTextProperties
{
    private static readonly Gen<Length> Lengths =
        Gen.Frequency((3, Gen.Long[-30_000_000, 30_000_000]), (1, Gen.Long[-3_000_000_000, 3_000_000_000])).Select(Length.FromSteps);

    private static readonly Gen<Tape> InchTapes =
        Gen.OneOf<(long, long)>((1, 1), (1, 2), (1, 4), (1, 8), (1, 16), (1, 32), (1, 64), (1, 128), (3, 16), (1, 5), (1, 10), (1, 80), (2, 1))
            .Select(m => new Tape(LengthUnit.Inch, Length.FromInches(0, m.Item1, m.Item2)));

    private static readonly Gen<Tape> MillimetreTapes =
        Gen.OneOf(3200L, 1600, 800, 320, 32, 6400, 16000, 1067, 1, 7)
            .Select(m => new Tape(LengthUnit.Millimetre, Length.FromSteps(m)));

    // an inch mark that ends in no decimal either
    private static readonly Gen<Tape> OddTapes = Gen.Long[1, 90_000].Select(m => new Tape(LengthUnit.Inch, Length.FromSteps(m)));

    private static readonly Gen<Tape> Tapes = Gen.OneOf(InchTapes, MillimetreTapes, OddTapes);

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void What_is_written_reads_back_as_the_mark(string culture) => Under(culture, () =>
        Gen.Select(Lengths, Tapes).Each((length, tape) =>
        {
            Assert.Equal(tape.Nearest(length), Read(LengthText.Nearest(length, tape), tape));
            Assert.Equal(tape.Nearest(length), Read(LengthText.NearestBare(length, tape), tape));
            Assert.Equal(tape.Down(length), Read(LengthText.Down(length, tape), tape));
            Assert.Equal(tape.Down(length), Read(LengthText.DownBare(length, tape), tape));
            Assert.Equal(length, Read(LengthText.ExactMillimetres(length), Tape.Millimetres));
        }, threads: 1));

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void Feet_and_inches_read_back_as_the_mark(string culture) => Under(culture, () =>
        Gen.Select(Lengths, Gen.OneOf(InchTapes, OddTapes), Gen.Enum<LengthUnit>()).Each((length, tape, job) =>
        {
            var (nearest, down) = (LengthText.FeetNearest(length, tape), LengthText.FeetDown(length, tape));
            Assert.Equal(tape.Nearest(length), Read(nearest, tape));
            Assert.Equal(tape.Down(length), Read(down, tape));
            Assert.Equal(LengthText.Read(nearest, LengthUnit.Inch), LengthText.Read(nearest, job));
        }, threads: 1));

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void The_machine_s_language_changes_nothing(string culture) =>
        Gen.Select(Texts, Gen.Enum<LengthUnit>()).Each((text, unit) =>
        {
            var plain = LengthText.Read(text, unit);
            Under(culture, () => Assert.Equal(plain, LengthText.Read(text, unit)));
        }, threads: 1);

    [Fact]
    public void No_text_makes_the_reader_fail_and_no_refusal_is_empty() =>
        Gen.Select(Gen.OneOf(Texts, Gen.String), Gen.Enum<LengthUnit>()).Each((text, unit) =>
        {
            switch (LengthText.Read(text, unit))
            {
                case LengthReading.Understood(var value):
                    Assert.True(value.Abs() <= LengthText.Greatest);
                    break;
                case LengthReading.Refused refused:
                    Assert.NotEmpty(refused.Found);
                    Assert.NotEmpty(refused.Expected);
                    Assert.NotEqual(text, refused.Nearest);
                    break;
            }
        }, iter: 100_000);

    [Fact]
    public void A_sum_is_the_sum_of_what_its_terms_read_as() =>
        Gen.Select(Lengths, Lengths, InchTapes).Each((a, b, tape) =>
        {
            var (one, other) = (tape.Nearest(Tenth(a)), tape.Nearest(Tenth(b)));
            Assert.Equal(one + other, Read($"{LengthText.Nearest(one, tape)} + {LengthText.FeetNearest(other, tape)}", tape));
            Assert.Equal(one - other, Read($"{LengthText.FeetNearest(one, tape)} \u2212 {LengthText.Nearest(other, tape)}", tape));
            Assert.Equal(one * 3, Read($"3 x {LengthText.Nearest(one, tape)}", tape));
        });

    // Pieces of lengths in any order: far more of them come near the grammar than letters picked at random.
    private static Gen<string> Texts => Gen.OneOf(
        " ", " ", "'", "\"", "-", "+", "/", "x", "÷", "\u2212", ".", ",", "0", "1", "2", "12", "40", "1/2", "3/16", "1,028", "102.8",
        "½", "⅛", "⅟", "¹", "⁄", "₂", "mm", "cm", "m", "in", "ft", "′", "”", "I", "İ", "٣", "999999999999").Array[0, 12].Select(string.Concat);

    // so that three times a length is still read
    private static Length Tenth(Length length) => Length.FromSteps(length.Abs().Steps / 10);

    private static Length? Read(string text, Tape tape) => (LengthText.Read(text, tape.Unit) as LengthReading.Understood)?.Value;

    // The culture is the thread's, so what is checked under it stays on this one.
    private static void Under(string culture, Action check)
    {
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
        try
        {
            check();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
