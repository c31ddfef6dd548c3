using System.Text;
using CsCheck;
using Gaugerod.Files.Jobs;
using Gaugerod.Testing;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>Whatever happens to a file on its way, it is read or refused with places; it never stops the program.</summary>
public class MutationTests
{
    private static readonly byte[][] Files = [.. Samples.Names.Select(n => Encoding.UTF8.GetBytes(Samples.Text(n)))];

    private static readonly string[] Pieces =
        ["\"", "{", "}", "[", "]", ",", ":", "null", "true", "-", "1/0", "9999999999999999999999", "1e999", "\\u0000", "\\ud800", "'", "½", "\n", "\0", "\"name\"", "\"\"", "0", "x", "/*", "."];

    private static readonly Gen<(int File, int At, int Taken, int Piece)> Change =
        Gen.Select(Gen.Int[0, Files.Length - 1], Gen.Int[0, 100_000], Gen.Int[0, 12], Gen.Int[-1, Pieces.Length - 1]);

    [Fact]
    public void Bytes_changed_at_random_never_throw_and_every_refusal_has_its_place() =>
        Change.Array[1, 4].Each(changes => Check(changes.Aggregate(Files[changes[0].File], Changed)), iter: 5_000);

    [Fact]
    public void Any_byte_replaced_by_any_other_never_throws() =>
        Gen.Select(Gen.Int[0, Files.Length - 1], Gen.Int[0, 100_000], Gen.Byte).Each(
            (file, at, value) =>
            {
                var bytes = (byte[])Files[file].Clone();
                bytes[at % bytes.Length] = value;
                Check(bytes);
            },
            iter: 5_000);

    private static byte[] Changed(byte[] bytes, (int File, int At, int Taken, int Piece) change)
    {
        var at = change.At % (bytes.Length + 1);
        var after = Math.Min(bytes.Length, at + change.Taken);
        return [.. bytes[..at], .. change.Piece < 0 ? [] : Encoding.UTF8.GetBytes(Pieces[change.Piece]), .. bytes[after..]];
    }

    private static void Check(byte[] bytes)
    {
        if (JobReader.Read(bytes, "job.json") is not JobReading.Refused refused) return;
        Assert.NotEmpty(refused.Faults);
        var lines = Encoding.UTF8.GetString(bytes).Split('\n').Length;
        foreach (var fault in refused.Faults)
        {
            Assert.InRange(fault.Line, 1, lines);
            Assert.True(fault.Column >= 1);
            Assert.NotEmpty(fault.Found);
            Assert.NotEmpty(fault.Expected);
            Assert.DoesNotContain('\n', fault.Say());
        }
    }
}
