namespace Gaugerod.Files.Jobs;

/// <summary>A field that the job file knows.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Example">What could stand there, as it is said when the field is missing.</param>
/// <param name="Required">Whether it must be there.</param>
internal sealed record Field(string Name, string Example, bool Required = false);

/// <summary>The fields that one kind of group may have. The schema has a definition of the same name with the same fields; a test compares them.</summary>
/// <param name="Name">Its name in the schema.</param>
/// <param name="Fields">Its fields.</param>
internal sealed record Form(string Name, params Field[] Fields)
{
    public IEnumerable<string> Names => Fields.Select(f => f.Name);
}
