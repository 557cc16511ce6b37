using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>A track's file isn't there, lies outside, or holds no track.</summary>
public sealed class TrackUnreadable : TripCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL713",
        Slug = "track-unreadable",
        Severity = Severity.Error,
        Summary = "The file of a `gpx` line is not there, lies outside the open folder, or holds no track.",
        Why = "Neither distance nor energy of the leg is computed until it is found.",
        Bad = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg coast
                    gpx "tracks/coast.gpx"
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
        Fix = "Mend the path, which counts from the folder of the file where the line stands; or write `distance`, `climb` and `descent`.",
    };

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        foreach (var leg in trip.Legs)
        {
            if (leg.Gpx is not { } file)
            {
                continue;
            }

            var name = file.Line.PlaceOf("value").Text;
            if (file.Reading.Problem is { } problem)
            {
                var advice = file.IsOutside ? "Move it inside, or open the folder that holds both." : "The path counts from the folder of this file, with forward slashes.";
                yield return Report(trip, file.Line.PlaceOf("value"), $"{name} can't be read: {problem}. {advice}");
            }
            else if (leg.Profile is { IsUsable: false })
            {
                yield return Report(trip, file.Line.PlaceOf("value"), $"{name} goes nowhere: all its points are one place, or are no places on the earth. Record or plan it again.");
            }
        }
    }
}
