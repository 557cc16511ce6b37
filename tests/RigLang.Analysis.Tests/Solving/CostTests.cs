using RigLang.Analysis.Solving;
using RigLang.Analysis.Studies;
using RigLang.Model.Declaring;

namespace RigLang.Analysis.Tests.Solving;

/// <summary>What a question costs, counted and not timed: how often its result is computed, and how much of a trip for each time.</summary>
public sealed class CostTests
{
    [Theory]
    [InlineData("? for total-time = 2 h 30 min", "95 %", 26)]
    [InlineData("? least total-energy within 20 km/h .. 130 km/h", "95 %", 40)]
    [InlineData("85 km/h", "? for energy-left = 30 %", 26)]
    [InlineData("? for range-left = 300 km", "? for energy-left = 30 %", 90)]
    public void A_question_over_a_whole_trip_is_answered_with_few_looks(string speed, string charge, int most)
    {
        var trip = Solved(20, charge, speed);

        trip.Answers.Should().OnlyContain(answer => answer.IsFound && answer.Looks > 2 && answer.Looks <= most);
    }

    [Fact]
    public void A_look_carries_out_only_what_the_fact_comes_to()
    {
        // The speed of the last leg moves nothing of the legs before it, however many they are.
        var (few, many) = (Carried(5), Carried(50));

        few.Should().BeGreaterThan(0);
        many.Should().Be(few);

        static int Carried(int legs)
        {
            var trip = Solved(legs, "95 %", "80 km/h", "? most energy-left within 60 km/h .. 100 km/h");
            var answer = trip.Answers.Single();
            answer.IsFound.Should().BeTrue();
            answer.Unknown.Result.Compute(trip.Here(answer.Subject!)!);
            return trip.CarriedOut;
        }
    }

    private static TripStudy Solved(int legs, string charge, string first, string last = "80 km/h")
    {
        var text = $$"""
            vehicle van
                mass 2400 kg
                rolling 0.010
                drag-area 0.8 m²
                aboard nothing
                electric
                    usable-energy 80 kWh
                    motor-power 150 kW
                    auxiliary 1 kW
                    charge-point 10 % 120 kW
                    charge-point 100 % 10 kW

            rig solo
                vehicle van
                speed 85 km/h

            trip out
                rig solo
                start home
                start-charge {{charge}}

            """ + string.Concat(Enumerable.Range(0, legs).Select(leg => FormattableString.Invariant(
                $"    leg place{leg}\n        distance {200.0 / legs:F1} km\n        climb 10 m\n        descent 10 m\n        speed {(leg == 0 ? first : leg == legs - 1 ? last : "80 km/h")}\n")));
        var analysis = Study.Of(text);
        return (TripStudy)Solver.Solve(analysis.Trip(analysis.Workspace.Find(Study.File, DeclarationKind.Trip, "out")!)!);
    }
}
