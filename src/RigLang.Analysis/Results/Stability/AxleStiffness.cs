using RigLang.Analysis.Results.Axles;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Binding;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Stability;

/// <summary>A stiffness and how far off it may be.</summary>
/// <param name="Value">N/rad.</param>
/// <param name="HalfWidth">N/rad, 19 times out of 20.</param>
internal readonly record struct Stiffness(double Value, double HalfWidth)
{
    /// <summary>Doubts of axles on like tyres are one doubt: they add up.</summary>
    public static Stiffness operator +(Stiffness one, Stiffness other) => new(one.Value + other.Value, one.HalfWidth + other.HalfWidth);

    public static Stiffness operator *(double count, Stiffness one) => new(count * one.Value, count * one.HalfWidth);
}

/// <summary>Cornering stiffness of axles under their loads as driven.</summary>
internal static class AxleStiffness
{
    /// <summary>The vehicle's front axle.</summary>
    public static Computation<RigStudy, Stiffness> Front { get; } = new("cornering stiffness of the front axle", (read, rig) => OfGroup(read, rig, rig.VehicleAxles.Where(axle => axle.Axle.Key == "front")));

    /// <summary>The vehicle's rear axle.</summary>
    public static Computation<RigStudy, Stiffness> Rear { get; } = new("cornering stiffness of the rear axle", (read, rig) => OfGroup(read, rig, rig.VehicleAxles.Where(axle => axle.Axle.Key == "rear")));

    /// <summary>All axles of the trailer.</summary>
    public static Computation<RigStudy, Stiffness> Trailer { get; } = new("cornering stiffness of the trailer's axles", (read, rig) => OfGroup(read, rig, rig.TrailerAxles));

    private static Stiffness OfGroup(Reader read, RigStudy rig, IEnumerable<AxleSubject> axles)
    {
        Stiffness sum = default;
        foreach (var axle in axles)
        {
            sum += (axle.Facts.EqualAxles is { } equal ? read.Quantity(axle.Axle, equal) : 1) * OfOne(read, axle);
        }

        if (!axles.Any())
        {
            read.Need(rig.Vehicle, VehicleFacts.Axle);
        }

        return sum;
    }

    /// <summary>
    /// As written; else from the tyre's class and its load as driven, rising less than the load does; what the axle may carry stands for the rating of tyres that
    /// nobody wrote. Without either the plain estimate.
    /// </summary>
    private static Stiffness OfOne(Reader read, AxleSubject axle)
    {
        if (axle.Axle.Find(axle.Facts.CorneringStiffness)?.Value is MeasureValue)
        {
            return Plain(read, axle);
        }

        var tyre = read.LineIfWritten(axle.Axle, axle.Facts.Tyres)?.Value as TyreValue;
        var rating = tyre?.Service is { } service && LoadIndex.Mass(service.LoadIndex) is var index && !double.IsNaN(index)
            ? index * read.Quantity(axle.Axle, axle.Facts.Wheels)
            : read.QuantityIfKnown(axle.Axle, axle.Facts.AxleRating);
        if (rating is not { } mass)
        {
            return Plain(read, axle);
        }

        read.StandIn(axle.Axle, axle.Facts.CorneringStiffness);
        var coefficient = tyre?.Size.Prefix is "ST" or "LT" || tyre?.Size.Suffix == "LT" ? CorneringStiffness.TrailerTyre : CorneringStiffness.CarTyre;
        var value = CorneringStiffness.OfAxle(read.Get(AxleResults.Load, axle) * Constants.Gravity, mass * Constants.Gravity, coefficient);
        var (share, halfWidth) = read.Uncertain(Reader.Figures, axle.IsTrailer ? FigureFacts.TrailerTyreStiffness : FigureFacts.TyreStiffness);
        return new Stiffness(share * value, halfWidth * value);
    }

    private static Stiffness Plain(Reader read, AxleSubject axle)
    {
        var (value, halfWidth) = read.Uncertain(axle.Axle, axle.Facts.CorneringStiffness);
        return new Stiffness(value, halfWidth);
    }
}
