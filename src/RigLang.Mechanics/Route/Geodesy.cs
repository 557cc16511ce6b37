using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>Distances and courses on the earth (WGS 84 ellipsoid). Angles in degrees as tracks carry them, courses in rad.</summary>
public static class Geodesy
{
    private const double EquatorialRadius = 6_378_137, Flattening = 1 / 298.257223563, MeanRadius = 6_371_008.8;

    /// <summary>
    /// Distance between two points, m, by Lambert's formula: the great circle on reduced latitudes with a first-order correction for the flattening.
    /// Good to 10 m over thousands of kilometres; within half a degree of the antipode the mean sphere answers instead.
    /// </summary>
    /// <param name="latitude1">°, −90 to 90.</param>
    /// <param name="longitude1">°.</param>
    /// <param name="latitude2">°, −90 to 90.</param>
    /// <param name="longitude2">°.</param>
    public static double Distance(double latitude1, double longitude1, double latitude2, double longitude2)
    {
        double reduced1 = Reduced(latitude1), reduced2 = Reduced(latitude2);
        double angle = CentralAngle(reduced1, reduced2, Radians(Finite(longitude2) - Finite(longitude1)));
        if (angle == 0 || double.IsNaN(angle))
            return angle;
        if (angle > Math.PI - 0.01)
            return MeanRadius * CentralAngle(Radians(latitude1), Radians(latitude2), Radians(longitude2 - longitude1));
        double mean = (reduced1 + reduced2) / 2, half = (reduced2 - reduced1) / 2;
        double x = (angle - Math.Sin(angle)) * Square(Math.Sin(mean) * Math.Cos(half) / Math.Cos(angle / 2));
        double y = (angle + Math.Sin(angle)) * Square(Math.Cos(mean) * Math.Sin(half) / Math.Sin(angle / 2));
        return EquatorialRadius * (angle - (Flattening / 2 * (x + y)));
    }

    /// <summary>Course at the first point towards the second, rad clockwise from north, 0 to 2π; NaN between equal points.</summary>
    public static double Course(double latitude1, double longitude1, double latitude2, double longitude2)
    {
        double from = Radians(Within(latitude1, -90, 90)), to = Radians(Within(latitude2, -90, 90)), turn = Radians(longitude2 - longitude1);
        double east = Math.Sin(turn) * Math.Cos(to);
        double north = (Math.Cos(from) * Math.Sin(to)) - (Math.Sin(from) * Math.Cos(to) * Math.Cos(turn));
        if (east == 0 && north == 0)
            return double.NaN;
        double course = Math.Atan2(east, north);
        return Finite(course < 0 ? course + (2 * Math.PI) : course);
    }

    private static double Reduced(double latitude) => Math.Atan((1 - Flattening) * Math.Tan(Radians(Within(latitude, -90, 90))));

    /// <summary>By the haversine, which keeps its digits for near points.</summary>
    private static double CentralAngle(double from, double to, double turn)
    {
        double haversine = Square(Math.Sin((to - from) / 2)) + (Math.Cos(from) * Math.Cos(to) * Square(Math.Sin(turn / 2)));
        return 2 * Math.Asin(Math.Min(1, Math.Sqrt(haversine)));
    }

    private static double Radians(double degrees) => degrees * Math.PI / 180;

    private static double Square(double value) => value * value;
}
