using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>A stretch of a recorded track.</summary>
/// <param name="Length">Along the road, m.</param>
/// <param name="Grade">Rise over run, from the smoothed heights.</param>
/// <param name="Course">rad clockwise from north.</param>
/// <param name="Altitude">Smoothed height in its middle, m.</param>
public readonly record struct TrackStretch(double Length, double Grade, double Course, double Altitude)
{
    /// <summary>The stretch as a piece of a route.</summary>
    /// <param name="speed">m/s.</param>
    /// <param name="density">kg/m³.</param>
    /// <param name="windSpeed">m/s.</param>
    /// <param name="windFrom">rad clockwise from north.</param>
    public RouteSegment At(double speed, double density, double windSpeed, double windFrom) =>
        new(Length, Grade, speed, density, Wind.OnCourse(windSpeed, windFrom, Course));
}

/// <summary>A recorded track of points on the earth.</summary>
public static class Track
{
    /// <summary>Points nearer than this are joined to one stretch, m: the course of shorter steps is mostly the receiver's wandering (our choice).</summary>
    public const double DefaultStep = 50;

    /// <summary>Distance from the first point to each, m, on the map.</summary>
    /// <param name="latitudes">°.</param>
    /// <param name="longitudes">°, as many.</param>
    public static double[] Distances(ReadOnlySpan<double> latitudes, ReadOnlySpan<double> longitudes)
    {
        double[] distances = new double[latitudes.Length];
        bool same = latitudes.Length == longitudes.Length;
        for (int i = 0; i < distances.Length; i++)
            distances[i] = !same ? double.NaN : i == 0 ? 0 : distances[i - 1] + Geodesy.Distance(latitudes[i - 1], longitudes[i - 1], latitudes[i], longitudes[i]);
        return distances;
    }

    /// <summary>The track as stretches that the road load can be summed over.</summary>
    /// <param name="latitudes">°.</param>
    /// <param name="longitudes">°.</param>
    /// <param name="heights">m; missing ones are NaN.</param>
    /// <param name="band">Half-width of the height band, m; see <see cref="ElevationProfile"/>.</param>
    /// <param name="step">Least length of a stretch, m, above zero.</param>
    /// <returns>Empty for fewer than two points or arrays of different length; grades are NaN where no height is known.</returns>
    public static IReadOnlyList<TrackStretch> Stretches(
        ReadOnlySpan<double> latitudes, ReadOnlySpan<double> longitudes, ReadOnlySpan<double> heights, double band = ElevationProfile.DefaultBand, double step = DefaultStep)
    {
        if (latitudes.Length < 2 || latitudes.Length != longitudes.Length || latitudes.Length != heights.Length || !(step > 0))
            return [];
        double[] distances = Distances(latitudes, longitudes);
        double[] smooth = ElevationProfile.Smooth(distances, ElevationProfile.FillGaps(distances, heights), band);
        double total = distances[^1];
        var stretches = new List<TrackStretch>();
        int from = 0;
        for (int i = 1; i < distances.Length; i++)
        {
            double run = distances[i] - distances[from];
            bool last = i == distances.Length - 1;
            // The rest of the track joins a stretch rather than become a very short one.
            if ((run < step || total - distances[i] < step) && !last)
                continue;
            if (run == 0)
                continue;
            double grade = (smooth[i] - smooth[from]) / run;
            double course = Geodesy.Course(latitudes[from], longitudes[from], latitudes[i], longitudes[i]);
            double length = double.IsNaN(grade) ? run : run * Math.Sqrt(1 + (grade * grade));
            stretches.Add(new TrackStretch(Finite(length), Finite(grade), course, Finite((smooth[i] + smooth[from]) / 2)));
            from = i;
        }

        return stretches;
    }
}
