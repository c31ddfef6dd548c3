using System.Globalization;

namespace Gaugerod.Engine.Takeoffs;

/// <summary>What is bought beside what a plan takes.</summary>
/// <param name="Breakage">What is allowed for breakage.</param>
/// <param name="Spares">What is left with the client.</param>
/// <param name="FlatPercent">A flat share of everything, in hundredths, only because it was asked for; null for none.</param>
internal readonly record struct Extra(int Breakage, int Spares, int? FlatPercent)
{
    /// <summary>The line of the order: what is planned, breakage and spares, a flat share of them all where one is asked for, rounded up, in whole packs.</summary>
    /// <param name="item">What is bought.</param>
    /// <param name="unit">What one of them is.</param>
    /// <param name="pack">How many come in a pack.</param>
    /// <param name="planned">What the plan takes.</param>
    /// <param name="plan">What that plan is called.</param>
    /// <param name="more">What else is to be said of it.</param>
    public OrderLine Line(string item, string unit, int pack, int planned, string plan, string more)
    {
        var counted = planned + Breakage + Spares;
        var flat = FlatPercent is { } percent ? (int)RoundUp((long)counted * percent, 100) : 0;
        var need = counted + flat;
        return new(item, need, unit, pack, (int)RoundUp(need, pack), planned, Breakage, Spares, flat, Basis(planned, plan, flat, more));
    }

    private string Basis(int planned, string plan, int flat, string more)
    {
        var parts = new List<string> { string.Create(CultureInfo.InvariantCulture, $"{planned} by the {plan}") };
        if (Breakage > 0) parts.Add(string.Create(CultureInfo.InvariantCulture, $"{Breakage} for breakage"));
        if (Spares > 0) parts.Add(string.Create(CultureInfo.InvariantCulture, $"{Spares} to leave with the client"));
        if (FlatPercent is { } percent) parts.Add(string.Create(CultureInfo.InvariantCulture, $"{flat} for the {percent} % asked for"));
        return string.Join(", ", parts) + "; " + more;
    }

    private static long RoundUp(long number, long by) => (number + by - 1) / by;
}
