using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Axles;

/// <summary>What each tyre of an axle carries, and what it may.</summary>
public static class TyreResults
{
    private const string Table = "load index table of ISO 4000-1, ETRTO and UN R30; with `rules us` a passenger-car tyre on a trailer, truck or multipurpose vehicle is divided by 1.10 (49 CFR 571.110 S4.2.2.2)";
    private const string WithPressure = "load in proportion to pressure to the power 0.5 (P sizes), 0.65 (LT, ST), 0.8 (other passenger and C sizes); exponents from memory of the yearbooks";

    /// <summary>65 mph: what ST tyres are good for where no speed symbol says otherwise (common practice, value from memory).</summary>
    public const double SpecialTrailerSpeed = 65 * 0.44704;

    public static ResultSet<AxleSubject> Set { get; } = new(ResultScope.Axle);

    public static ResultDeclaration<AxleSubject> Load { get; } = Set.Add(
        "tyre-load", QuantityKinds.Mass, "Load on each tyre", "the axle load shared evenly by its tyres; one side usually carries a little more",
        "axle-load ÷ wheels", "definition",
        (read, axle) => read.Get(AxleResults.Load, axle) / read.Quantity(axle.Axle, axle.Facts.Wheels));

    public static ResultDeclaration<AxleSubject> RatedLoad { get; } = Set.Add(
        "tyre-rated-load", QuantityKinds.Mass, "Rated load of a tyre", "by its load index, at its rated pressure; more pressure doesn't raise it",
        "the load index's mass, derated where the rules say so", Table,
        (read, axle) => read.Get(Tyre.Rating, axle));

    public static ResultDeclaration<AxleSubject> Capacity { get; } = Set.Add(
        "tyre-capacity", QuantityKinds.Mass, "What a tyre carries at its pressure", "the rated load, less what is lost by running below the rated pressure",
        "tyre-rated-load × (pressure ÷ rated-pressure)^n, at most tyre-rated-load", WithPressure,
        (read, axle) => read.Line(axle.Axle, axle.Facts.Tyres)?.Value is TyreValue tyre
            ? TyreLoad.AtPressure(
                read.Get(RatedLoad, axle), read.Quantity(axle.Axle, axle.Facts.Pressure), read.Quantity(axle.Axle, axle.Facts.RatedPressure), Tyre.Exponent(tyre.Size))
            : double.NaN);

    public static ResultDeclaration<AxleSubject> Share { get; } = Set.Add(
        "tyre-share", QuantityKinds.Ratio, "Of what the tyre carries", "load on each tyre as a share of what it carries at its pressure",
        "tyre-load ÷ tyre-capacity", "definition",
        (read, axle) => read.Get(Load, axle) / read.Get(Capacity, axle));

    public static ResultDeclaration<AxleSubject> Reserve { get; } = Set.Add(
        "tyre-reserve", QuantityKinds.Mass, "Left on each tyre", "what each tyre could still carry at its pressure",
        "tyre-capacity − tyre-load", "definition",
        (read, axle) => read.Get(Capacity, axle) - read.Get(Load, axle));

    public static ResultDeclaration<AxleSubject> LeastPressure { get; } = Set.Add(
        "tyre-least-pressure", QuantityKinds.Pressure, "Least pressure for the load", "cold; the maker's own figure counts before it. Not shown where no pressure is enough",
        "rated-pressure × (tyre-load ÷ tyre-rated-load)^(1/n)", WithPressure,
        (read, axle) =>
        {
            if (read.Line(axle.Axle, axle.Facts.Tyres)?.Value is not TyreValue tyre)
            {
                return double.NaN;
            }

            var load = read.Get(Load, axle);
            var rating = read.Get(RatedLoad, axle);
            var rated = read.Quantity(axle.Axle, axle.Facts.RatedPressure);
            return Limits.Exceeds(load, rating) ? read.NotApplicable() : TyreLoad.PressureFor(Math.Min(load, rating), rating, rated, Tyre.Exponent(tyre.Size));
        });

    public static ResultDeclaration<AxleSubject> TopSpeed { get; } = Set.Add(
        "tyre-top-speed", QuantityKinds.Speed, "Fastest for the tyres", "by the speed symbol; 65 mph for ST tyres that show none (common practice, value from memory)",
        "the speed symbol's speed", "speed symbol table of ISO 4000-1, ETRTO and UN R30",
        (read, axle) =>
        {
            if (read.Line(axle.Axle, axle.Facts.Tyres)?.Value is not TyreValue tyre)
            {
                return double.NaN;
            }

            if (Tyre.TopSpeed(tyre.Service) is { } speed)
            {
                return speed;
            }

            if (Tyre.ClassOf(tyre.Size) == TyreClass.SpecialTrailer)
            {
                read.StandIn(axle.Axle, axle.Facts.Tyres);
                return SpecialTrailerSpeed;
            }

            read.Need(axle.Axle, axle.Facts.Tyres);
            return double.NaN;
        });
}
