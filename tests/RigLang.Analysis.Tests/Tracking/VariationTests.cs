using RigLang.Analysis.Results;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Tests.Tracking;

public sealed class VariationTests
{
    public static TheoryData<int> Examples => [.. Enumerable.Range(0, Example.All.Count)];

    /// <summary>Every number of every line of the examples: other results by a variation are those of the file with that number in it.</summary>
    [Theory]
    [MemberData(nameof(Examples))]
    public void A_variation_gives_what_the_file_with_the_other_value_gives(int example)
    {
        var text = Example.All[example];
        var compared = 0;
        foreach (var study in StudiesOf(text))
        {
            foreach (var number in NumericFacts.Under(ResultsOf(study).Select(found => found.Node)).Where(number => number.Origin == ReadOrigin.Written && number.Fact.Written is not null).ToList())
            {
                var written = number.Fact.Written!;
                // Moved by a hundredth, but at least by a digit, so that the text can say it; a whole gear or axle more is another thing.
                var step = written.Unit.HalfWidthToSi(Math.Pow(10, -written.Decimals), written.Value);
                var other = written.With(written.Value + Math.Max(step, Math.Abs(written.Value) * 0.01), written.HalfWidth);
                if (written.Kind.IsCount || other.Text == written.Text)
                {
                    continue;
                }

                var edited = StudiesOf(WithText(text, number.Fact, other.Text)).Single(other => Title(other) == Title(study));
                var now = NumericFacts.Under(ResultsOf(edited).Select(found => found.Node)).FirstOrDefault(other => Same(other.Fact, number.Fact));
                if (now is null)
                {
                    continue;
                }

                var varied = study.With(number.Fact, now.Value);
                var (byVariation, byFile) = (Values(varied), Values(edited));
                byVariation.Keys.Should().Equal(byFile.Keys, "{0} is {1} in {2}", number.Fact, other.Text, Title(study));
                byVariation.Where(pair => Math.Abs(pair.Value - byFile[pair.Key]) > 1e-9 * Math.Max(1, Math.Abs(pair.Value))).Select(pair => pair.Key)
                    .Should().BeEmpty("{0} is {1} in {2}", number.Fact, other.Text, Title(study));
                compared++;
            }
        }

        compared.Should().BeGreaterThan(20);
    }

    [Fact]
    public void Only_what_rests_on_the_fact_is_carried_out_again()
    {
        var trip = StudiesOf(Example.All.Single(text => text.Contains("trip saddle"))).OfType<TripStudy>().Single(trip => trip.Title == "trip saddle");
        _ = Values(trip);
        var (carriedByTrip, carriedByRig) = (trip.CarriedOut, trip.Rig.CarriedOut);
        var last = trip.Legs[^1];

        var varied = trip.With(FactRef.Of(last.Leg, LegFacts.Journey.Speed), 60 / 3.6);
        _ = Values(varied);

        trip.CarriedOut.Should().Be(carriedByTrip, "the trip itself knew all its results");
        varied.Rig.CarriedOut.Should().Be(0, "no result of the rig rests on a leg's speed");
        carriedByRig.Should().BeGreaterThan(20);
        varied.CarriedOut.Should().BeLessThan(carriedByTrip / 2, "the legs before it are as they were");
        varied.Compute(LegEnergy, varied.Legs[0]).Should().BeSameAs(trip.Compute(LegEnergy, trip.Legs[0]));
        varied.Compute(LegEnergy, varied.Legs[^1]).Value.Should().NotBe(trip.Compute(LegEnergy, last).Value);
    }

    [Fact]
    public void A_fact_that_nobody_reads_carries_out_nothing()
    {
        var rig = Study.Rig(Rigs.Plain("restoration 50 %"));
        _ = rig.Value("front-axle-load");

        var varied = rig.With(FactRef.Of(rig.Vehicle, VehicleFacts.TongueRating), 100);

        varied.Value("front-axle-load").Should().Be(rig.Value("front-axle-load"));
        varied.CarriedOut.Should().Be(0);
    }

    [Fact]
    public void A_variation_of_a_variation_has_both_values()
    {
        var rig = Study.Rig(Rigs.Plain("restoration 50 %"));
        var (tongue, mass) = (FactRef.Of(rig.Trailer, TrailerFacts.Tongue), FactRef.Of(rig.Vehicle.AllBlocks(AxleFacts.Vehicle.Block)[0], AxleFacts.Vehicle.Carries!));

        var one = rig.With(tongue, 200).With(mass, 1300);
        var other = rig.With([new(tongue, 200), new(mass, 1300)]);

        // Slack: the ball's 200 kg at 1.2 m behind the rear axle take 80 kg off the front; half comes back.
        one.Value("front-axle-load").Should().BeApproximately(1300 - 40, 1e-9);
        other.Value("front-axle-load").Should().BeApproximately(1300 - 40, 1e-9);
        one.With(tongue, 300).Value("front-axle-load").Should().BeApproximately(1300 - 60, 1e-9);
    }

