namespace Gaugerod.Engine.Planning;

/// <summary>The engine's one front door.</summary>
public static class Planner
{
    /// <summary>Plans a job. The same job gives the same plan, byte for byte, anywhere.</summary>
    /// <param name="job">A job that <c>JobCheck</c> finds no fault with.</param>
    public static Plan Plan(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        throw new NotSupportedException("The rooms between are being built.");
    }
}
