using CsCheck;
using Gaugerod.Engine.Surveys;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;

namespace Gaugerod.Engine.Tests.Surveys;

public sealed class SurveyProperties
{
    private static readonly Gen<Length> Slip = Gen.Long[-20, 20].Select(Length.FromMillimetres);

    private static readonly Gen<FaceReadings> Walls =
        from width in Gen.Long[900, 4000]
        from height in Gen.Long[2000, 3000]
        from middle in Slip.Nullable()
        from top in Slip.Nullable()
        from right in Slip.Nullable()
        from level in Slip.Nullable()
        from left in Slip.Nullable()
        from other in Slip.Nullable()
        let foot = Length.FromMillimetres(width)
        let tall = Length.FromMillimetres(height)
        select new FaceReadings(
            new(foot, foot + middle, foot + top), new(tall, tall + right),
            level is { } l ? new(Length.FromMillimetres(1000), Length.FromMillimetres(1000) + l) : null, new(left, other));

    private static readonly Gen<SurveyBox> Boxes =
        from atHead in Gen.Bool
        from begin in Gen.Int[0, 3]
        from span in Gen.Int[1, 3]
        from left in Gen.Long[60, 600]
        from tilt in Gen.Long[-9, 9]
        select new SurveyBox(
            "box", atHead, Length.FromMillimetres(begin * 220), Length.FromMillimetres((begin + span) * 220),
            Length.FromMillimetres(atHead ? 1900 - left : left), Length.FromMillimetres(atHead ? 1900 - left - tilt : left + tilt));

    private static readonly Gen<(FaceReadings Wall, SurveyBox Box)> Fitted = Gen.Select(Walls, Boxes)
        .Select(t => (t.Item1, t.Item2.To > t.Item1.Width.Foot ? t.Item2 with { To = null } : t.Item2));

    [Fact]
    public void Every_wall_drawn_is_a_sound_shape_with_a_tag_for_each_side() => Fitted.Each(t =>
    {
        var survey = ReadingsToOutline.Draw(t.Wall, [t.Box], Sketch.Metric);

        Assert.Empty(survey.Faults);
        var shape = Referee.Shape(survey.Outline!);
        Assert.True(shape.IsValid);
        Assert.Equal((double)survey.Outline!.DoubledArea / 2, shape.Area, tolerance: shape.Area * 1e-12);
        Assert.Equal(survey.Outline.Points.Count, survey.Sides.Count);
    });

    [Fact]
    public void The_mirror_image_of_a_wall_is_drawn_as_its_mirror_image_to_a_step_of_the_grid() => Fitted.Each(t =>
    {
        var survey = ReadingsToOutline.Draw(t.Wall, [t.Box], Sketch.Metric);
        var (mirrored, down) = (Mirror(t.Wall), (t.Wall.LevelLine?.Left - t.Wall.LevelLine?.Right) ?? Length.Zero);
        var width = t.Wall.Width.Foot;
        var box = t.Box with
        {
            From = width - (t.Box.To ?? width), To = width - t.Box.From,
            HeightLeft = t.Box.HeightRight - down, HeightRight = t.Box.HeightLeft - down,
        };
        var other = ReadingsToOutline.Draw(mirrored, [box], Sketch.Metric);

        var expected = survey.Outline!.Points.Select(p => new Point(width - p.X, p.Y - down)).ToList();
        Assert.Equal(expected.Count, other.Outline!.Points.Count);
        foreach (var point in expected)
        {
            Assert.Contains(other.Outline.Points, p => (p.X - point.X).Abs().Steps <= 1 && (p.Y - point.Y).Abs().Steps <= 1);
        }
    });

    [Fact]
    public void The_width_read_at_the_top_is_the_width_drawn() => Walls.Where(w => w.Width.Top is not null).Each(wall =>
    {
        var points = ReadingsToOutline.Draw(wall, [], Sketch.Metric).Outline!.Points;
        var top = points.Select((p, i) => (p, q: points[(i + 1) % points.Count])).Single(s => s.p.X > s.q.X && (s.p.Y - s.q.Y).Abs() < Length.FromMillimetres(60) && s.p.Y > Length.FromMillimetres(1500));
        Assert.Equal(wall.Width.Top!.Value, top.p.X - top.q.X);
    });

    private static FaceReadings Mirror(FaceReadings wall)
    {
        var down = (wall.LevelLine?.Left - wall.LevelLine?.Right) ?? Length.Zero;
        return new(
            wall.Width,
            new(wall.Height.Right ?? wall.Height.Left - down, wall.Height.Left),
            wall.LevelLine is { } line ? new(line.Right, line.Left) : null,
            new(wall.Lean.Right, wall.Lean.Left));
    }
}
