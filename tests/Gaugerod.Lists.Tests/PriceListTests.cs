using System.Globalization;
using System.Text;
using CsCheck;
using Gaugerod.Engine.Prices;
using Gaugerod.Testing;

namespace Gaugerod.Lists.Tests;

/// <summary>Invented price lists, as spreadsheets and suppliers write them.</summary>
public sealed class PriceListTests
{
    [Theory]
    [InlineData("item;unit;price\ntile;box;31,20\nbar;each;1.234,00\n")]
    [InlineData("sep=;\r\nItem;Unit;Price\r\ntile;box;31,20\r\nbar;each;1234\r\n")]
    [InlineData("\uFEFFitem,unit,price\ntile,box,31.20\nbar,each,\"1,234.00\"\n")]
    [InlineData("price\titem\tunit\n31.20\ttile\tboxes\n1,234.00 \tbar\tpc\n")]
    [InlineData("\n\nitem,unit,price,\ntile,box,31.20,\n,,,\nbar,each,1234,")]
    public void A_list_is_read_however_its_fields_are_parted(string text)
    {
        var lines = Read(text).Lines;
        Assert.Equal([("tile", PriceUnit.Box, Spread.Of(31.20m)), ("bar", PriceUnit.Each, Spread.Of(1234))], lines.Select(line => (line.Price!.Item, line.Price.Unit, line.Price.Price!.Value)));
    }

    [Fact]
    public void Every_line_that_cannot_be_used_says_what_was_found_and_what_was_expected()
    {
        var read = Read("item;unit;price;currency\nok;box;12,50;EUR\n;box;12;EUR\nells;ell;12;EUR\ncheap;box;0;EUR\nodd;box;-4,00;EUR\nbare;box;;EUR\nword;box;call us;EUR\nwide;box;12;EUR;x\npoint;box;12.50;EUR\nfree;;by others;\n");
        Assert.Equal(
            [
                (2, ListFate.NotUsed, ""), (3, ListFate.Unread, "found no item, expected its name as the job has it"), (4, ListFate.Unread, "found \"ell\" as the unit, expected box, each, m2, ft2, m, ft, hour, pack, lump"),
                (5, ListFate.Unread, "found \"0\", expected a price of more than nothing, or \"by others\""), (6, ListFate.Unread, "found \"-4,00\", expected a price of more than nothing, or \"by others\""),
                (7, ListFate.NoPrice, "found no price, expected a number or \"by others\""), (8, ListFate.Unread, "found \"call us\" as the price, expected a number to 10 000 000 such as \"12,50\", or \"12 to 15\""),
                (9, ListFate.Unread, "found 5 fields, expected 4"), (10, ListFate.Unread, "found \"12.50\" as the price, expected a number to 10 000 000 such as \"12,50\", or \"12 to 15\""), (11, ListFate.NotUsed, ""),
            ],
            read.Lines.Select(line => (line.First, line.Fate, line.Said)));
        Assert.Equal("EUR", read.Currency!.Code);
    }

    /// <summary>A bare comma in a list parted by commas makes two fields of a price.</summary>
    [Fact]
    public void A_comma_that_parts_a_price_in_two_is_told() =>
        Assert.Equal("found 4 fields, expected 3; put what holds a comma in quotes", Assert.Single(Read("item,unit,price\ntile,box,12,50\n").Lines).Said);

    [Fact]
    public void Marks_for_inches_are_no_quotes_and_a_quote_that_is_never_closed_swallows_nothing()
    {
        var lines = Read("item;unit;price\n1/2\" trowel;each;9,50\n3/8\" trowel;each;8,50\n\"a \"\"big\"\" bar\";each;7,00\n\"lost;each;6,00\ntile;box;31,20\n").Lines;
        Assert.Equal([(2, "1/2\" trowel"), (3, "3/8\" trowel"), (4, "a \"big\" bar"), (5, "\"lost"), (6, "tile")], lines.Select(line => (line.First, line.Item)));
        Assert.All(lines, line => Assert.NotNull(line.Price));
    }

    [Fact]
    public void A_quoted_field_over_two_lines_keeps_the_count_of_lines()
    {
        var lines = Read("item;unit;price;note\r\ntile;box;31,20;\"one\r\ntwo\"\r\nbar;each;4;\r\n").Lines;
        Assert.Equal([(2, 3), (4, 4)], lines.Select(line => (line.First, line.Last)));
    }

