namespace RigLang.Analysis.Tests.Trips;

/// <summary>Messages name the place, the value, the limit and what to do.</summary>
public class TripMessageTests
{
    [Theory]
    [InlineData(
        "start-charge 60 %\nreserve 20 %\nleg a \"Camp\"\n    distance 90 km\n    climb 0 m", "reserve-not-met",
        "Camp is reached with 5.7 % left (estimated), 14.3 % short of the reserve of 20 %. Leave home with 75 %, or drive slower.")]
    [InlineData(
        "start-charge 40 %\nleg a \"Camp\"\n    section 60 km at 0 %\n    section 30 km at 0 %", "runs-empty",
        "The battery is empty 66 km into the leg to Camp (estimated); the leg takes 54.3 % of it, and 14.3 % is lacking. Leave home with more than 55 %, or drive slower.")]
    [InlineData(
        "start-charge 100 %\nleg a \"Camp\"\n    distance 200 km\n    climb 0 m", "leg-out-of-range",
        "The leg to Camp takes 120.6 % of a full battery (estimated): at this pace a full one lasts 166 km of its 200 km. Put a stop on the way, or drive slower.")]
    [InlineData(
        "start-charge 60 %\nleg a \"Camp\"\n    distance 40 km\n    climb 0 m\nstop a\n    charger 22 kW ac\n    charge-to 60 %", "charger-above-vehicle",
        "The post offers 22 kW, but the charger aboard takes no more than 11.0 kW: 11.0 kW on the mean, 1 h 45 min for this stop (estimated).")]
    [InlineData(
        "start-charge 90 %\nleg a \"Camp\"\n    distance 40 km\n    climb 0 m\nstop a\n    charger 11 kW ac\n    charge-to 30 %", "charge-to-below-arrival",
        "Camp is reached with 65.9 % (estimated), more than `charge-to 30 %`: nothing is taken on here. Take on more, or leave the line out.")]
    [InlineData(
        "depart 2026-10-03 08:00 +10:00\narrive-by 2026-10-03 08:30 +10:00\nleg a \"Camp\"\n    distance 90 km", "arrives-late",
        "Camp is reached 2026-10-03 09:00 +10:00, 30 min after the wish. Leave earlier, stop less, or change the wish.")]
    [InlineData(
        "depart 2026-10-03 08:00 +10:00\ndriving-limit 30 min\nleg a \"Camp\"\n    distance 90 km", "driving-limit-exceeded",
        "2026-10-03 has 1 h of driving, more than 30 min. Stay a night on the way, or set the limit that you mean.")]
    [InlineData(
        "driving-limit 30 min\nleg a \"Camp\"\n    distance 90 km", "driving-limit-exceeded",
        "The trip has 1 h of driving, more than 30 min. Stay a night on the way, or set the limit that you mean.")]
    [InlineData(
        "depart 2026-10-03 08:00 +10:00\nleg a \"Camp\"\n    distance 90 km\nstop a\n    until 2026-10-03 08:30", "until-past",
        "Camp is reached 2026-10-03 09:00 +10:00, when 2026-10-03 08:30 has gone by; the stop isn't held any longer by it. Mend the date, or take the line out.")]
    [InlineData(
        "leg a\n    distance 90 km\nstop bay\n    pause 5 min", "stop-out-of-place",
        "No leg reaches `bay`, so the stop counts nowhere. Write the name of the leg right above.")]
    [InlineData(
        "leg a\n    distance 60 km\n    section 20 km at 1 %\n    section 14 km at 6 %", "distance-disagrees",
        "The sections add up to 34 km, `distance` says 60 km; 34 km count. Add what is missing, or take the line out.")]
    [InlineData(
        "leg a\n    section 20 km at 1 %\n    climb 900 m\n    descent 10 m", "way-told-twice",
        "On the leg to a the `section` lines count, so `climb`, `descent` say nothing. Keep one way and take the other lines out.")]
    [InlineData(
        "leg a\n    gpx \"a.gpx\"", "track-unreadable",
        "\"a.gpx\" can't be read: no such file. The path counts from the folder of this file, with forward slashes.")]
    [InlineData(
        "leg a\n    gpx \"../a.gpx\"", "track-unreadable",
        "\"../a.gpx\" can't be read: it leads out of the folder that is open, and what lies outside isn't read. Move it inside, or open the folder that holds both.")]
    [InlineData(
        "leg a\n    distance 90 km\n    speed 60 mph\n    speed-limit 50 mph", "wish-above-limit",
        "60 mph is wished, 50 mph is the limit, which counts. Wish no more than the limit.")]
    [InlineData(
        "start-fuel 20 L\nleg a\n    distance 90 km", "refill-does-not-fit",
        "The vehicle has a battery drive, so `start-fuel` says nothing here. Write `start-charge`.")]
    [InlineData(
        "leg a\n    distance 90 km\n    climb 0 m", "start-level-missing",
        "What is left at each place isn't computed: write `start-charge`, for instance `start-charge 95 % ± 1 %`.")]
    [InlineData(
        "leg a\n    distance 90 km", "hills-missing",
        "Energy to a isn't computed: no line says how much the road climbs. Write `climb` and `descent`, or `section` lines, or a `gpx`; `climb 0 m` for a level road.")]
    [InlineData(
        "start-charge 90 %\nleg a\n    speed 100 mi/h\n    section 5 mi at 12 %\n    altitude 0 m\n    air 15 °C\n    wind 0 km/h head", "power-runs-out",
        "On 5.0 mi of the leg to a the rig can't hold the wished speed and is down to 71 mi/h: `motor-power-lasting`, or `motor-power`, gives no more. Wish a speed there that it can hold.")]
    public void A_finding_says(string lines, string slug, string message) =>
        Study.Findings(Journey.Electric + Journey.Trip(lines)).Where(finding => finding.Check.Slug == slug).Select(finding => finding.Message).Should().Equal(message);

    [Fact]
    public void A_leg_after_an_empty_battery_is_not_reported_again()
    {
        var slugs = Study.Slugs(Journey.Electric + Journey.Trip("start-charge 20 %\nreserve 10 %\nleg a\n    distance 90 km\n    climb 0 m\nleg b\n    distance 90 km\n    climb 0 m"));

        slugs.Should().Equal("runs-empty");
    }

    [Fact]
    public void Fixes_cure_what_they_are_offered_for()
    {
        foreach (var (lines, slug) in new[]
        {
            ("leg a\n    distance 90 km\n    speed 60 mph\n    speed-limit 50 mph", "wish-above-limit"),
            ("leg a\n    distance 60 km\n    section 20 km at 1 %\n    section 14 km at 6 %", "distance-disagrees"),
            ("leg abba\n    distance 90 km\nstop aba\n    pause 5 min", "stop-out-of-place"),
            ("leg a\n    distance 90 km\n    wind 20 km/h", "wind-without-direction"),
        })
        {
            var text = Journey.Electric + Journey.Trip(lines);
            var analysis = Study.Of(text);
            var finding = analysis.Findings(Study.File).Remaining.Single(found => found.Check.Slug == slug);
            var edit = finding.Fixes[0].Edits.Should().ContainSingle().Subject;
            var at = analysis.Workspace.LineOf(edit.Place)!.Value;
            var all = text.Split('\n');
            all[at] = all[at].Remove(edit.Place.Span.Start, edit.Place.Span.Length).Insert(edit.Place.Span.Start, edit.NewText);

            Study.Slugs(string.Join('\n', all)).Should().NotContain(slug);
        }
    }
}
