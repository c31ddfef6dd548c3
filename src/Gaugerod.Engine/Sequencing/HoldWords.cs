using Gaugerod.Engine.Takeoffs;

namespace Gaugerod.Engine.Sequencing;

/// <summary>What holds are called.</summary>
public static class HoldWords
{
    /// <summary>What is waited for: <c>mortar holds before grout</c>.</summary>
    public static string Of(HoldKind kind) => kind switch
    {
        HoldKind.Seams => "seams dry",
        HoldKind.Levelling => "levelling cures",
        HoldKind.Bed => "the bed cures",
        HoldKind.Primer => "primer dries",
        HoldKind.Coat => "membrane dries before what comes on it",
        HoldKind.Test => "membrane cures before its test",
        HoldKind.Flood => "the water of the test stands",
        HoldKind.Support => "mortar sets before what holds tile up is taken off",
        HoldKind.Walk => "mortar sets before the floor is walked on",
        HoldKind.Grout => "mortar sets before grout",
        HoldKind.Soft => "grout dries before soft joints",
        HoldKind.Sealer => "grout dries before sealer",
        HoldKind.Water => "it cures before water",
        HoldKind.Lead => "it takes to come",
        _ => "what comes after waits",
    };
}
