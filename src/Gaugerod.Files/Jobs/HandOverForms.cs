namespace Gaugerod.Files.Jobs;

/// <summary>The groups that ask for the hand-over, and their fields.</summary>
internal static class HandOverForms
{
    private const string ADate = "a date such as \"2027-03-26\"", ALot = "text such as \"07 B\"";

    public static readonly Form HandOver = new(
        "handover",
        new("care", "a list of texts [ ]"), new("lots", "a list such as [{ \"of\": \"wall tile\", \"lot\": \"07 B\" }]"), new("kept", "text such as \"on the shelf in the cellar\""),
        new("photographs", "a list such as [{ \"of\": \"north\", \"what\": \"pipes before boards\" }]"), new("renew", "a whole number of years such as 5"), new("tests", "a list such as [{ \"what\": \"flood test\", \"on\": \"2027-03-26\" }]"));

    public static readonly Form Lot = new("lot", new("of", "the name of a tile, a trim, a board or a supply", true), new("lot", ALot), new("colour", ALot), new("caliber", ALot), new("note", "text"));

    public static readonly Form Photograph = new("photograph", new("of", "a face, or what is in the picture", true), new("what", "what it shows, such as \"pipes before boards\"", true), new("where", "where it is kept, such as \"album 1\""));

    public static readonly Form Test = new("test", new("what", "what was tested, such as \"flood test\"", true), new("on", ADate), new("by", "by whom"), new("result", "what was found"), new("again", ADate));

    public static readonly IReadOnlyList<Form> All = [HandOver, Lot, Photograph, Test];
}
