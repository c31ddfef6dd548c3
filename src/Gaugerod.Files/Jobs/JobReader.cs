using Gaugerod.Engine;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Files.Json;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads job files.</summary>
public static class JobReader
{
    private const string Format = "gaugerod-job/1";

    /// <summary>Reads a job file: plain JSON in UTF-8, at most 8 MB. Never throws for what is in the file.</summary>
    /// <param name="file">The file's bytes.</param>
    /// <param name="fileName">The name to say in messages.</param>
    /// <returns>The job, or every fault found, each with its line.</returns>
    public static JobReading Read(ReadOnlyMemory<byte> file, string fileName)
    {
        ArgumentNullException.ThrowIfNull(fileName);
        var log = EncodingCheck.Open(file, fileName);
        if (log.Any || EntryReader.Read(log) is not { } root) return new JobReading.Refused(log.Faults);
        if (Fields.Group(root, new Values(log, null)) is not { } group || OfAnotherFormat(group, log)) return new JobReading.Refused(log.Faults);

        var unit = Unit(group);
        var job = Fields.Open(group, Forms.Job, new Values(log, unit)) is { } fields ? Job(fields, root) : null;

        // What was read in doubt may well be why the rest does not fit.
        return log.Any || job is null ? new JobReading.Refused([.. log.Faults, .. log.Doubts]) { AsFar = job } : new JobReading.Understood(job with { Remarks = [.. log.Remarks.Select(Remark), .. log.PassedOver.Select(Remark)] }, root, log);
    }

    private static Finding Remark(Doubtful doubt) => doubt.Of == DoubtOf.Fraction ? Fraction(doubt.Fault) : new(
        FindingLevel.Warn, "name", string.Create(System.Globalization.CultureInfo.InvariantCulture, $"line {doubt.Fault.Line}"),
        $"{doubt.Fault.Path}: {doubt.Fault.Found}.{(doubt.Fault.Nearest is { } meant ? $" Is {meant} meant?" : "")}", doubt.Fault.Expected, "", "docs/job-file.md");

    private static Finding Fraction(FileFault doubt) => new(
        FindingLevel.Warn, "fraction", string.Create(System.Globalization.CultureInfo.InvariantCulture, $"line {doubt.Line}"),
        $"{doubt.Path[(doubt.Path.LastIndexOf('.') + 1)..]}: {doubt.Found}. A fraction without a unit is inches, in a job in mm too.{(doubt.Nearest is null ? " Write the unit behind it." : $" Write {doubt.Nearest}.")}",
        "", "", "the rule for lengths in the job file");

    private static Finding Remark((int Line, string Path) strange) => new(
        FindingLevel.Note, "field", string.Create(System.Globalization.CultureInfo.InvariantCulture, $"line {strange.Line}"),
        $"{strange.Path}: this field is not known here. It is kept in the file and not used.", "", "", "docs/job-file.md");

    private static bool OfAnotherFormat(Entry.Group root, FaultLog log)
    {
        if (!root.Members.TryGetValue("format", out var member) || member.Value is Entry.Nothing) return false;
        var format = (member.Value as Entry.Text)?.Value ?? "";
        if (string.Equals(format, Format, StringComparison.Ordinal)) return false;
        var nearest = format.StartsWith("gaugerod-plan/", StringComparison.Ordinal) ? "the job that this plan was made from" : Values.Quoted(Near.Of(format, [Format]));
        var newer = format.StartsWith("gaugerod-job/", StringComparison.Ordinal);
        log.Add(member.Value, newer ? $"\"{Format}\", the only version that is read here" : $"\"{Format}\"", newer ? null : nearest);

        // A slip of the pen is one fault among others; another format is not read at all.
        return Near.Of(format, [Format]) is null || format.StartsWith("gaugerod-", StringComparison.Ordinal);
    }

    private static LengthUnit? Unit(Entry.Group root) =>
        root.Members.TryGetValue("units", out var member) && member.Value is Entry.Text text ? Words.Units.Read(text.Value) : null;

