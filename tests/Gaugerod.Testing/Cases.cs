using System.Collections.Concurrent;
using System.Globalization;
using CsCheck;
using Xunit.Sdk;

namespace Gaugerod.Testing;

/// <summary>
/// Holds a property to random cases. An everyday run meets the same cases on any machine on any day, so that what goes red
/// does so by a change of code. GAUGEROD_LONG=1 takes fresh cases and five times as many. GAUGEROD_SEED=N takes those of a
/// seed that a failure named; CsCheck_Seed, which CsCheck names beside a case it made smaller, puts that case first.
/// </summary>
public static class Cases
{
    /// <summary>The seed of an everyday run.</summary>
    public const ulong Everyday = 20261125;

    private const int Longer = 5;
    private static readonly TimeSpan s_longestWait = TimeSpan.FromSeconds(60);

    /// <summary>Whether GAUGEROD_LONG=1 asks for fresh cases and more of them.</summary>
    public static bool IsLong { get; } = Environment.GetEnvironmentVariable("GAUGEROD_LONG") == "1";

    /// <summary>The one number that all cases of this run follow from.</summary>
    public static ulong Seed { get; } = Environment.GetEnvironmentVariable("GAUGEROD_SEED") is { Length: > 0 } given
        ? ulong.Parse(given, CultureInfo.InvariantCulture)
        : IsLong ? (ulong)DateTime.UtcNow.Ticks : Everyday;

    /// <summary>Holds a property to cases; the first that breaks it is made smaller by CsCheck and told.</summary>
    /// <param name="cases">How a case is drawn.</param>
    /// <param name="check">Throws where the property does not hold.</param>
    /// <param name="iter">How many cases, in an everyday run.</param>
    /// <param name="threads">On how many threads; 1 stays on the caller's. Default one for each processor.</param>
    /// <exception cref="XunitException">The property does not hold.</exception>
    public static void Each<T>(this Gen<T> cases, Action<T> check, int iter = 100, int? threads = null)
    {
        if (Environment.GetEnvironmentVariable("CsCheck_Seed") is { Length: > 0 } one) check(cases.Generate(PCG.Parse(one), null, out _));
        var count = IsLong ? iter * Longer : iter;
        var most = threads ?? Environment.ProcessorCount;
        if (FirstBroken(cases, check, count, most) is not var (number, why)) return;
        throw new XunitException($"{Named(number, count)}\n{Smaller(cases, check, number, iter, most) ?? $"{Draw(cases, number)}\n{why.Message}"}", why);
    }

    /// <inheritdoc cref="Each{T}(Gen{T}, Action{T}, int, int?)"/>
    public static void Each<T1, T2>(this Gen<(T1, T2)> cases, Action<T1, T2> check, int iter = 100, int? threads = null) =>
        cases.Each(t => check(t.Item1, t.Item2), iter, threads);

    /// <inheritdoc cref="Each{T}(Gen{T}, Action{T}, int, int?)"/>
    public static void Each<T1, T2, T3>(this Gen<(T1, T2, T3)> cases, Action<T1, T2, T3> check, int iter = 100, int? threads = null) =>
        cases.Each(t => check(t.Item1, t.Item2, t.Item3), iter, threads);

    /// <inheritdoc cref="Each{T}(Gen{T}, Action{T}, int, int?)"/>
    public static void Each<T1, T2, T3, T4>(this Gen<(T1, T2, T3, T4)> cases, Action<T1, T2, T3, T4> check, int iter = 100, int? threads = null) =>
        cases.Each(t => check(t.Item1, t.Item2, t.Item3, t.Item4), iter, threads);

    /// <summary>Holds a property to cases that are dear: no more of them in a long run, none made smaller, and all that break it told.</summary>
    /// <param name="cases">How a case is drawn.</param>
    /// <param name="check">Throws an assertion's exception where the property does not hold.</param>
    /// <param name="count">How many cases.</param>
    /// <exception cref="XunitException">The property does not hold.</exception>
    public static void EachDear<T>(this Gen<T> cases, Action<T> check, int count)
    {
        var broken = new ConcurrentBag<(int Number, string Why)>();
        Parallel.For(0, count, number =>
        {
            var drawn = Draw(cases, number);
            try
            {
                check(drawn);
            }
            catch (XunitException e)
            {
                broken.Add((number, $"{Named(number, count)}\n{drawn}\n{e.Message}"));
            }
        });
        if (!broken.IsEmpty) throw new XunitException(string.Join("\n\n", broken.Order().Select(b => b.Why)));
    }

    /// <summary>One case of a seed, whatever this run's is: to keep a case that once broke something.</summary>
    public static T Drawn<T>(this Gen<T> cases, ulong seed, int number) => cases.Generate(new PCG((uint)number, seed), null, out _);

    /// <summary>Every case has a generator of its own, so that it is the same whichever thread comes to it first.</summary>
    private static T Draw<T>(Gen<T> cases, int number) => cases.Drawn(Seed, number);

    private static (int Number, Exception Why)? FirstBroken<T>(Gen<T> cases, Action<T> check, int count, int threads)
    {
        var broken = new ConcurrentBag<(int Number, Exception Why)>();
        if (threads == 1)
        {
            for (var number = 0; number < count && broken.IsEmpty; number++) Try(number);
        }
        else
        {
            // Break lets every lower number still be tried, so the first is the first on any machine.
            Parallel.For(0, count, new ParallelOptions { MaxDegreeOfParallelism = threads }, (number, loop) =>
            {
                if (!Try(number)) loop.Break();
            });
        }

        return broken.IsEmpty ? null : broken.MinBy(b => b.Number);

        bool Try(int number)
        {
            try
            {
                check(Draw(cases, number));
                return true;
            }
            catch (Exception e)
            {
                broken.Add((number, e));
                return false;
            }
        }
    }

    /// <summary>
    /// What CsCheck says of the smallest case it comes to from one that breaks the property; null where it holds when tried
    /// again, or where a case met on the way takes for ever: better a large case told than a small one waited for.
    /// </summary>
    private static string? Smaller<T>(Gen<T> cases, Action<T> check, int number, int tries, int threads)
    {
        var told = Task.Run(() =>
        {
            try
            {
                cases.Sample(check, seed: new PCG((uint)number, Seed).ToString(), iter: tries, threads: threads);
                return null;
            }
            catch (CsCheckException e)
            {
                return $"{e.Message}\n{e.InnerException?.Message}";
            }
        });
        return told.Wait(s_longestWait) ? told.Result : null;
    }

    private static string Named(int number, int count) => string.Create(
        CultureInfo.InvariantCulture, $"Case {number} of {count}; GAUGEROD_SEED={Seed} {(IsLong ? "GAUGEROD_LONG=1 " : "")}meets it again.");
}
