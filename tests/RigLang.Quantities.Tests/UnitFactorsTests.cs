using UnitsNet;

namespace RigLang.Quantities.Tests;

/// <summary>Every factor of the table against an outside source: the UnitsNet library, 5.75.1.</summary>
public class UnitFactorsTests
{
    /// <summary>Our unit, and how the other library converts one and two of it to SI.</summary>
    private static readonly Dictionary<string, Func<double, double>> Outside = new()
    {
        ["%"] = x => Ratio.FromPercent(x).DecimalFractions,
        ["‰"] = x => Ratio.FromPartsPerThousand(x).DecimalFractions,
        ["m"] = x => Length.FromMeters(x).Meters,
        ["mm"] = x => Length.FromMillimeters(x).Meters,
        ["cm"] = x => Length.FromCentimeters(x).Meters,
        ["km"] = x => Length.FromKilometers(x).Meters,
        ["in"] = x => Length.FromInches(x).Meters,
        ["ft"] = x => Length.FromFeet(x).Meters,
        ["yd"] = x => Length.FromYards(x).Meters,
        ["mi"] = x => Length.FromMiles(x).Meters,
        ["kg"] = x => Mass.FromKilograms(x).Kilograms,
        ["g"] = x => Mass.FromGrams(x).Kilograms,
        ["t"] = x => Mass.FromTonnes(x).Kilograms,
        ["lb"] = x => Mass.FromPounds(x).Kilograms,
        ["st"] = x => Mass.FromStone(x).Kilograms,
        ["µm"] = x => Length.FromMicrometers(x).Meters,
        ["oz"] = x => Mass.FromOunces(x).Kilograms,
        ["short-ton"] = x => Mass.FromShortTons(x).Kilograms,
        ["long-ton"] = x => Mass.FromLongTons(x).Kilograms,
        ["short-cwt"] = x => Mass.FromShortHundredweight(x).Kilograms,
        ["long-cwt"] = x => Mass.FromLongHundredweight(x).Kilograms,
        ["N"] = x => Force.FromNewtons(x).Newtons,
        ["daN"] = x => Force.FromDecanewtons(x).Newtons,
        ["kN"] = x => Force.FromKilonewtons(x).Newtons,
        ["kgf"] = x => Force.FromKilogramsForce(x).Newtons,
        ["lbf"] = x => Force.FromPoundsForce(x).Newtons,
        ["Pa"] = x => Pressure.FromPascals(x).Pascals,
        ["hPa"] = x => Pressure.FromHectopascals(x).Pascals,
        ["kPa"] = x => Pressure.FromKilopascals(x).Pascals,
        ["MPa"] = x => Pressure.FromMegapascals(x).Pascals,
        ["bar"] = x => Pressure.FromBars(x).Pascals,
        ["mbar"] = x => Pressure.FromMillibars(x).Pascals,
        ["psi"] = x => Pressure.FromPoundsForcePerSquareInch(x).Pascals,
        ["W"] = x => (double)Power.FromWatts(x).Watts,
        ["kW"] = x => (double)Power.FromKilowatts(x).Watts,
        ["MW"] = x => (double)Power.FromMegawatts(x).Watts,
        ["us-hp"] = x => (double)Power.FromMechanicalHorsepower(x).Watts,
        ["metric-hp"] = x => (double)Power.FromMetricHorsepower(x).Watts,
        ["J"] = x => Energy.FromJoules(x).Joules,
        ["kJ"] = x => Energy.FromKilojoules(x).Joules,
        ["MJ"] = x => Energy.FromMegajoules(x).Joules,
        ["Wh"] = x => Energy.FromWattHours(x).Joules,
        ["kWh"] = x => Energy.FromKilowattHours(x).Joules,
        ["MWh"] = x => Energy.FromMegawattHours(x).Joules,
        ["Btu"] = x => Energy.FromBritishThermalUnits(x).Joules,
        ["mph"] = x => Speed.FromMilesPerHour(x).MetersPerSecond,
        ["kn"] = x => Speed.FromKnots(x).MetersPerSecond,
        ["km/h"] = x => Speed.FromKilometersPerHour(x).MetersPerSecond,
        ["s"] = x => Duration.FromSeconds(x).Seconds,
        ["min"] = x => Duration.FromMinutes(x).Seconds,
        ["h"] = x => Duration.FromHours(x).Seconds,
        ["d"] = x => Duration.FromDays(x).Seconds,
        ["K"] = x => Temperature.FromKelvins(x).Kelvins,
        ["°C"] = x => Temperature.FromDegreesCelsius(x).Kelvins,
        ["°F"] = x => Temperature.FromDegreesFahrenheit(x).Kelvins,
        ["°"] = x => Angle.FromDegrees(x).Radians,
        ["rad"] = x => Angle.FromRadians(x).Radians,
        ["mrad"] = x => Angle.FromMilliradians(x).Radians,
        ["°/g"] = x => Angle.FromDegrees(x).Radians / Acceleration.FromStandardGravity(1).MetersPerSecondSquared,
        ["L"] = x => Volume.FromLiters(x).CubicMeters,
        ["mL"] = x => Volume.FromMilliliters(x).CubicMeters,
        ["us-gal"] = x => Volume.FromUsGallons(x).CubicMeters,
        ["imp-gal"] = x => Volume.FromImperialGallons(x).CubicMeters,
        ["us-qt"] = x => Volume.FromUsQuarts(x).CubicMeters,
        ["imp-qt"] = x => Volume.FromImperialQuarts(x).CubicMeters,
        ["us-pt"] = x => Volume.FromUsPints(x).CubicMeters,
        ["imp-pt"] = x => Volume.FromImperialPints(x).CubicMeters,
        ["rpm"] = x => RotationalSpeed.FromRevolutionsPerMinute(x).RadiansPerSecond,
        ["Hz"] = x => Frequency.FromHertz(x).Hertz,
        ["A"] = x => ElectricCurrent.FromAmperes(x).Amperes,
        ["V"] = x => ElectricPotential.FromVolts(x).Volts,
        ["us-mpg"] = x => FuelEfficiency.FromMilesPerUsGallon(x).LitersPer100Kilometers * 1e-8,
        ["imp-mpg"] = x => FuelEfficiency.FromMilesPerUkGallon(x).LitersPer100Kilometers * 1e-8,
        ["km/L"] = x => FuelEfficiency.FromKilometersPerLiters(x).LitersPer100Kilometers * 1e-8,
        ["L/100km"] = x => FuelEfficiency.FromLitersPer100Kilometers(x).LitersPer100Kilometers * 1e-8,
        // Composed units, where the other library has them.
        ["N·m"] = x => Torque.FromNewtonMeters(x).NewtonMeters,
        ["lbf·ft"] = x => Torque.FromPoundForceFeet(x).NewtonMeters,
        ["lbf·in"] = x => Torque.FromPoundForceInches(x).NewtonMeters,
        ["kgf·m"] = x => Torque.FromKilogramForceMeters(x).NewtonMeters,
        ["m²"] = x => Area.FromSquareMeters(x).SquareMeters,
        ["ft²"] = x => Area.FromSquareFeet(x).SquareMeters,
        ["in²"] = x => Area.FromSquareInches(x).SquareMeters,
        ["cm³"] = x => Volume.FromCubicCentimeters(x).CubicMeters,
        ["ft³"] = x => Volume.FromCubicFeet(x).CubicMeters,
        ["in³"] = x => Volume.FromCubicInches(x).CubicMeters,
        ["N/mm"] = x => ForcePerLength.FromNewtonsPerMillimeter(x).NewtonsPerMeter,
        ["lbf/in"] = x => ForcePerLength.FromPoundsForcePerInch(x).NewtonsPerMeter,
        ["lb·ft²"] = x => MassMomentOfInertia.FromPoundSquareFeet(x).KilogramSquareMeters,
        ["kg/L"] = x => Density.FromKilogramsPerLiter(x).KilogramsPerCubicMeter,
        ["lb/us-gal"] = x => Density.FromPoundsPerUSGallon(x).KilogramsPerCubicMeter,
        ["lb/imp-gal"] = x => Density.FromPoundsPerImperialGallon(x).KilogramsPerCubicMeter,
        ["lb/ft³"] = x => Density.FromPoundsPerCubicFoot(x).KilogramsPerCubicMeter,
        ["ft/s²"] = x => Acceleration.FromFeetPerSecondSquared(x).MetersPerSecondSquared,
        ["°/s"] = x => RotationalSpeed.FromDegreesPerSecond(x).RadiansPerSecond,
        ["kgf/cm²"] = x => Pressure.FromKilogramsForcePerSquareCentimeter(x).Pascals,
        ["N·m/rad"] = x => RotationalStiffness.FromNewtonMetersPerRadian(x).NewtonMetersPerRadian,
        ["N·m/°"] = x => RotationalStiffness.FromNewtonMetersPerDegree(x).NewtonMetersPerRadian,
        ["mi/h"] = x => Speed.FromMilesPerHour(x).MetersPerSecond,
    };

