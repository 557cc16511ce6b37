using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;
using RigLang.Syntax.Tree;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>The trip doesn't say what is in the battery or tank at its start.</summary>
public sealed class StartLevelMissing : TripCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL718",
        Slug = "start-level-missing",
        Severity = Severity.Warning,
        Summary = "The trip does not say what is in the battery or the tank at its start.",
        Why = "What is left at each place, charging times and arrivals behind a charger all wait for it; full would be a guess.",
        Bad = TripExample.Electric("""
            trip out
                rig solo
                start home
                leg coast
                    distance 190 km
                    climb 0 m
            """),
        Good = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg coast
                    distance 190 km
                    climb 0 m
            """),
        Fix = "Write `start-charge` for a battery, `start-fuel` for a tank.",
    };

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        FactDeclaration? wanted = Drives.Battery(trip.Rig) is not null ? TripFacts.StartCharge : Drives.Engine(trip.Rig) is not null ? TripFacts.StartFuel : null;
        var other = wanted == TripFacts.StartCharge ? TripFacts.StartFuel : TripFacts.StartCharge;
        if (wanted is not null && !trip.Legs.IsEmpty && trip.Block.Find(other) is null && !Judgeable.IsInError(trip.Parts.Trip)
            && trip.Line(trip.Block, wanted) is not { Value: MeasureValue or QueryValue { Query.Goal: not QueryGoal.None } })
        {
            yield return Report(trip, trip.Parts.Trip.Own.NamePlace, $"What is left at each place isn't computed: write `{wanted.Keyword}`, for instance `{wanted.Keyword} {wanted.Example}`.");
        }
    }
}
