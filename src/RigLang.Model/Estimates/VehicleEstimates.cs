using RigLang.Mechanics;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;

namespace RigLang.Model.Estimates;

/// <summary>What stands in for facts of a vehicle.</summary>
internal static class VehicleEstimates
{
    private const string EuDefaults = "defaults of the EU's Joint Research Centre for Regulation (EU) 2017/1151";

    public static Estimate FrontalArea { get; } = new(
        "0.84 × width × height", EuDefaults,
        (read, vehicle) => DragDefaults.FrontalArea(read.Quantity(vehicle, VehicleFacts.Width), read.Quantity(vehicle, VehicleFacts.Height)),
        0.06);

    public static Estimate DragCoefficient { get; } = new(
        "by body: saloon 0.27, hatch 0.30, estate 0.28, suv 0.35, mpv 0.30, van 0.35, pick-up 0.40", EuDefaults,
        (read, vehicle) => ByBody(read.Word(vehicle, VehicleFacts.Body)),
        0.15);

    public static Estimate DragArea { get; } = new(
        "drag-coefficient × frontal-area", "definition",
        (read, vehicle) => read.Quantity(vehicle, VehicleFacts.DragCoefficient) * read.Quantity(vehicle, VehicleFacts.FrontalArea));

    public static Estimate YawInertia { get; } = new(
        "mass × distance of its centre from the front axle × distance from the rear axle", "common practice, value from memory, good to some 10 %",
        (read, vehicle) =>
        {
            var wheelbase = read.Quantity(vehicle, VehicleFacts.Wheelbase);
            var front = Carried(read, vehicle, "front");
            var rear = Carried(read, vehicle, "rear");
            return front * rear / (front + rear) * wheelbase * wheelbase;
        },
        0.1);

    public static Estimate BrakeMass { get; } = new(
        "1.2 % of gross-rating", "our choice, weak", (read, vehicle) => 0.012 * read.Quantity(vehicle, VehicleFacts.GrossRating), 0.4);

    private static double ByBody(string? body) => body switch
    {
        "saloon" => DragDefaults.Coefficient(VehicleBody.Saloon),
        "hatch" => DragDefaults.Coefficient(VehicleBody.Hatch),
        "estate" => DragDefaults.Coefficient(VehicleBody.Estate),
        "suv" => DragDefaults.Coefficient(VehicleBody.SportUtility),
        "mpv" => DragDefaults.Coefficient(VehicleBody.PeopleCarrier),
        "van" => DragDefaults.Coefficient(VehicleBody.Van),
        "pick-up" => DragDefaults.Coefficient(VehicleBody.PickUp),
        _ => double.NaN,
    };

    /// <summary>What an axle carries, kg, as under aboard: its own line, or its share of the whole.</summary>
    internal static double Carried(Reading.IFactReader read, Binding.Block vehicle, string axle)
    {
        var block = vehicle.FindBlock(AxleFacts.Vehicle.Block, axle);
        if (block is not null && read.QuantityIfKnown(block, AxleFacts.Vehicle.Carries!) is { } carried)
        {
            return carried;
        }

        var share = read.Quantity(vehicle, VehicleFacts.FrontShare);
        return read.Quantity(vehicle, VehicleFacts.Mass) * (axle == "front" ? share : 1 - share);
    }
}
