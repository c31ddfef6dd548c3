using System.Reflection;
using System.Text.RegularExpressions;
using Gaugerod.Engine.Planning;
using Gaugerod.Testing;

namespace Gaugerod.House.Tests;

/// <summary>The first rule of the house: a room may use the rooms before it, never one after it.</summary>
public sealed class RoomsTests
{
    private const string Engine = "src/Gaugerod.Engine";

    private static readonly string[] s_rooms =
        ["Surveys", "Rooms", "Bases", "Bonds", "Layouts", "Pieces", "Sharing", "Cutting", "Lines", "Patterns", "Tolerances", "Trims", "Boards", "Takeoffs", "Rules", "Planning"];

    [Fact]
    public void No_room_looks_ahead_in_its_source()
    {
        var offences =
            from source in Source.In(Engine)
            let room = source.Path[(Engine.Length + 1)..].Split('/')[0]
            from ahead in s_rooms.Skip(Array.IndexOf(s_rooms, room) + 1)
            where Regex.IsMatch(source.Code, $@"Gaugerod\.Engine\.{ahead}\b|(?<![\w.]){ahead}\.[A-Z]")
            select $"{source.Path} uses {ahead}";
        Assert.Empty(offences);
    }

    [Fact]
    public void No_room_is_handed_what_a_later_one_makes()
    {
        // What a source can get without naming it shows in the built signatures.
        var offences =
            from type in typeof(Plan).Assembly.GetTypes()
            let own = RoomOf(type)
            where own is not null
            from used in Handed(type)
            let other = RoomOf(used)
            where other > own
            select $"{type.FullName} uses {used.FullName}";
        Assert.Empty(offences.Distinct());
    }

    [Fact]
    public void Every_engine_folder_is_a_known_room() =>
        Assert.Empty(Directory.EnumerateDirectories(Path.Combine(Repo.Root, Engine)).Select(d => Path.GetFileName(d)).Except(s_rooms));

    [Fact]
    public void No_name_is_made_known_everywhere_behind_the_rooms_backs()
    {
        var offences = Source.In("src").Where(s => Regex.IsMatch(s.Code, @"^\s*global\s+using\b", RegexOptions.Multiline)).Select(s => s.Path);
        Assert.Empty(offences);
    }

    /// <summary>The place of the type's room in their order; null outside the rooms.</summary>
    private static int? RoomOf(Type type)
    {
        const string Prefix = "Gaugerod.Engine.";
        if (type.Namespace is not { } space || !space.StartsWith(Prefix, StringComparison.Ordinal)) return null;
        var room = Array.IndexOf(s_rooms, space[Prefix.Length..].Split('.')[0]);
        return room < 0 ? null : room;
    }

    private static IEnumerable<Type> Handed(Type type)
    {
        const BindingFlags All = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;
        Type?[] plain =
        [
            type.BaseType,
            .. type.GetInterfaces(),
            .. type.GetFields(All).Select(f => f.FieldType),
            .. type.GetConstructors(All).SelectMany(c => c.GetParameters()).Select(p => p.ParameterType),
            .. type.GetMethods(All).SelectMany(m => m.GetParameters().Select(p => p.ParameterType).Append(m.ReturnType)),
            .. type.GetMethods(All).SelectMany(m => m.GetMethodBody()?.LocalVariables.Select(v => v.LocalType) ?? []),
        ];
        return plain.OfType<Type>().SelectMany(Unwrapped);
    }

    private static IEnumerable<Type> Unwrapped(Type type)
    {
        if (type.GetElementType() is { } element) return Unwrapped(element);
        return type.IsGenericType ? type.GetGenericArguments().SelectMany(Unwrapped).Append(type) : [type];
    }
}
