using RigLang.Analysis.Checks.Trips;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Expectations;

/// <summary>
/// An <c>expect</c> line of a trip, a leg or a stop isn't met. The result is looked for in the block that holds the line, then outward: of a stop, its leg,
/// the trip, the rig. A leg's result that the trip itself expects is that of its last leg.
/// </summary>
public sealed class TripExpectationMissed : TripCheck
{
    private static readonly ExpectationMissed Judge = new();

    public override CheckDeclaration Declaration => Judge.Declaration;

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        ISubject[] whole = trip.Legs is [.., var last] ? [trip, trip.Rig, last] : [trip, trip.Rig];
        return trip.Legs
            .SelectMany(leg => Missed(trip, leg.Leg, [leg, .. whole])
                .Concat(leg.Stop is { } stop ? Missed(trip, stop.Block, [stop, leg, .. whole]) : []))
            .Concat(Missed(trip, trip.Block, whole));
    }

    private static IEnumerable<Finding> Missed(TripStudy trip, Block block, IReadOnlyList<ISubject> outward)
    {
        foreach (var line in block.All(EverywhereFacts.Expect))
        {
            if (Bound.Read(line) is not { } bound || outward.FirstOrDefault(subject => bound.Evaluate(subject) is not null) is not { } subject)
            {
                continue;
            }

            var currency = Costs.CurrencyIn(subject);
            var finding = bound.Written.Unit.Currency is { } wanted && currency is not null && currency != wanted
                ? new Finding(Judge.Declaration, line.Place, $"`{bound.Result.Name}` is in {currency}, the expectation in {wanted}; currencies are never converted.")
                : Judge.Judge(bound, subject, LacksStart(bound, subject) || Judgeable.IsUnsettled(trip.Parts.Trip, trip.Rig.Parts));
            if (finding is not null)
            {
                yield return IsOwn(trip, line.Place) ? finding : finding with { Place = trip.Parts.Trip.Own.NamePlace };
            }
        }
    }

    /// <summary>What a trip starts with is asked for once, at its name.</summary>
    private static bool LacksStart(Bound bound, ISubject subject) =>
        bound.Evaluate(subject)?.Missing is { Fact: var fact } && (fact == TripFacts.StartCharge || fact == TripFacts.StartFuel);
}
