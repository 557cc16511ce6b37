using System.Collections.Immutable;
using RigLang.Cli.Json;
using RigLang.Cli.Showing;

namespace RigLang.Cli.Planning;

/// <summary>What <c>plan --json</c> writes. Times are s since departure, charges shares of the whole, all else SI.</summary>
/// <param name="Format">Always <c>riglang-plan</c>.</param>
/// <param name="Version">Of the format; 1.</param>
/// <param name="Riglang">The program's version.</param>
internal sealed record PlanDocument(string Format, int Version, string Riglang, ImmutableArray<PlanJsonTrip> Trips);

/// <summary>A trip: its plan, or why there is none.</summary>
/// <param name="Outcome"><c>found</c>, <c>impossible</c>, <c>missing-fact</c> or <c>not-electric</c>.</param>
/// <param name="Time">From start to end.</param>
/// <param name="Written">The same of the trip as written.</param>
/// <param name="Why">What breaks it, in words.</param>
/// <param name="Needs">The first fact missing.</param>
/// <param name="Notes">In words, as the text output has them.</param>
internal sealed record PlanJsonTrip(
    string Name, string? Title, PlaceJson Place, string Outcome, double? Time, double? Written, bool Estimated, string? Why, NeedJson? Needs,
    ImmutableArray<PlanJsonLeg> Legs, ImmutableArray<string> Notes);

/// <summary>A leg with what is charged where it ends.</summary>
/// <param name="To">The leg's name.</param>
/// <param name="Speed">m/s.</param>
/// <param name="HeldBy">What caps it: <c>comfort</c>, <c>limit</c>, <c>law</c>, <c>plate</c>, <c>tyre</c>, <c>steady</c>; absent where the plan chose to go slower.</param>
/// <param name="LeavesAt">By the clock in force, where the trip says when it departs.</param>
internal sealed record PlanJsonLeg(string To, double Speed, string? HeldBy, double Leaves, double Arrives, string? LeavesAt, string? ArrivesAt, double Left, PlanJsonCharge? Charge);

/// <summary>Charging.</summary>
/// <param name="Energy">Into the battery, J.</param>
internal sealed record PlanJsonCharge(string Post, double From, double To, double Charge, double Energy);