    /// <summary>Where the other library carries a rounded constant, how far it is off; the definition is checked below.</summary>
    private static readonly Dictionary<string, double> Coarse = new()
    {
        ["us-hp"] = 2e-5,
        ["imp-mpg"] = 5e-7,
        ["lb/imp-gal"] = 5e-7,
        ["lb/ft³"] = 1e-8,
        ["lb/us-gal"] = 5e-9,
        ["lbf/in"] = 2e-9,
        ["lb·ft²"] = 2e-10,
        ["rpm"] = 1e-11,
        ["st"] = 1e-6,
    };

    public static TheoryData<string> Checked => [.. Outside.Keys];

    [Theory]
    [MemberData(nameof(Checked))]
    public void A_factor_is_the_one_of_the_outside_library(string symbol)
    {
        var unit = UnitTable.Find(symbol);

        unit.Should().NotBeNull();
        foreach (var number in (double[])[1, 2, 37.5])
        {
            var expected = Outside[symbol](number);
            var tolerance = Coarse.GetValueOrDefault(symbol, 1e-12);
            unit!.ToSi(number).Should().BeApproximately(expected, tolerance * expected);
            unit.FromSi(expected).Should().BeApproximately(number, tolerance * number);
        }
    }

    [Fact]
    public void Every_simple_unit_is_checked() =>
        Units.All.Select(unit => unit.Symbol).Should().BeSubsetOf(Outside.Keys);

