using System.Collections.Immutable;
using RigLang.Mechanics;

namespace RigLang.Analysis.Results.Planning;

/// <summary>The fastest way to do a trip.</summary>
/// <param name="Day">Leg by leg, or what breaks it.</param>
/// <param name="Posts">Of each leg's stop, in the order in which the plan numbers them, as a table names them: "150 kW dc".</param>
internal sealed record TripPlan(DayPlan Day, ImmutableArray<ImmutableArray<string>> Posts);
