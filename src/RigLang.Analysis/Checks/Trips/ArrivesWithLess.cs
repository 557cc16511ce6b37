using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>The last place is reached with less than is wanted there.</summary>
public sealed class ArrivesWithLess : TripCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL740",
        Slug = "arrives-with-less",
        Severity = Severity.Warning,
        Summary = "The last place is reached with less than `arrive-with` wants.",
        Why = "There may be no charger there, and the next day begins with what is left.",
        Bad = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 80 %
                arrive-with 50 %
                leg coast
                    distance 190 km
                    climb 0 m
            """),
        Good = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 80 %
                arrive-with 20 %
                leg coast
                    distance 190 km
                    climb 0 m
            """),
        Fix = "Charge more on the way, or drive slower.",
    };

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        if (trip.Legs is not [.., var last] || trip.Block.Find(TripFacts.ArriveWith) is not { } line || line.MeasureOf(Signature.ValueRole) is not { } wanted
            || trip.Compute(LegResults.EnergyLeft, last) is not { IsComputed: true, Value: >= 0 } left || !Limits.FallsBelow(left.Value, wanted.Value))
        {
            yield break;
        }

        yield return Report(
            trip, line.Place,
            $"{last.PlaceName} is reached with {Percent(left.Value)} left{Mark(left)}, {Percent(wanted.Value - left.Value)} less than wanted. Charge more on the way, or drive slower.") with
        {
            Related = [new Related(PlaceOf(last), "the last leg")],
        };
    }
}
