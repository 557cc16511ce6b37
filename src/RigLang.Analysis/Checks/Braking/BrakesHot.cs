using RigLang.Analysis.Checks.Trips;
using RigLang.Analysis.Results;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Braking;

/// <summary>A descent makes the brakes hot.</summary>
public sealed class BrakesHot : TripCheck
{
    /// <summary>From where brakes are held to fade, K: drums 260 °C, discs 400 °C.</summary>
    private const double Drums = 273.15 + 260, Discs = 273.15 + 400;

    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL730",
        Slug = "brakes-hot",
        Severity = Severity.Warning,
        Summary = "A descent makes the brakes so hot that they may fade.",
        Why = "Hot brakes pull less, just where most is asked of them; the pedal goes long and the rig gathers speed. What is reckoned is rough: the mass of brakes is mostly estimated, and so is how they cool.",
        Bad = Descent("-9 %", ""),
        Good = Descent("-5 %", "\n        retarding-power 20 kW"),
        Fix = "Go down slower and in a lower gear, so that engine or regeneration hold; let the brakes cool on the way. Write `retarding-power`, and `brake-mass` where it is known.",
        Source = "drums after the US Grade Severity Rating System (500 °F), discs common practice; both values from memory",
    };

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        foreach (var leg in trip.Legs)
        {
            var hot = Hot(leg, LegBraking.BrakeTemperature, Discs, "the vehicle's brakes").Concat(Hot(leg, LegBraking.TrailerBrakeTemperature, Drums, "the trailer's brakes")).ToList();
            if (hot.Count > 0)
            {
                yield return Report(
                    trip, PlaceOf(leg),
                    $"On the way down to {leg.PlaceName} {string.Join(" and ", hot)}, so hot that brakes may fade. Go down slower and in a lower gear, and let them cool on the way.");
            }
        }
    }

    private static IEnumerable<string> Hot(LegSubject leg, ResultDeclaration<LegSubject> result, double limit, string which)
    {
        if (result.Compute(leg) is { IsComputed: true } node && node.Value > limit)
        {
            yield return $"{which} come to some {Rounded(node)}{Mark(node)}";
        }
    }

    /// <summary>To ten degrees: no digit more is known.</summary>
    private static string Rounded(Node<double> node) =>
        QuantityWriter.Write((Math.Round((node.Value - 273.15) / 10) * 10) + 273.15, QuantityKinds.Temperature, DisplaySystem.Metric);

    private static string Descent(string grade, string retarder) => $"""
        vehicle van
            mass 2100 kg
            gross-rating 2600 kg
            rolling 0.010
            drag-area 1.1 m²
            tank fuel 60 L diesel at 2 m behind front-axle
            aboard nothing
            combustion
                fuel diesel
                engine-power 60 kW{retarder}
                driveline-efficiency 90 %
                consumption 7.5 L/100km
                consumption-speed 90 km/h

        trailer box
            mass 1500 kg
            gross-rating 1800 kg
            brakes overrun
            rolling 0.011
            drag-area 1.4 m²
            aboard nothing

        rig pair
            vehicle van
            trailer box
            speed 80 km/h

        trip out
            rig pair
            start home
            start-fuel 60 %
            leg valley
                speed 60 km/h
                section 12 km at {grade}
        """;
}