    [Fact]
    public void A_subject_has_its_counterpart()
    {
        var trip = StudiesOf(Example.All.Single(text => text.Contains("trip saddle"))).OfType<TripStudy>().First();
        var varied = trip.With(FactRef.Of(trip.Rig.Trailer, TrailerFacts.Mass), 1900).With(FactRef.Of(trip.Rig.Vehicle, VehicleFacts.Wheelbase), 3);

        varied.Here(trip.Legs[1]).Should().BeSameAs(varied.Legs[1]);
        varied.Here(trip.Rig.TrailerAxles[0]).Should().BeSameAs(varied.Rig.TrailerAxles[0]);
        varied.Here(Study.Rig(Rigs.Plain("restoration 0 %"))).Should().BeNull();
    }

    [Fact]
    public void What_no_line_says_can_be_varied_too()
    {
        var rig = Study.Rig(Rigs.Plain("restoration 50 %\nspeed 90 km/h").Replace("    brakes electric\n", "    brakes electric\n    body-length 6.0 m\n    width 2.3 m\n"));
        var inertia = NumericFacts.Under(rig.Result("damping")).Single(number => number.Fact.Fact == TrailerFacts.YawInertia);

        inertia.Origin.Should().Be(ReadOrigin.Estimate);
        inertia.HalfWidth.Should().BeGreaterThan(0, "an estimate has a spread");
        rig.With(inertia.Fact, inertia.Value).Value("damping").Should().BeApproximately(rig.Value("damping"), 1e-12);
        rig.With(inertia.Fact, inertia.Value * 1.5).Value("damping").Should().BeLessThan(rig.Value("damping"));
    }

    [Fact]
    public void An_assumption_of_the_practice_is_one_number_for_all_that_it_is_assumed_for()
    {
        var rig = Study.Rig(Rigs.Plain("practice p") + "\n\npractice p\n    assume friction 0.65 ± 0.1\n");
        var probe = new Computation<RigStudy, double>("probe", (read, _) => read.Figure(FigureFacts.Friction));
        var friction = NumericFacts.Under(rig.Compute(probe, rig)).Single();

        friction.Fact.IsAssumption.Should().BeTrue();
        friction.HalfWidth.Should().BeApproximately(0.1, 1e-12);
        var varied = rig.With(friction.Fact, 0.5);
        varied.Compute(probe, varied).Value.Should().Be(0.5);
    }

    private static Computation<LegSubject, double> LegEnergy => Analysis.Results.Trips.LegResults.EnergyUsed;

    private static IEnumerable<Analysis.Tracking.Study> StudiesOf(string text)
    {
        var analysis = Study.Of(text);
        foreach (var declaration in analysis.Workspace.Link(Study.File)!.Declarations)
        {
            Analysis.Tracking.Study? study = declaration.Kind switch
            {
                DeclarationKind.Rig => analysis.Rig(declaration),
                DeclarationKind.Trip => analysis.Trip(declaration),
                DeclarationKind.Weighing => analysis.Weighing(declaration),
                DeclarationKind.Run => analysis.Run(declaration),
                _ => null,
            };
            if (study is not null)
            {
                yield return study;
            }
        }
    }

    private static IEnumerable<(string Name, Node<double> Node)> ResultsOf(Analysis.Tracking.Study study) =>
        study.Inner.SelectMany(ResultsOf).Concat(study.Subjects.SelectMany(subject => Catalogue.Results.Select(result => (subject.Title + " " + result.Name, Node: result.Compute(subject)!)).Where(found => found.Node is not null)));

    private static Dictionary<string, double> Values(Analysis.Tracking.Study study) =>
        ResultsOf(study).Where(found => found.Node.IsComputed).DistinctBy(found => found.Name).ToDictionary(found => found.Name, found => found.Node.Value);

    private static string Title(Analysis.Tracking.Study study) => study.Subjects[0].Title;

    private static bool Same(FactRef one, FactRef other) =>
        one.ToString() == other.ToString() && one.Line?.Place.Line == other.Line?.Place.Line
        && one.Line?.Place.Declaration.Lines[0].Text == other.Line?.Place.Declaration.Lines[0].Text;

    private static string WithText(string text, FactRef fact, string value)
    {
        var line = fact.Line!;
        var measure = line.Values[fact.Role];
        var span = measure is PositionValue place
            ? place.Span with { Length = line.Place.Declaration.Lines[line.Place.Line].Text.IndexOf(place.Offset < 0 ? " ahead" : " behind", place.Span.Start, StringComparison.Ordinal) - place.Span.Start }
            : measure.Span;
        var lines = text.Split('\n');
        var first = FirstLine(text, line.Place);
        var old = lines[first + line.Place.Line];
        lines[first + line.Place.Line] = string.Concat(old.AsSpan(0, span.Start), value, old.AsSpan(span.Start + span.Length));
        return string.Join('\n', lines);
    }

    private static int FirstLine(string text, Place place)
    {
        var first = 0;
        foreach (var own in Study.Of(text).Workspace.Find(Study.File)!.Declarations)
        {
            if (own.Syntax.Lines[0].Text == place.Declaration.Lines[0].Text)
            {
                return first;
            }

            first += own.Syntax.Lines.Length;
        }

        throw new InvalidOperationException("no such declaration");
    }
}
