namespace Gaugerod.Files.Jobs;

/// <summary>What a bed is mixed of.</summary>
internal static class MixForms
{
    public static readonly Form Bag = new("bag", new("yield", "what a bag makes, such as \"0.5 ft3\"", true), new("name", "a name such as \"60 lb mix\""), new("sand", "a group such as { \"weight\": \"60 lb\", \"from\": 3, \"to\": 5 }"));

    public static readonly Form Sand = new("sand", new("weight", "what a bag weighs, such as \"60 lb\"", true), new("from", "parts of sand to one of cement in the bag, such as 3", true), new("to", "parts of sand as wanted, such as 5", true));

    public static readonly IReadOnlyList<Form> All = [Bag, Sand];
}
