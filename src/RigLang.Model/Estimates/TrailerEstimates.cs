using RigLang.Mechanics;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;

namespace RigLang.Model.Estimates;

/// <summary>What stands in for facts of a trailer.</summary>
internal static class TrailerEstimates
{
    public static Estimate BodyLength { get; } = new(
        "length less 1.3 m of drawbar", "our choice", (read, trailer) => read.Quantity(trailer, TrailerFacts.Length) - 1.3, 0.1);

    public static Estimate FrontalArea { get; } = new(
        "0.84 × width × height", "defaults of the EU's Joint Research Centre for Regulation (EU) 2017/1151, made for cars",
        (read, trailer) => DragDefaults.FrontalArea(read.Quantity(trailer, TrailerFacts.Width), read.Quantity(trailer, TrailerFacts.Height)),
        0.15);

    public static Estimate YawInertia { get; } = new(
        "mass ÷ 12 × (body-length² + width²)", "an even box, our choice",
        (read, trailer) =>
        {
            var length = read.Quantity(trailer, TrailerFacts.BodyLength);
            var width = read.Quantity(trailer, TrailerFacts.Width);
            return read.Quantity(trailer, TrailerFacts.Mass) / 12 * ((length * length) + (width * width));
        },
        0.25);

    public static Estimate BrakeMass { get; } = new(
        "1.2 % of gross-rating", "our choice, weak", (read, trailer) => 0.012 * read.Quantity(trailer, TrailerFacts.GrossRating), 0.4);

    public static Estimate BrakeRatio { get; } = new(
        "50 % with brakes, none without", "common practice, value from memory",
        (read, trailer) => read.Word(trailer, TrailerFacts.Brakes) switch { null => double.NaN, "none" => 0, _ => 0.5 },
        0.2);
}
