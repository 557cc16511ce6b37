using FsCheck.Xunit;
using static RigLang.Mechanics.Tests.Numbers;

namespace RigLang.Mechanics.Tests;

public sealed class TrackTests
{
    [Fact]
    public void Noise_within_the_band_is_no_climb()
    {
        (double[] x, double[] heights) = Recorded(_ => 100, 4, 1000);
        RawClimb(heights).Should().BeGreaterThan(500, "the raw sum of rises counts the wandering");
        ProfileTotals totals = ElevationProfile.Totals(x, ElevationProfile.Smooth(x, heights, 4));
        totals.Climb.Should().BeApproximately(0, 1e-9);
        totals.Descent.Should().BeApproximately(0, 1e-9);
    }

    [Property]
    public void A_smoothed_profile_never_climbs_more_than_the_road(int seed, int hills, int height)
    {
        double count = Math.Round(Between(hills, 1, 6)), size = Between(height, 20, 400);
        double Road(double share) => size * Math.Abs(Math.Sin(share * Math.PI * count));
        (double[] x, double[] heights) = Recorded(Road, 3, 800, seed);
        ProfileTotals totals = ElevationProfile.Totals(x, ElevationProfile.Smooth(x, heights, 3));
        double climb = RawClimb([.. x.Select(at => Road(at / x[^1]))]);
        totals.Climb.Should().BeLessThanOrEqualTo(climb + 1e-6);
        totals.Climb.Should().BeGreaterThan(climb - (count * 2 * 2 * 3), "each hill comes out low by at most twice the half-width at either end");
        (totals.Climb - totals.Descent).Should().BeApproximately(heights[^1] - heights[0], 1e-6);
    }

    [Property]
    public void The_string_stays_in_its_band(int seed, int band)
    {
        double half = Between(band, 0, 8);
        (double[] x, double[] heights) = Recorded(share => 60 * Math.Sin(9 * share), 3, 500, seed);
        double[] smooth = ElevationProfile.Smooth(x, heights, half);
        for (int i = 0; i < x.Length; i++)
            Math.Abs(smooth[i] - heights[i]).Should().BeLessThanOrEqualTo(half + 1e-9);
    }

    [Property]
    public void No_profile_in_the_band_climbs_less(int seed)
    {
        // Least climb in a band, found by another way: lift the least needed, point by point (dynamic programme over a grid of heights).
        (double[] x, double[] heights) = Recorded(share => 12 * Math.Sin(7 * share), 3, 40, seed);
        for (int i = 0; i < heights.Length; i++)
            heights[i] = Math.Round(heights[i]);
        double climb = ElevationProfile.Totals(x, ElevationProfile.Smooth(x, heights, 2)).Climb;
        climb.Should().BeApproximately(LeastClimb(heights, 2), 1e-6);
    }

    [Fact]
    public void Points_at_one_place_do_no_harm()
    {
        double[] x = [0, 100, 100, 100, 200, 200], heights = [10, 12, 30, 11, 14, 14];
        double[] smooth = ElevationProfile.Smooth(x, heights, 3);
        smooth.Should().OnlyContain(height => height >= 9 && height <= 15);
    }

    [Fact]
    public void A_single_height_no_road_could_reach_is_left_out()
    {
        (double[] x, double[] heights) = Recorded(share => 100 * share, 0, 200);
        heights[90] += 60;
        ElevationProfile.Totals(x, ElevationProfile.Smooth(x, heights, 3)).Climb.Should().BeApproximately(100, 1e-6);
    }

    [Fact]
    public void Missing_heights_are_drawn_straight()
    {
        ElevationProfile.FillGaps([0, 10, 20, 30, 40], [double.NaN, 10, double.NaN, 20, double.NaN]).Should().Equal(10, 10, 15, 20, 20);
        ElevationProfile.FillGaps([0, 10], [double.NaN, double.NaN]).Should().OnlyContain(height => double.IsNaN(height));
    }

    [Fact]
    public void Unusable_profiles_compute_nothing()
    {
        ElevationProfile.Smooth([0, 10, 5], [1, 2, 3], 1).Should().OnlyContain(height => double.IsNaN(height));
        ElevationProfile.Smooth([0, 10], [1, 2, 3], 1).Should().OnlyContain(height => double.IsNaN(height));
        ElevationProfile.Smooth([], [], 1).Should().BeEmpty();
        ElevationProfile.Totals([0], [5]).Climb.Should().Be(double.NaN);
        Track.Stretches([1], [1], [1]).Should().BeEmpty();
    }

    [Fact]
    public void A_track_gives_back_its_length_grade_and_course()
    {
        int count = 400;
        double[] latitudes = [.. Enumerable.Range(0, count).Select(i => 46.0 + (i * 1e-4))];
        double[] longitudes = [.. Enumerable.Repeat(8.0, count)];
        double[] distances = Track.Distances(latitudes, longitudes);
        double[] heights = [.. distances.Select(distance => 500 + (0.05 * distance))];
        IReadOnlyList<TrackStretch> stretches = Track.Stretches(latitudes, longitudes, heights);
        stretches.Sum(stretch => stretch.Length).Should().BeApproximately(distances[^1] * Math.Sqrt(1 + (0.05 * 0.05)), 1e-6);
        stretches.Should().OnlyContain(stretch => Math.Abs(stretch.Grade - 0.05) < 1e-9 && stretch.Course < 1e-9 && stretch.Length >= 50);
    }

    [Fact]
    public void A_track_without_heights_still_has_length_and_course()
    {
        IReadOnlyList<TrackStretch> stretches = Track.Stretches([46, 46.01], [8, 8], [double.NaN, double.NaN]);
        stretches.Should().ContainSingle();
        stretches[0].Length.Should().BeApproximately(1112, 1);
        stretches[0].Grade.Should().Be(double.NaN);
    }

    [Property]
    public void Distance_is_the_same_both_ways(int a, int b, int c, int d)
    {
        double lat1 = Between(a, -90, 90), lon1 = Between(b, -180, 180), lat2 = Between(c, -90, 90), lon2 = Between(d, -180, 180);
        double there = Geodesy.Distance(lat1, lon1, lat2, lon2);
        there.Should().BeApproximately(Geodesy.Distance(lat2, lon2, lat1, lon1), 1e-3);
        there.Should().BeInRange(0, 20_016_000);
    }

    private static (double[] X, double[] Heights) Recorded(Func<double, double> road, double noise, int count, int seed = 7)
    {
        var random = new Random(seed);
        double[] x = [.. Enumerable.Range(0, count).Select(i => i * 25.0)];
        double[] heights = [.. x.Select((at, i) => road(at / x[^1]) + (i == 0 || i == count - 1 ? 0 : noise * ((2 * random.NextDouble()) - 1)))];
        return (x, heights);
    }

    private static double RawClimb(double[] heights) => heights.Zip(heights.Skip(1), (a, b) => Math.Max(0, b - a)).Sum();

    private static double LeastClimb(double[] heights, int band)
    {
        var cost = new Dictionary<double, double> { [heights[0]] = 0 };
        for (int i = 1; i < heights.Length; i++)
        {
            int half = i == heights.Length - 1 ? 0 : band;
            var next = new Dictionary<double, double>();
            for (int offset = -half; offset <= half; offset++)
            {
                double height = heights[i] + offset;
                next[height] = cost.Min(pair => pair.Value + Math.Max(0, height - pair.Key));
            }

            cost = next;
        }

        return cost.Values.Single();
    }
}
