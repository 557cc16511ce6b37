using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Syntax;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>A stop doesn't stand behind the leg whose name it repeats.</summary>
public sealed class StopOutOfPlace : TripCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL709",
        Slug = "stop-out-of-place",
        Severity = Severity.Error,
        Summary = "A stop doesn't stand right behind the leg whose name it repeats.",
        Why = "The trip is read from top to bottom; a stop of no leg would be lost without a word.",
        Bad = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg coast
                    distance 190 km
                    climb 0 m
                stop cosst
                    pause 20 min
            """),
        Good = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg coast
                    distance 190 km
                    climb 0 m
                stop coast
                    pause 20 min
            """),
        Fix = "Put it right behind its leg, and write the leg's name.",
        CanBeAllowed = false,
    };

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        Fact? leg = null;
        if (trip.Block.All(TripFacts.Leg).Any(line => line.Key.Length == 0))
        {
            yield break; // it may be the stop's, and is reported for having no name
        }

        foreach (var line in trip.Block.Facts)
        {
            if (line.Declaration == TripFacts.Leg)
            {
                leg = line;
            }
            else if (line.Declaration == TripFacts.Stop && line.Key.Length > 0 && line.Key != leg?.Key)
            {
                yield return Wrong(trip, line, leg);
            }
        }
    }

    private Finding Wrong(TripStudy trip, Fact stop, Fact? above)
    {
        var place = stop.PlaceOf("place");
        if (trip.Block.All(TripFacts.Leg).FirstOrDefault(leg => leg.Key == stop.Key) is { } own)
        {
            return Report(trip, place, $"`{stop.Title}` belongs right behind `{own.Title}`{(above is null ? "" : $", not behind `{above.Title}`")}. It counts there; move it.") with
            {
                Related = [new Related(own.Place, "its leg")],
            };
        }

        var near = Spelling.Nearest(stop.Key, trip.Block.All(TripFacts.Leg).Select(leg => leg.Key));
        var finding = Report(trip, place, $"No leg reaches `{stop.Key}`, so the stop counts nowhere.{(near is null ? " Write the name of the leg right above." : $" Did you mean `{near}`?")}");
        return near is not null && IsOwn(trip, place) ? finding with { Fixes = [new Fix($"Write `{near}`", place, near)] } : finding;
    }
}
