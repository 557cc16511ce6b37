using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>A section has no length, no speed, or a grade that no road has.</summary>
public sealed class SectionOdd : TripCheck
{
    private const double SteepestRoad = 0.4;

    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL725",
        Slug = "section-odd",
        Severity = Severity.Error,
        Summary = "A section has no length, no speed, or a grade that no road has.",
        Why = "A length or speed of zero or less is left out; a grade above 40 % is mostly a slip of the point, or degrees written as percent.",
        Bad = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg pass
                    section 20 km at 1 %
                    section 4 km at 60 % speed 20 km/h
            """),
        Good = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg pass
                    section 20 km at 1 %
                    section 4 km at 6 % speed 60 km/h
            """),
        Fix = "Write the true figure; a road that falls has a negative grade and a positive length.",
    };

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        foreach (var line in trip.Legs.SelectMany(leg => leg.Leg.All(LegFacts.Journey.Section)))
        {
            if (line.MeasureOf("length") is { Value: <= 0 } length)
            {
                yield return Report(trip, line.PlaceOf("length"), $"A section of {length.Text} is no way; it is left out. Downhill is told by the grade's sign.");
            }

            if (line.MeasureOf("speed") is { Value: <= 0 } speed)
            {
                yield return Report(trip, line.PlaceOf("speed"), $"Nobody arrives at {speed.Text}; the leg's own speed counts here. Write the speed that is wished.");
            }

            if (line.MeasureOf("grade") is { } grade && Math.Abs(grade.Value) > SteepestRoad)
            {
                yield return Report(trip, line.PlaceOf("grade"), $"{grade.Text} is steeper than roads are, which end at {QuantityWriter.Write(SteepestRoad, grade.Unit, 0)}. Is the point in its place, and the unit right?");
            }
        }
    }
}
