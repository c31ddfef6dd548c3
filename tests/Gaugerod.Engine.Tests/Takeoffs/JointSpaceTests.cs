using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Tests.Takeoffs;

public sealed class JointSpaceTests
{
    /// <summary>A 25 lb bag of sanded grout makes 437.6 in3, a 10 lb bag of unsanded 172.9: what the printed cells come to.</summary>
    private const double Sanded = 437.6, Unsanded = 172.9;

    // Source: a grout maker's table of square feet to a bag; sanded 25 lb with joints of 1/8, 1/4, 3/8 and 1/2 in, unsanded 10 lb with 1/16, 3/32 and 1/8 in.
    [Theory]
    [InlineData(1, 1, 2, 58, 34, 26, 22)]
    [InlineData(2, 2, 2, 106, 58, 42, 34)]
    [InlineData(4, 4, 3, 136, 71, 49, 39)]
    [InlineData(6, 6, 3, 201, 103, 71, 55)]
    [InlineData(12, 12, 3, 395, 201, 136, 103)]
    [InlineData(18, 18, 3, 589, 298, 201, 152)]
    [InlineData(24, 24, 3, 784, 395, 265, 201)]
    public void A_bag_of_sanded_grout_fills_what_its_table_says(int wide, int high, int eighths, int eighth, int quarter, int three, int half)
    {
        Cell(wide, high, eighths, 4, Sanded, eighth);
        Cell(wide, high, eighths, 8, Sanded, quarter);
        Cell(wide, high, eighths, 12, Sanded, three);
        Cell(wide, high, eighths, 16, Sanded, half);
    }

    [Theory]
    [InlineData(1, 1, 2, 42, 29, 23)]
    [InlineData(2, 2, 2, 81, 55, 42)]
    [InlineData(4, 4, 3, 105, 71, 54)]
    [InlineData(6, 6, 3, 156, 105, 79)]
    [InlineData(6, 24, 3, 249, 167, 126)]
    [InlineData(12, 12, 3, 310, 207, 156)]
    [InlineData(12, 24, 3, 413, 276, 208)]
    [InlineData(18, 18, 3, 464, 310, 233)]
    [InlineData(24, 24, 3, 618, 412, 310)]
    public void A_bag_of_unsanded_grout_fills_what_its_table_says(int wide, int high, int eighths, int sixteenth, int three, int eighth)
    {
        Cell(wide, high, eighths, 2, Unsanded, sixteenth);
        Cell(wide, high, eighths, 3, Unsanded, three);
        Cell(wide, high, eighths, 4, Unsanded, eighth);
    }

    // One tile and the joints above it and to its right, over and over, are the whole wall.
    private static void Cell(int wide, int high, int eighths, int joint32, double yield, int printed)
    {
        var (w, h, joint) = (Length.FromInches(wide), Length.FromInches(high), Length.FromInches(0, joint32, 32));
        var space = JointSpace.Of(new(Rectangle(w + joint, h + joint), []), [Tile(Rectangle(w, h))]);
        var squareInches = space.Area / (25.4 * 25.4);
        var module = (wide + (joint32 / 32.0)) * (high + (joint32 / 32.0));
        var covers = yield / (squareInches * eighths / 8) * module / 144;
        Assert.True(Math.Abs(covers - printed) <= Math.Max(1, printed * 0.01), $"{wide} by {high}, {joint32}/32: {covers:0.00}, printed {printed}");
    }

    private static Ring Rectangle(Length width, Length height) => new([new(Length.Zero, Length.Zero), new(width, Length.Zero), new(width, height), new(Length.Zero, height)]);

    private static Piece Tile(Ring outline) => new("A1", PieceKind.Full, "wall", 1, 1, "tile", outline.Bounds, outline, [], outline.Bounds.Width, []);
}
