using System.Collections.Immutable;
using RigLang.Cli.Json;

namespace RigLang.Cli.Explaining;

/// <summary>What <c>explain RESULT --of NAME --json</c> writes.</summary>
/// <param name="Format">Always <c>riglang-explain</c>.</param>
/// <param name="Version">Of the format; 1.</param>
internal sealed record WhyDocument(string Format, int Version, string Riglang, ImmutableArray<WhyJson> Results);

/// <summary>One result with all its reasons.</summary>
/// <param name="Of">Whose: <c>rig coast</c>, <c>vehicle axle rear</c>.</param>
/// <param name="Unit">Of all that is said of the result in numbers, in base units.</param>
/// <param name="Steps">The first is the result itself; what several steps rest on stands there once.</param>
/// <param name="HalfWidth">SI; holds the truth 19 times out of 20. Absent where nothing is uncertain.</param>
/// <param name="Doubt">What the half-width comes from, the greatest first.</param>
/// <param name="Moves">What would change the result, the most effective first.</param>
internal sealed record WhyJson(
    string Name, string Of, string Title, double? Value, string Unit, string? Shown, bool Estimated, NeedOfJson? Needs, ImmutableArray<StepJson> Steps, double? HalfWidth,
    ImmutableArray<CauseJson> Doubt, ImmutableArray<MoveJson> Moves);

/// <summary>For want of what there is no value.</summary>
internal sealed record NeedOfJson(string Fact, string Words);

/// <summary>One step of the answer to "why this number?".</summary>
/// <param name="Sort">result, step, written, solved, default, assumed, estimated or missing.</param>
/// <param name="Title">In words: "wheelbase of vehicle van".</param>
/// <param name="Name">The result's or the fact's own name.</param>
/// <param name="Shown">As the program shows it; a fact as its author wrote it.</param>
/// <param name="Value">SI.</param>
/// <param name="Path">The file whose line says it.</param>
/// <param name="Formula">Of a result.</param>
/// <param name="Source">Where the model of a result comes from.</param>
/// <param name="Note">How an estimate is made, who assumes a figure, for what a value was found.</param>
/// <param name="Because">What it was made from; counts in <c>steps</c> from 0.</param>
internal sealed record StepJson(
    string Sort, string Title, string Name, string? Shown, double? Value, string? Path, int? Line, string? Formula, string? Source, string? Note, ImmutableArray<int> Because);

/// <summary>An uncertain fact: its half-width in its own base unit, and by how much the result moves with it.</summary>
internal sealed record CauseJson(string Fact, string Words, bool Estimated, double HalfWidth, double Effect);

/// <summary>One sensible step of one fact, and by how much the result is more then.</summary>
/// <param name="Step">SI, with its sign; of a place, positive is rearward.</param>
/// <param name="StepUnit">Of the step.</param>
/// <param name="Words">"item bicycles of load autumn: 0.5 m forward".</param>
internal sealed record MoveJson(string Fact, string Words, double Step, string StepUnit, double Difference);
