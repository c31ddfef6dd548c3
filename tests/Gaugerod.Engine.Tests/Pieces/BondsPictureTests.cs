using System.Diagnostics;
using Gaugerod.Testing;

namespace Gaugerod.Engine.Tests.Pieces;

public sealed class BondsPictureTests
{
    private static readonly string s_pictures = Path.Combine(Repo.Root, "docs", "pictures");

    /// <summary>Look at it before it is accepted: at four times its size nothing overlaps and no gap is wider than a joint. The PNG is drawn by librsvg's rsvg-convert when it is accepted.</summary>
    [Fact]
    public void Every_bond_is_pictured_on_one_awkward_face()
    {
        Golden.Matches("../../docs/pictures/bonds.svg", BondsPicture.Svg());
        var png = Path.Combine(s_pictures, "bonds.png");
        if (Environment.GetEnvironmentVariable("GOLDEN_ACCEPT") == "1")
        {
            using var drawn = Process.Start("rsvg-convert", ["-o", png, Path.Combine(s_pictures, "bonds.svg")]);
            drawn.WaitForExit();
            Assert.Equal(0, drawn.ExitCode);
        }

        Assert.True(File.Exists(png), $"There is no {png}; run again with GOLDEN_ACCEPT=1.");
    }
}