    // Definitions: the international pound 0.45359237 kg and foot 0.3048 m (1959), standard gravity 9.80665 m/s² (CGPM 1901),
    // the imperial gallon 4.54609 L (UK Weights and Measures Act 1985), the US gallon 231 in³ (NIST Handbook 44).
    [Theory]
    [InlineData("us-hp", 550 * 0.3048 * 0.45359237 * 9.80665)]
    [InlineData("lb/imp-gal", 0.45359237 / 4.54609e-3)]
    [InlineData("lb/ft³", 0.45359237 / (0.3048 * 0.3048 * 0.3048))]
    [InlineData("lb/us-gal", 0.45359237 / (231 * 0.0254 * 0.0254 * 0.0254))]
    [InlineData("lbf/in", 0.45359237 * 9.80665 / 0.0254)]
    [InlineData("lb·ft²", 0.45359237 * 0.3048 * 0.3048)]
    [InlineData("st", 14 * 0.45359237)]
    [InlineData("rpm", 2 * Math.PI / 60)]
    [InlineData("imp-mpg", 4.54609e-3 / 1609.344)]
    public void A_factor_is_the_one_of_the_definition(string symbol, double si) =>
        UnitTable.Find(symbol)!.ToSi(1).Should().BeApproximately(si, 1e-14 * si);

    [Fact]
    public void A_slope_is_the_tangent_of_its_angle()
    {
        Units.SlopeDegree.ToSi(45).Should().BeApproximately(1, 1e-15);
        Units.SlopeOneIn.ToSi(16).Should().Be(0.0625);
        Units.SlopeDegree.FromSi(Units.SlopeDegree.ToSi(3.4)).Should().BeApproximately(3.4, 1e-13);
    }

    [Fact]
    public void Prices_keep_their_currency_and_convert_what_they_are_for()
    {
        var price = UnitTable.Find("AUD/kWh")!;

        price.Currency.Should().Be("AUD");
        price.Dimension.Should().Be(Dimension.Money / Dimension.Energy);
        price.ToSi(0.62).Should().BeApproximately(0.62 / 3.6e6, 1e-20);
    }
}
