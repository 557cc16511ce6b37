using System.Collections.Immutable;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Planning;

/// <summary>A leg of the fastest plan, with what is done where it ends. Times count in s from the departure.</summary>
/// <param name="Speed">Chosen for the leg, m/s; where a section or the drive allows less, that is driven.</param>
/// <param name="HeldBy">The cap at which it is driven; null where the plan chose to go slower.</param>
/// <param name="Leaves">When it is begun.</param>
/// <param name="Driving">s, delays included.</param>
/// <param name="Left">State of charge on arrival.</param>
/// <param name="Charging">Null where nothing is charged.</param>
public sealed record PlanRow(LegSubject Leg, double Speed, SpeedCap? HeldBy, double Leaves, double Driving, double Left, PlanCharge? Charging)
{
    public double Arrives => Leaves + Driving;

    /// <summary>By the clock in force on the way; null where the trip says no departure.</summary>
    public Moment? LeavesAt => Clock.At(Leg, Leaves, onArrival: true);

    public Moment? ArrivesAt => Clock.At(Leg, Arrives, onArrival: true);
}

/// <summary>What is charged at a stop.</summary>
/// <param name="Post">Which post, as the file has it: "150 kW dc".</param>
/// <param name="From">When the power comes on, s from the departure.</param>
/// <param name="To">When it goes off.</param>
/// <param name="Charge">State of charge then.</param>
/// <param name="Energy">Into the battery, J.</param>
public sealed record PlanCharge(string Post, double From, double To, double Charge, double Energy);

/// <summary>The fastest plan of a trip leg by leg.</summary>
public static class PlanTable
{
    /// <summary>Empty where there is no plan; the result <c>fastest-time</c> says why then.</summary>
    public static ImmutableArray<PlanRow> Of(TripStudy trip)
    {
        var node = trip.Compute(Planning.Of, trip);
        if (node is not { Applies: true, Missing: null, Refusal: null, Value: { Day: { Outcome: PlanOutcome.Found } day } plan })
        {
            return [];
        }

        var capacity = trip.Compute(Planning.Capacity, trip).Value;
        return [.. trip.Legs.Select((leg, index) => Row(leg, day.Legs[index], plan.Posts[index], capacity))];
    }

    /// <summary>State of charge at the start.</summary>
    public static Computation<TripStudy, double> StartCharge { get; } = new("charge at the start", Charge.First);

    /// <summary>Driving on each calendar day of the plan; empty without a departure.</summary>
    public static ImmutableArray<DayDriving> DaysOf(IEnumerable<PlanRow> plan) => Days.Split(plan.Select(row => (row.LeavesAt, row.Driving)));

    /// <summary>The first fact for want of which nobody knows up to which speed the rig is steady; null where it is known, or the rig has no trailer.</summary>
    public static MissingFact? MissingForSteadiness(TripStudy trip) => trip.Rig.Compute(SteadySpeed.Of, trip.Rig) is { Applies: true, Missing: { } missing } ? missing : null;

    private static PlanRow Row(LegSubject leg, PlannedLeg planned, ImmutableArray<string> posts, double capacity)
    {
        var caps = leg.Trip.Compute(SpeedCaps.OfLeg, leg).Value;
        var charging = planned.Charging is { } charge
            ? new PlanCharge(posts[charge.Post], charge.From, charge.To, planned.DepartureCharge, (planned.DepartureCharge - planned.ArrivalCharge) * capacity)
            : null;
        return new PlanRow(leg, planned.Choice.Speed, caps[0].Speed == planned.Choice.Speed ? caps[0] : null, planned.Leave, planned.Choice.Time, planned.ArrivalCharge, charging);
    }
}
