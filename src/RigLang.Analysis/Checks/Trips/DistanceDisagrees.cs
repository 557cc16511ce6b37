using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>The sections' sum, or the track's length, is another than the distance beside it.</summary>
public sealed class DistanceDisagrees : TripCheck
{
    // Sections are written to a kilometre or so; a track cuts corners between its points.
    private const double SectionSlack = 0.01, TrackSlack = 0.05;

    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL711",
        Slug = "distance-disagrees",
        Severity = Severity.Warning,
        Summary = "The sum of the sections, or the length of the track, is not the `distance` beside it.",
        Why = "The sections or the track count. If the distance is right, a piece of the way is missing from the energy.",
        Bad = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg pass
                    distance 60 km
                    section 20 km at 1 %
                    section 14 km at 6 %
            """),
        Good = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg pass
                    section 20 km at 1 %
                    section 14 km at 6 %
                    section 26 km at -2 %
            """),
        Fix = "Add the piece that is missing, or take the `distance` line out.",
    };

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        foreach (var leg in trip.Legs)
        {
            var form = Driving.WayOf(leg).Form;
            if (form == WayForm.Totals || leg.Leg.Find(LegFacts.Journey.Distance) is not { } line || line.MeasureOf("value") is not { } written
                || trip.Compute(LegResults.Distance, leg) is not { IsComputed: true } counted
                || Math.Abs(counted.Value - written.Value) <= written.Value * (form == WayForm.Track ? TrackSlack : SectionSlack))
            {
                continue;
            }

            var sum = QuantityWriter.WriteLike(counted.Value, written);
            var finding = Report(
                trip, line.Place,
                $"{(form == WayForm.Track ? "The track is" : "The sections add up to")} {sum}, `distance` says {written.Text}; {sum} {(form == WayForm.Track ? "counts" : "count")}. Add what is missing, or take the line out.");
            yield return IsOwn(trip, line.Place) ? finding with { Fixes = [new Fix($"Write {sum}", line.PlaceOf("value"), sum)] } : finding;
        }
    }
}
