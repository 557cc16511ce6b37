using System.Text.Json;

namespace RigLang.Cli.Tests;

public sealed class PlanTests : IDisposable
{
    private const string Trip = """
        vehicle van
            mass 2400 kg
            rolling 0.010
            drag-area 0.8 m²
            aboard nothing
            electric
                usable-energy 80 kWh
                drive-efficiency 88 %
                regeneration 60 %
                auxiliary 0.5 kW
                charge-efficiency 95 %
                charge-point 10 % 120 kW
                charge-point 100 % 10 kW

        rig solo
            vehicle van
            speed 90 km/h

        trip out "Out and away"
            rig solo
            depart 2026-10-03 08:00
            start home "Home"
            start-charge 50 %
            reserve 10 %
            leg mill "Old mill"
                distance 150 km
                climb 0 m
                wind 0 km/h head
                air 15 °C
            stop mill
                charger 100 kW dc
                connect 5 min
            leg coast
                distance 150 km
                climb 0 m
                wind 0 km/h head
                air 15 °C

        """;

    private readonly Cli cli = new();

    public void Dispose() => cli.Dispose();

    [Fact]
    public async Task A_trip_is_solved_leg_by_leg()
    {
        var run = await cli.With("trip.rig", Trip).Run("plan", "out");

        run.Code.Should().Be(0);
        run.Flat.Should().Contain("Could be done in 3 h").And.Contain("Home, 2026-10-03 08:00 with 50 %").And.Contain("Held by the rig's speed: Old mill, coast.");
        run.Lines.Should().Contain(line => line.StartsWith("  Old mill") && line.Contains("90 km/h") && line.Contains("08:00") && line.Contains("09:40"));
    }

    [Fact]
    public async Task Json_tells_the_same()
    {
        var run = await cli.With("trip.rig", Trip).Run("plan", "out", "--json");

        var trip = JsonDocument.Parse(run.Out).RootElement.GetProperty("trips")[0];
        trip.GetProperty("outcome").GetString().Should().Be("found");
        var legs = trip.GetProperty("legs");
        legs.GetArrayLength().Should().Be(2);
        legs[0].GetProperty("arrives").GetDouble().Should().BeApproximately(6000, 1);
        legs[0].GetProperty("heldBy").GetString().Should().Be("comfort");
        var charge = legs[0].GetProperty("charge");
        charge.GetProperty("post").GetString().Should().Be("100 kW dc");
        legs[1].GetProperty("leaves").GetDouble().Should().BeApproximately(charge.GetProperty("to").GetDouble(), 1e-6);
        legs[1].GetProperty("left").GetDouble().Should().BeInRange(0.10, 0.12);
    }

    [Fact]
    public async Task A_trip_that_cannot_be_done_ends_with_one_and_says_where_it_breaks()
    {
        var run = await cli.With("trip.rig", Trip.Replace("leg coast\n        distance 150 km", "leg coast\n        distance 900 km", StringComparison.Ordinal)).Run("plan", "out");

        run.Code.Should().Be(1);
        run.Flat.Should().Contain("No plan: coast can't be reached: from Old mill it takes").And.Contain("more than can be aboard there");
    }

    [Fact]
    public async Task A_fact_that_is_missing_is_named()
    {
        var run = await cli.With("trip.rig", Trip.Replace("    start-charge 50 %\n", "", StringComparison.Ordinal)).Run("plan", "out");

        run.Code.Should().Be(3);
        run.Flat.Should().Contain("No plan: needs `start-charge` of trip out.");
    }

    [Fact]
    public async Task Only_trips_are_planned()
    {
        var run = await cli.With("trip.rig", Trip).Run("plan", "rig", "solo");

        run.Code.Should().Be(3);
        run.ErrorWords.Should().Be("A rig can't be planned; a trip can.");
    }
}
