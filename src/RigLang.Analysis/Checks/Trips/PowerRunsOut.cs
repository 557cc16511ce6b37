using System.Collections.Immutable;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>The drive can't hold the wished speed on a climb.</summary>
public sealed class PowerRunsOut : TripCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL720",
        Slug = "power-runs-out",
        Severity = Severity.Warning,
        Summary = "The drive can't hold the wished speed on a climb.",
        Why = "The leg takes longer than distance and speed say, and slow traffic on a fast road is a hazard of its own.",
        Bad = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg pass
                    speed 130 km/h
                    section 20 km at 1 %
                    section 3 km at 20 %
            """),
        Good = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg pass
                    speed 130 km/h
                    section 20 km at 1 %
                    section 3 km at 20 % speed 60 km/h
            """),
        Fix = "Give the climb a `speed` of its own that the rig can hold, or wish less on the whole leg.",
    };

    public override ImmutableArray<Lever> Cures => [Levers.DriveSlower];

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        foreach (var leg in trip.Legs)
        {
            if (trip.Compute(Driving.Driven, leg) is not { Missing: null, Value: { IsPowerShort: true } driven } node)
            {
                continue;
            }

            var held = double.IsNaN(driven.SlowestSpeed)
                ? "doesn't get up at all, so time and energy aren't computed"
                : $"is down to {Speed(trip, driven.SlowestSpeed)}";
            var power = Drives.Battery(trip.Rig) is not null ? "`motor-power-lasting`, or `motor-power`," : "`engine-power`";
            yield return Report(
                trip, PlaceOf(leg),
                $"On {Distance(trip, driven.SlowedLength)} of the leg to {leg.PlaceName} the rig can't hold the wished speed and {held}{Mark(node)}: {power} gives no more. Wish a speed there that it can hold.") with { About = leg.Leg.Key };
        }
    }
}
