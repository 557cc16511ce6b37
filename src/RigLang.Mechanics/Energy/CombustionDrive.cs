using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>What a stretch of driving took from the tank.</summary>
/// <param name="Energy">J of heating value.</param>
/// <param name="Traction">Work at the wheels, J.</param>
/// <param name="Braking">Work held back at the wheels by the engine and the brakes, J.</param>
/// <param name="Distance">m.</param>
/// <param name="Time">s.</param>
public readonly record struct FuelUse(double Energy, double Traction, double Braking, double Distance, double Time)
{
    /// <summary>m³.</summary>
    public double Volume(Fuel fuel) => Domain.Finite(Energy / fuel.VolumeHeatingValue);

    /// <summary>kg.</summary>
    public double Mass(Fuel fuel) => Domain.Finite(Energy / fuel.HeatingValue);

    public static FuelUse operator +(FuelUse one, FuelUse other) => new(
        one.Energy + other.Energy, one.Traction + other.Traction, one.Braking + other.Braking, one.Distance + other.Distance, one.Time + other.Time);

    public static FuelUse Add(FuelUse one, FuelUse other) => one + other;
}

/// <summary>A combustion drive: wheel work on one side, fuel on the other.</summary>
/// <param name="Map">Efficiency of the engine.</param>
/// <param name="RatedPower">At the crank, W, above zero.</param>
/// <param name="DrivelineEfficiency">Crank to wheel, above 0, to 1.</param>
/// <param name="Auxiliary">Power taken from the crank by everything else, W.</param>
/// <param name="Scale">Multiplies the efficiency; see <see cref="ScaleTo"/>.</param>
public sealed record CombustionDrive(EngineMap Map, double RatedPower, double DrivelineEfficiency, double Auxiliary = 0, double Scale = 1)
{
    /// <summary>Fuel of a steady stretch. NaN where the engine cannot give the power.</summary>
    public FuelUse Over(RoadLoad load, RouteSegment stretch)
    {
        double force = load.Force(stretch.Speed, stretch.Density, stretch.Wind, stretch.Grade);
        double wheel = force * Positive(stretch.Speed);
        double crank = (wheel > 0 ? wheel / Positive(Within(DrivelineEfficiency, 0, 1)) : wheel * DrivelineEfficiency) + NotNegative(Auxiliary);
        double fuel = Map.FuelPower(crank, RatedPower, Scale) * stretch.Time;
        return new FuelUse(Finite(fuel), Finite(Math.Max(0, force) * stretch.Length), Finite(Math.Max(0, -force) * stretch.Length), stretch.Length, stretch.Time);
    }

    /// <summary>Fuel of a leg: the sum of its stretches.</summary>
    public FuelUse Over(RoadLoad load, IReadOnlyList<RouteSegment> stretches)
    {
        FuelUse sum = default;
        for (int i = 0; i < stretches.Count; i++)
        {
            if (stretches[i].Length != 0)
                sum += Over(load, stretches[i]);
        }

        return sum;
    }

    /// <summary>This drive with its efficiency scaled so that the best point has a stated value.</summary>
    public CombustionDrive WithBestEfficiency(double best) => this with { Scale = Finite(Positive(Within(best, 0, 1)) / Map.Best) };

    /// <summary>This drive with its efficiency scaled so that a steady pace takes a stated fuel energy over distance.</summary>
    /// <param name="load">The vehicle as it was when that was stated, commonly solo.</param>
    /// <param name="pace">Its pace; the length is not read.</param>
    /// <param name="energyPerDistance">J/m, above zero.</param>
    public CombustionDrive ScaleTo(RoadLoad load, RouteSegment pace, double energyPerDistance)
    {
        double unscaled = (this with { Scale = 1 }).Over(load, pace with { Length = 1 }).Energy;
        return this with { Scale = Finite(unscaled / Positive(energyPerDistance)) };
    }
}
