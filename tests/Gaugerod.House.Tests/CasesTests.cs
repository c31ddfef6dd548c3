using System.Collections.Concurrent;
using System.Text.RegularExpressions;
using CsCheck;
using Gaugerod.Testing;
using Xunit.Sdk;

namespace Gaugerod.House.Tests;

/// <summary>That random tests mean the same thing on every machine and every day.</summary>
public sealed class CasesTests
{
    private static readonly Gen<(int, string)> Drawn = Gen.Select(Gen.Int, Gen.String.Where(text => text.Length > 2));

    [Fact]
    public void Two_runs_meet_the_same_cases_on_however_many_threads()
    {
        var once = Met(1);
        Assert.Equal(500 * (Cases.IsLong ? 5 : 1), once.Count);
        Assert.Equal(once.Order(), Met(1).Order());
        Assert.Equal(once.Order(), Met(4).Order());
        Assert.True(once.Distinct().Count() > once.Count * 0.99, "the cases differ among themselves");
    }

    /// <summary>Other numbers here mean other cases for every random test: a new CsCheck may bring them, nothing else should.</summary>
    [Fact]
    public void An_everyday_run_meets_the_cases_of_the_day_before()
    {
        if (Cases.Seed != Cases.Everyday) return;
        var met = new List<int>();
        Gen.Int[0, 999].Each(met.Add, iter: 8, threads: 1);
        Assert.Equal([492, 1, 656, 105, 844, 309, 993, 637], met);
    }

    [Fact]
    public void A_failure_names_its_seed_and_is_made_smaller()
    {
        var first = Assert.Throws<XunitException>(Fail).Message;
        Assert.Contains($"GAUGEROD_SEED={Cases.Seed}", first, StringComparison.Ordinal);
        Assert.Contains("shrinks", first, StringComparison.Ordinal);
        Assert.Contains("is too long", first, StringComparison.Ordinal);

        // Which case breaks first does not hang on which thread was the quicker.
        Assert.Equal(first.Split('\n')[0], Assert.Throws<XunitException>(Fail).Message.Split('\n')[0]);

        static void Fail() => Gen.Int[0, 1_000_000].Each(value => Assert.True(value < 900_000, $"{value} is too long"));
    }

    [Fact]
    public void Of_dear_cases_all_that_fail_are_told()
    {
        var told = Assert.Throws<XunitException>(() => Gen.Int[0, 9].EachDear(value => Assert.True(value > 4), 40)).Message;
        Assert.InRange(told.Split("GAUGEROD_SEED").Length - 1, 5, 35);
    }

    /// <summary>CsCheck's own Sample keeps to a given seed for the first case alone.</summary>
    [Fact]
    public void No_test_draws_its_cases_anew_every_day()
    {
        var users = Source.In("tests").Where(s => Regex.IsMatch(s.Code, @"\.Sample\w*\(")).Select(s => s.Path);
        Assert.Equal(["tests/Gaugerod.Testing/Cases.cs"], users);
    }

    private static ConcurrentBag<(int, string)> Met(int threads)
    {
        var met = new ConcurrentBag<(int, string)>();
        Drawn.Each(met.Add, iter: 500, threads: threads);
        return met;
    }
}
