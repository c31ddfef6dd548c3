using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane.Measure;

namespace Gaugerod.House.Tests;

/// <summary>How code is written here, as far as a test can see it.</summary>
public sealed class MannersTests
{
    private const int MostLines = 250;

    // Tables, which are read by looking up and not from top to bottom. Keep it short.
    private static readonly string[] s_longByNature = [];

    [Fact]
    public void No_file_is_longer_than_one_thought()
    {
        var offences = Source.In("src").Where(s => s.Lines > MostLines && !s_longByNature.Contains(s.Path)).Select(s => $"{s.Path}: {s.Lines} lines");
        Assert.Empty(offences);
    }

    [Fact]
    public void The_list_of_long_files_names_none_that_has_become_short() =>
        Assert.Empty(s_longByNature.Except(Source.In("src").Where(s => s.Lines > MostLines).Select(s => s.Path)));

    [Theory]
    [MemberData(nameof(Assemblies))]
    public void Every_public_record_is_immutable(string assembly)
    {
        var offences =
            from type in Assembly.Load(assembly).GetExportedTypes()
            where IsRecord(type)
            from member in type.GetMembers(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly)
            where member is PropertyInfo property ? IsSettable(property) : member is FieldInfo { IsInitOnly: false }
            select $"{type.FullName}.{member.Name}";
        Assert.Empty(offences);
    }

    [Fact]
    public void The_test_of_records_sees_records_and_settable_properties()
    {
        Assert.True(IsRecord(typeof(Job)));
        Assert.True(IsRecord(typeof(Length)));
        Assert.False(IsRecord(typeof(Planner)));
        Assert.True(IsSettable(typeof(Settable).GetProperty(nameof(Settable.Later))!));
        Assert.False(IsSettable(typeof(Settable).GetProperty(nameof(Settable.Once))!));
    }

    [Fact]
    public void No_test_is_skipped()
    {
        var offences = Source.In("tests").Where(s => Regex.IsMatch(s.Code, @"\bSkip\s*=\s*[""\w]")).Select(s => s.Path);
        Assert.Empty(offences);
    }

    public static TheoryData<string> Assemblies() => ["Gaugerod.Plane", "Gaugerod.Engine", "Gaugerod.Files", "Gaugerod.Lists", "Gaugerod.Sheets"];

    // The compiler gives every record class a method of this name, and every record struct a PrintMembers.
    private static bool IsRecord(Type type) =>
        type.GetMethod("<Clone>$", BindingFlags.Public | BindingFlags.Instance) is not null
        || (type.IsValueType && type.GetMethod("PrintMembers", BindingFlags.NonPublic | BindingFlags.Instance) is not null);

    private static bool IsSettable(PropertyInfo property) =>
        property.SetMethod is { IsPublic: true } setter
        && !setter.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit));

    private sealed record Settable
    {
        public int Later { get; set; }

        public int Once { get; init; }
    }
}
