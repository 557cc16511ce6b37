using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>Estimates for a battery drive where nothing is stated.</summary>
public static class BatteryDefaults
{
    /// <summary>Battery to wheel. Source: published motor maps 0.83 to 0.94 times a gearbox of 0.98 give 0.85 to 0.92.</summary>
    public const double DriveEfficiency = 0.88;

    /// <summary>Wheel to battery (0.55 to 0.75, value from memory).</summary>
    public const double Regeneration = 0.60;

    /// <summary>On-board charger, post to battery, alternating current. Source: typical value of published vehicle models.</summary>
    public const double AcChargeEfficiency = 0.86;

    /// <summary>Post to battery, direct current (value from memory).</summary>
    public const double DcChargeEfficiency = 0.92;

    /// <summary>Electronics without heating or cooling, W (0.2 to 0.3 kW, value from memory).</summary>
    public const double MildAuxiliary = 250;

    /// <summary>
    /// Auxiliary power by the temperature outside, W (our estimate): 250 W from 18 to 24 °C; colder 140 W a kelvin more, hotter 90 W a kelvin, 6 kW at
    /// most. Sized so that heating and air conditioning cost a car in mixed driving what the AAA measured on five vehicles in 2019.
    /// </summary>
    /// <param name="temperature">K, −50 to 60 °C.</param>
    public static double Auxiliary(double temperature)
    {
        double celsius = Within(temperature - 273.15, -50, 60);
        return Math.Min(6000, MildAuxiliary + (140 * Math.Max(0, 18 - celsius)) + (90 * Math.Max(0, celsius - 24)));
    }

    /// <summary>
    /// Share of the range that the temperature outside leaves, heating and cooling apart: 0.88 at −6.7 °C, 0.96 at 35 °C, 1 from 15 to 25 °C, straight
    /// between, not
    /// below 0.7. Source of the two points: AAA 2019, five vehicles on a dynamometer.
    /// </summary>
    /// <param name="temperature">K, −50 to 60 °C.</param>
    /// <param name="coldLoss">What −6.7 °C takes, 0 to 0.5; 35 °C takes a third of it.</param>
    public static double TemperatureShare(double temperature, double coldLoss = ColdLoss)
    {
        double celsius = Within(temperature - 273.15, -50, 60), loss = Within(coldLoss, 0, 0.5);
        return Math.Max(0.7, 1 - (loss * Math.Max(0, 15 - celsius) / 21.7) - (loss / 3 * Math.Max(0, celsius - 25) / 10));
    }

    /// <summary>What −6.7 °C takes from the range, heating apart. Source: AAA 2019, five vehicles on a dynamometer.</summary>
    public const double ColdLoss = 0.12;

    /// <summary>Share of its charging power that a cold battery takes: all from 10 °C up, straight down to a share at 0 °C, that below.</summary>
    /// <param name="temperature">K.</param>
    /// <param name="atFreezing">Share at 0 °C, 0 to 1 (0.3 to 0.7 below 10 °C, value from memory).</param>
    public static double ColdCharging(double temperature, double atFreezing) =>
        Finite(1 - ((1 - Within(atFreezing, 0, 1)) * Math.Clamp((283.15 - Finite(temperature)) / 10, 0, 1)));
}
