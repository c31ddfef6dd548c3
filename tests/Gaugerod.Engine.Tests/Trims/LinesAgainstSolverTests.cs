using Gaugerod.Engine.Trims;
using Gaugerod.Testing;

namespace Gaugerod.Engine.Tests.Trims;

/// <summary>Source: CP-SAT of Google.OrTools, the same line as a model of whole numbers.</summary>
public sealed class LinesAgainstSolverTests
{
    [Fact]
    public void On_40_lines_a_general_solver_finds_none_better() => Same(40);

    /// <summary>The three hundred the issue asks for.</summary>
    [Fact]
    [Trait("Category", "Long")]
    public void On_300_lines_a_general_solver_finds_none_better() => Same(300);

    private static void Same(int count) => LineCase.Large.EachDear(
        asked => Assert.Equal(LineBySolver.Best(asked), asked.Told(JointPlacing.Best(asked.Line, asked.Joints, asked.Twice))), count);
}
