using Gaugerod.Engine.Surveys;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;

namespace Gaugerod.Engine.Tests.Surveys;

public sealed class AdjustmentTests
{
    /// <summary>Source: C. Ghilani and P. Wolf, Adjustment Computations, the chapter on trilateration: one station from three; from memory.</summary>
    [Fact]
    public void A_station_measured_from_three_others_comes_to_rest_as_in_the_book()
    {
        double[] places = [865.40, 4527.15, 2432.55, 2047.25, 2865.22, 27.15, 6865.20, 3728.42];
        var network = new Network(
            4, [Reading.Length(0, 3, 6049.00, 1), Reading.Length(1, 3, 4736.83, 1), Reading.Length(2, 3, 5446.49, 1)],
            [true, true, true, true, true, true, false, false]);
        var adjusted = Adjustment.Of(network, places);
        Assert.True(adjusted.IsSettled);
        Assert.Equal(6861.317, adjusted.Places[6], 3);
        Assert.Equal(3727.819, adjusted.Places[7], 3);
        Assert.Equal([-0.037, 0.077, -0.047], Enumerable.Range(0, 3).Select(i => Math.Round(adjusted.Correction(i), 3)));
        Assert.Equal(1, adjusted.Beyond);
    }

    /// <summary>Source: the same book, the chapter on levelling, a net of six lines over one benchmark, weighted; from memory.</summary>
    [Fact]
    public void A_levelled_net_of_six_lines_comes_to_rest_as_in_the_book()
    {
        var network = new Network(
            4,
            [
                Reading.Up(0, 1, 10.509, 0.006), Reading.Up(1, 2, 5.360, 0.004), Reading.Up(2, 3, -8.523, 0.005),
                Reading.Up(3, 0, -7.348, 0.003), Reading.Up(1, 3, -3.167, 0.004), Reading.Up(0, 2, 15.881, 0.012),
            ],
            [true, true, true, false, true, false, true, false]);
        var adjusted = Adjustment.Of(network, [0, 437.596, 0, 0, 0, 0, 0, 0]);
        Assert.Equal(448.1087, adjusted.Places[3], 4);
        Assert.Equal(453.4685, adjusted.Places[5], 4);
        Assert.Equal(444.9436, adjusted.Places[7], 4);
        Assert.Equal(3, adjusted.Beyond);
        Assert.Equal(3, Enumerable.Range(0, 6).Sum(adjusted.Redundancy), 9);
    }

    /// <summary>Source: Levenberg-Marquardt and the orthogonal decomposition of MathNet.Numerics, on 300 rooms.</summary>
    [Fact]
    public void A_general_solver_puts_the_corners_in_the_same_places_and_finds_the_same_redundancy()
    {
        var chance = new Random(5);
        for (var room = 0; room < 300; room++)
        {
            var truth = Rooms.Any(chance);
            var network = truth.Read(chance);
            var adjusted = Adjustment.Of(network, truth.Places);
            Assert.True(adjusted.IsSettled, $"room {room}, {truth.Name}");

            var start = Vector<double>.Build.DenseOfEnumerable(network.Free.Select(at => truth.Places[at]));
            var model = ObjectiveFunction.NonlinearModel(
                (free, _) => Vector<double>.Build.DenseOfEnumerable(network.Readings.Select(r => Told(r, Full(free)) / r.Accuracy)),
                Vector<double>.Build.Dense(network.Readings.Count, i => i), Vector<double>.Build.DenseOfEnumerable(network.Readings.Select(r => r.Value / r.Accuracy)),
                accuracyOrder: 6);
            var general = new LevenbergMarquardtMinimizer(gradientTolerance: 1e-14, stepTolerance: 1e-14, functionTolerance: 1e-14, maximumIterations: 500).FindMinimum(model, start);
            var own = network.Free.Select(at => adjusted.Places[at]).ToArray();
            for (var k = 0; k < own.Length; k++) Assert.True(Math.Abs(own[k] - general.MinimizingPoint[k]) < 1e-3, $"room {room}, {truth.Name}: {own[k]} and {general.MinimizingPoint[k]}");

            var slopes = Matrix<double>.Build.Dense(network.Readings.Count, own.Length, (i, k) => Slope(network, adjusted.Places, i, k));
            var hat = slopes * (slopes.TransposeThisAndMultiply(slopes)).Inverse() * slopes.Transpose();
            for (var i = 0; i < network.Readings.Count; i++) Assert.Equal(1 - hat[i, i], adjusted.Redundancy(i), 5);
            for (var i = 1; i < network.Readings.Count; i++) Assert.Equal(-hat[0, i] / Math.Sqrt((1 - hat[0, 0]) * (1 - hat[i, i])), adjusted.Alike(0, i), 4);

            double[] Full(Vector<double> free)
            {
                var places = (double[])truth.Places.Clone();
                for (var k = 0; k < network.Free.Length; k++) places[network.Free[k]] = free[k];
                return places;
            }
        }
    }

    [Fact]
    public void What_a_reading_would_be_by_the_others_is_what_an_adjustment_without_it_gives()
    {
        var chance = new Random(6);
        for (var room = 0; room < 100; room++)
        {
            var truth = Rooms.Ell(chance);
            var network = truth.Read(chance);
            var adjusted = Adjustment.Of(network, truth.Places);
            var out1 = chance.Next(network.Readings.Count);
            var without = Adjustment.Of(network with { Readings = [.. network.Readings.Where((_, i) => i != out1)] }, truth.Places);
            Assert.InRange(adjusted.ByOthers(out1) - without.Value(network.Readings[out1]), -0.05, 0.05);
        }
    }

    // The tests' own reckoning of a length, a height and a width: by marks and corners, not by the engine's.
    private static double Told(Reading r, double[] places)
    {
        var ((ax, ay), (bx, by)) = (Spot(r.First), Spot(r.Second));
        return r.Of switch { ReadingOf.Across => bx - ax, ReadingOf.Up => by - ay, _ => Math.Sqrt(Math.Pow(bx - ax, 2) + Math.Pow(by - ay, 2)) };

        (double X, double Y) Spot(Spot s)
        {
            var (x, y, dx, dy) = (places[2 * s.From], places[(2 * s.From) + 1], places[2 * s.Towards] - places[2 * s.From], places[(2 * s.Towards) + 1] - places[(2 * s.From) + 1]);
            var turn = Math.Atan2(dy, dx);
            return (x + (s.Along * Math.Cos(turn)), y + (s.Along * Math.Sin(turn)));
        }
    }

    private static double Slope(Network network, double[] places, int reading, int free)
    {
        const double Step = 1e-3;
        var (at, r) = (network.Free[free], network.Readings[reading]);
        var (more, less) = ((double[])places.Clone(), (double[])places.Clone());
        more[at] += Step;
        less[at] -= Step;
        return (Told(r, more) - Told(r, less)) / (2 * Step) / r.Accuracy;
    }
}