    [Fact]
    public void Where_no_price_tells_the_mark_the_doubt_is_said_with_its_lines()
    {
        var read = Read("item;unit;price\nslab;each;1.200\ntile;box;31\n");
        Assert.Equal(Spread.Of(1200), read.Lines[0].Price!.Price);
        Assert.Contains("In line 2 the point was taken to part thousands", read.Said[1], StringComparison.Ordinal);
        Assert.Equal(Spread.Of(1200), Read("item,unit,price\nslab,each,\"1,200\"\n").Lines[0].Price!.Price);
        // One plain price settles it for all.
        Assert.Single(Read("item;unit;price\nslab;each;1.200\ntile;box;31,20\n").Said);
        Assert.Equal(Spread.Of(1.2m), Read("item;unit;price\nslab;each;1.200\ntile;box;31.20\n").Lines[0].Price!.Price);
    }

    [Theory]
    [InlineData("", "list.csv:1: found a file without a line, expected a head with item, unit and price.")]
    [InlineData("tile;box;31,20\n", "list.csv:1: found \"tile;box;31,20\", expected a head that names the columns: item, unit and price, and if you like currency, note, source, date, parted by ; or , or a tab.")]
    [InlineData("item;unit;price;price\n", "list.csv:1: found two columns \"price\", expected every column once.")]
    public void What_is_no_list_is_refused_as_a_whole(string text, string said) => Assert.Equal(said, Refused(Encoding.UTF8.GetBytes(text)));

    [Fact]
    public void Other_encodings_are_named()
    {
        Assert.Equal("list.csv:1: found text in UTF-16 or UTF-32, expected text in UTF-8. Nearest: save the file again as UTF-8.", Refused(Encoding.Unicode.GetPreamble().Concat(Encoding.Unicode.GetBytes("item;unit;price")).ToArray()));
        Assert.Equal("list.csv:2: found a byte (hexadecimal E9) that is not UTF-8, expected text in UTF-8. Nearest: save the file again as UTF-8.", Refused(Encoding.Latin1.GetBytes("item;unit;price\nbétonné;box;1\n")));
        Assert.Equal("list.csv:1: found a file that is no text, expected a price list, saved as text in UTF-8.", Refused([(byte)'a', (byte)'b', 0]));
        Assert.Equal("list.csv:1: found a file of more than 8 MB, expected a price list of at most 8 MB.", Refused(new byte[(8 << 20) + 1]));
    }

    [Fact]
    public void So_many_lines_are_read_and_one_more_is_too_many()
    {
        var all = new StringBuilder("item;unit;price\n");
        for (var i = 1; i < PriceListReader.MostLines; i++) all.Append(CultureInfo.InvariantCulture, $"item {i};each;{i},50\n");
        Assert.Equal(PriceListReader.MostLines - 1, Read(all.ToString()).Lines.Count(line => line.Price is not null));
        Assert.StartsWith("list.csv:1: found 50001 lines, expected at most 50000", Refused(Encoding.UTF8.GetBytes(all + "one more;each;1,00\n")), StringComparison.Ordinal);
    }

    /// <summary>Whatever is in a file, every line with something in it is told of, once.</summary>
    [Fact]
    public void No_line_is_ever_lost() => Gen.String[Gen.OneOf(Gen.Char["ab1.,;\"\t "], Gen.Const('\n'), Gen.Const('\r'), Gen.Const('"')), 0, 120].Each(text =>
    {
        var lines = Read("item;unit;price\n" + text).Lines;
        var told = lines.SelectMany(line => Enumerable.Range(line.First, line.Last - line.First + 1)).ToList();
        Assert.Equal(told.Distinct().Count(), told.Count);
        var all = text.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n').Split('\n');
        for (var i = 0; i < all.Length; i++)
        {
            // What holds nothing but what parts and quotes is no line.
            if (all[i].Any(char.IsAsciiLetterOrDigit)) Assert.Contains(i + 2, told);
        }
    }, iter: 2000);

    private static PriceListReading.Understood Read(string text) => Assert.IsType<PriceListReading.Understood>(PriceListReader.Read(Encoding.UTF8.GetBytes(text), "list.csv"));

    private static string Refused(byte[] file) => Assert.IsType<PriceListReading.Refused>(PriceListReader.Read(file, "list.csv")).Fault.Say();
}
