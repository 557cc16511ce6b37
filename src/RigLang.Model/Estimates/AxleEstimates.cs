using RigLang.Mechanics;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Reading;

namespace RigLang.Model.Estimates;

/// <summary>What stands in for facts of an axle and its tyres.</summary>
internal static class AxleEstimates
{
    public const string RollingWords = "from tyre pressure and speed (engineeringtoolbox.com, rolling friction and rolling resistance, equation 3)";

    private const double PoundPerSquareInch = 6894.757293168;

    public static Estimate TrackWidth { get; } = new(
        "0.85 × width", "our choice",
        (read, axle) => 0.85 * read.Quantity(axle.Outer!, AxleFacts.Of(axle.Declaration).EqualAxles is null ? VehicleFacts.Width : TrailerFacts.Width),
        0.08);

    public static Estimate RatedPressure { get; } = new(
        "250 kPa, XL 290 kPa; load range C 50, D 65, E 80 psi", "common practice, values from memory",
        (read, axle) => Rated(read.Line(axle, AxleFacts.Of(axle.Declaration).Tyres)),
        0.05);

    public static Estimate CorneringStiffness { get; } = new(
        "12 × load for a car's tyres, 7.5 × load for ST and LT tyres, per radian", "common practice, values from memory",
        (read, axle) => Stiffness(read, axle),
        0.25);

    private static double Rated(Fact? line)
    {
        if (line?.Value is not TyreValue tyre)
        {
            return double.NaN;
        }

        foreach (var mark in tyre.Marks)
        {
            switch (mark)
            {
                case "XL" or "HL":
                    return 290_000;
                case "C":
                    return 50 * PoundPerSquareInch;
                case "D":
                    return 65 * PoundPerSquareInch;
                case "E":
                    return 80 * PoundPerSquareInch;
            }
        }

        // A commercial or light truck tyre without its load range could be rated for anything from 250 to 550 kPa.
        return tyre.Size.Prefix is "LT" or "ST" || tyre.Size.Suffix is "C" or "LT" ? double.NaN : 250_000;
    }

    private static double Stiffness(IFactReader read, Block axle)
    {
        var facts = AxleFacts.Of(axle.Declaration);
        var perLoad = read.LineIfWritten(axle, facts.Tyres)?.Value is TyreValue { Size.Prefix: "ST" or "LT" } ? 7.5 : 12;
        if (facts.EqualAxles is null)
        {
            return perLoad * Constants.Gravity * VehicleEstimates.Carried(read, axle.Outer!, axle.Key);
        }

        var trailer = axle.Outer!;
        var axles = trailer.AllBlocks(facts.Block).Sum(block => read.Quantity(block, facts.EqualAxles));
        var onAxles = read.Quantity(trailer, TrailerFacts.Mass) - read.Quantity(trailer, TrailerFacts.Tongue);
        return perLoad * Constants.Gravity * onAxles * read.Quantity(axle, facts.EqualAxles) / axles;
    }
}
