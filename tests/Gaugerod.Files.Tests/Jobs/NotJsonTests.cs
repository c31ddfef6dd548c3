using System.Text;
using Gaugerod.Files.Jobs;
using Gaugerod.Files.Json;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>Files that are no JSON, or no text at all. JSON's grammar is RFC 8259; the slips are those that hands make.</summary>
public class NotJsonTests
{
    [Theory]
    [InlineData("", "job.json:1: found nothing, expected a job that begins with {.")]
    [InlineData("hello", "job.json:1: found hello, expected a job that begins with {.")]
    [InlineData("[]", "job.json:1: found an empty list [ ], expected a group { }.")]
    [InlineData("{ \"name\":\n", "job.json:2: found the end of the file, expected the closing } for the { in line 1.")]
    [InlineData("{ \"name\": \"no end", "job.json:1: found the end of the file, expected the closing \" for the \" in line 1.")]
    [InlineData("{ \"name\": \"a\",\n}", "job.json:2: found a comma with nothing after it before }, expected the next value, or no comma. Nearest: take the comma out.")]
    [InlineData("{ // the shower\n}", "job.json:1: found a comment, expected plain JSON, which has no comments. Nearest: put it in \"note\".")]
    [InlineData("{ 'name': 1 }", "job.json:1: found a single quote ', expected double quotes \" around names and text.")]
    [InlineData("{ “name”: 1 }", "job.json:1: found “name”, expected straight double quotes \" around names and text.")]
    [InlineData("{ name: 1 }", "job.json:1: found name, expected a field's name in double quotes, or }.")]
    [InlineData("{ \"name\": \"a\nb\" }", "job.json:1: found a line that ends inside quotes, expected the closing \" on the same line.")]
    [InlineData("{ \"width\": \"3' 4\"\" }", "job.json:1: found \" twice, expected an inch mark inside quotes to be written \\\". Nearest: leave the inch mark out, as in \"40 1/2\".")]
    [InlineData("{ \"width\": 40 1/2 }", "job.json:1: found 1/2, expected a comma before it. Nearest: a length with a blank in it goes in quotes, as in \"40 1/2\".")]
    [InlineData("{ \"must\": tru }", "job.json:1: found tru, expected a length, a number, text in double quotes, true, false, null, { or [.")]
    [InlineData("{ \"a\": 1\n  \"b\": 2 }", "job.json:2: found \"b\", expected a comma or } before it.")]
    [InlineData("{} {}", "job.json:1: found {, expected nothing after the job's last }.")]
    [InlineData("{ \"name\": \"\\ud83d\" }", "job.json:1: found \"\\ud83d\", expected text whose \\u codes make whole characters.")]
    public void What_is_not_json_is_said_with_its_line_in_plain_words(string text, string message) => Assert.Equal([message], Samples.Messages(text));

    [Fact]
    public void Brackets_may_be_32_deep_and_no_deeper()
    {
        var deep = new string('[', EntryReader.DeepestNesting) + new string(']', EntryReader.DeepestNesting);
        Assert.Equal(["job.json:1: found a list of 1, expected a group { }."], Samples.Messages(deep));
        Assert.Equal(["job.json:1: found brackets more than 32 deep, expected a job, which needs fewer than ten."], Samples.Messages($"[{deep}]"));
    }

    [Fact]
    public void A_utf8_mark_is_no_fault() => Assert.IsType<JobReading.Understood>(JobReader.Read(Encoded(new UTF8Encoding(true)), "job.json"));

    [Fact]
    public void Another_encoding_is_named() =>
        Assert.All(
            new Encoding[] { Encoding.Unicode, Encoding.BigEndianUnicode, Encoding.UTF32, new UnicodeEncoding(false, false) },
            encoding => Assert.Equal(["job.json:1: found text in UTF-16 or UTF-32, expected text in UTF-8. Nearest: save the file again as UTF-8."], Messages(Encoded(encoding))));

    [Fact]
    public void A_byte_of_an_old_code_page_is_found_in_its_line()
    {
        var text = Samples.With("plain-wall", "\"name\": \"Plain wall\"", "\"name\": \"Caf\u00e9 wall\"");
        Assert.Equal(
            ["job.json:3: found a byte (hexadecimal E9) that is not UTF-8, expected text in UTF-8. Nearest: save the file again as UTF-8."],
            Messages(Encoding.Latin1.GetBytes(text)));
    }

    [Fact]
    public void A_file_too_large_is_not_read()
    {
        var file = new byte[EncodingCheck.LargestFile + 1];
        Assert.Equal(["job.json:1: found a file of more than 8 MB, expected a job of at most 8 MB."], Messages(file));
    }

    private static byte[] Encoded(Encoding encoding) => [.. encoding.Preamble, .. encoding.GetBytes(Samples.Text("plain-wall"))];

    private static IEnumerable<string> Messages(byte[] file) => Assert.IsType<JobReading.Refused>(JobReader.Read(file, "job.json")).Faults.Select(f => f.Say());
}