    private static Job? Job(Fields fields, Entry root)
    {
        var values = fields.Values;
        var name = fields.Name();
        var note = values.Note(fields["note"]);
        var unit = values.Word(fields["units"], Words.Units) ?? LengthUnit.Millimetre;
        var inches = unit == LengthUnit.Inch;
        var mark = fields.Length("tape", LengthRange.Mark, values.Tape.Mark);
        var paper = fields.Word("paper", Words.Papers, inches ? Paper.Letter : Paper.A4);
        var region = values.Word(fields["region"], Words.Regions);
        var edgeJoint = fields.Length("edgeJoint", LengthRange.Joint, inches ? Length.FromInches(0, 1, 8) : Length.FromMillimetres(3));

        var cutting = CuttingReader.Read(fields["cutting"], values);
        var errors = TolerancesReader.Read(fields["tolerances"], values);
        var productNames = new Uniques("the products", parts: false);
        var products = fields.Items("products", atLeast: 1).Select(n => ProductReader.Read(n, values, productNames)).ToList();
        var trimNames = new Uniques("the trims", parts: false);
        var trims = fields.Items("trims").Select(n => TrimReader.Product(n, values, trimNames)).ToList();
        values.Trims = new(trims, edgeJoint);
        var supplyNames = new Uniques("the supplies", parts: false);
        var supplies = fields.Items("supplies").Select(n => SupplyReader.Read(n, values, supplyNames)).ToList();
        values.Supplies = new(supplies);
        var fillNames = new Uniques("the fills", parts: false);
        var fills = fields.Items("fills").Select(n => FillReader.Read(n, values, fillNames)).OfType<FillRequest>().ToSequence();
        var boardNames = new Uniques("the boards", parts: false);
        var boards = fields.Items("boards").Select(n => BoardReader.Product(n, values, boardNames)).ToList();
        values.Boards = boards.ConvertAll(board => board.Name);
        var faceNames = new Uniques("the faces", parts: false);
        var faceEntries = fields.Items("faces", atLeast: 1);
        var surveys = SurveysReader.Of(faceEntries, values);
        var faces = faceEntries.Select(n => FaceReader.Read(n, values, faceNames, surveys)).ToList();
        var runNames = new Uniques("the runs", parts: false);
        var runReader = new RunReader(values, new KnownNames(products.Count == 0 ? [null] : products.ConvertAll(p => p.Name), faces.Count == 0 ? [new(null, null)] : faces));
        var runs = fields.Items("runs", atLeast: 1).Select(n => runReader.Read(n, runNames)).ToList();
        var work = new WorkReader(values, faces.Count == 0 ? [null] : [.. faces.SelectMany(face => face.Zones.Prepend(face.Name))], runs).Read(fields["work"]);
        var bags = faces.Where(face => face.Face is null || face.Face.Falls?.Bed?.Bag is not null).Select(face => face.Face?.Falls?.Bed?.Bag?.Called);
        List<(string? Name, string What)> bought = [.. products.Select(p => (p.Name, "a tile")), .. trims.Where(t => t.Trim is not { IsWorked: true }).Select(t => (t.Name, "a trim")), .. boards.Select(b => (b.Name, "a board")), .. supplies.Select(s => (s.Name, "a supply")), .. bags.Select(bag => (bag, "the mix of a bed"))];
        var prices = PricesReader.Read(fields["prices"], values, [.. fields.Items("runs").Select(RunName)], bought);
        var handOver = new HandOverReader(values, [.. products.Select(p => p.Name), .. trims.Select(t => t.Name), .. values.Boards, .. supplies.Select(s => s.Name), .. bags]).Read(fields["handover"]);
        if (values.Log.Any && Unit((Entry.Group)fields.Entry) is not null) Shapes(faces, new Tape(unit, mark), root, values.Log);
        if (name is null) return null;
        return new(
            name, note, new Tape(unit, mark), paper, edgeJoint,
            products.Select(p => p.Product).OfType<Product>().ToSequence(), faces.Select(f => f.Face).OfType<Face>().ToSequence(), runs.OfType<RunRequest>().ToSequence())
        {
            Region = region,
            Trims = trims.Select(t => t.Trim).OfType<TrimProduct>().ToSequence(),
            Supplies = supplies.Select(s => s.Supply).OfType<Supply>().ToSequence(),
            Fills = fills,
            Boards = boards.Select(b => b.Board).OfType<BoardProduct>().ToSequence(),
            Work = work,
            Prices = prices,
            HandOver = handOver,
            Cutting = cutting,
            Errors = errors,
        };
    }

    private static string? RunName(Entry run) => run is Entry.Group group && group.Members.TryGetValue("name", out var name) ? (name.Value as Entry.Text)?.Value : null;

    // The engine checks a job that could be read. Where another fault forbids that, the shapes are looked at all the same.
    private static void Shapes(List<FaceEntry> faces, Tape tape, Entry root, FaultLog log)
    {
        for (var i = 0; i < faces.Count; i++)
        {
            var path = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"faces[{i}]");
            if (faces[i].Face is not { } face || log.Faults.Any(f => f.Path.StartsWith(path, StringComparison.Ordinal))) continue;
            foreach (var fault in JobCheck.Shape(i, face, tape))
            {
                log.Add(PathFinder.Nearest(root, fault.Path).At, fault.Path, fault.Found, fault.Expected, fault.Nearest);
            }
        }
    }
}
