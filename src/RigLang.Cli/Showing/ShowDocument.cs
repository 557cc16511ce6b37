using System.Collections.Immutable;
using RigLang.Cli.Json;

namespace RigLang.Cli.Showing;

/// <summary>What <c>show --json</c> writes.</summary>
/// <param name="Format">Always <c>riglang-show</c>.</param>
/// <param name="Version">Of the format; 1.</param>
/// <param name="Riglang">The program's version.</param>
internal sealed record ShowDocument(string Format, int Version, string Riglang, ImmutableArray<SubjectJson> Subjects);

/// <summary>A rig, trip or weighing.</summary>
internal sealed record SubjectJson(string Kind, string Name, string? Title, PlaceJson Place, ImmutableArray<LimitJson> Limits, ImmutableArray<ResultJson> Results)
{
    /// <summary>What came of the lines that ask for a value; absent where none does.</summary>
    public ImmutableArray<AnswerJson>? Answers { get; init; }
}

/// <summary>A line that asks for a value with <c>?</c> and a goal, and what was found.</summary>
/// <param name="Fact">What is asked for, <c>trip.leg.speed</c>.</param>
/// <param name="Place">The question.</param>
/// <param name="Wish">What shall come of it, as written: <c>energy-left = 30 %</c>.</param>
/// <param name="Of">Whose result is wished for.</param>
/// <param name="Outcome"><c>found</c>, <c>out-of-reach</c>, <c>no-effect</c>, <c>not-computed</c> or <c>refused</c>.</param>
/// <param name="Value">SI; the value found, or the one that comes nearest.</param>
/// <param name="Others">SI; other values that meet the wish.</param>
/// <param name="Reached">SI; the result with the value.</param>
/// <param name="Words">In words.</param>
internal sealed record AnswerJson(string Fact, PlaceJson? Place, string Wish, string? Of, string Outcome, double? Value, ImmutableArray<double> Others, double? Reached, string Words);

/// <summary>A limit with what is on it; <c>room</c> and <c>use</c> are absent where load or limit is unknown.</summary>
/// <param name="Title">What is limited, in words.</param>
/// <param name="Load">The result that is limited.</param>
/// <param name="Of">Whose result.</param>
/// <param name="LimitFact">The fact that limits, <c>vehicle.gross-rating</c>.</param>
/// <param name="Limit">SI.</param>
/// <param name="Room">SI; negative when over.</param>
/// <param name="Use">Load as a share of the limit.</param>
/// <param name="Unit">Of limit and room, in base units.</param>
/// <param name="Estimated">Whether an estimate went into load or limit.</param>
internal sealed record LimitJson(string Title, string Load, string Of, string LimitFact, double? Limit, double? Room, double? Use, string Unit, bool Estimated);

/// <summary>A result. <c>value</c> is absent when it can't be computed, and <c>needs</c> says for want of what.</summary>
/// <param name="Name">Stable.</param>
/// <param name="Of">Whose result: <c>rig coast</c>, <c>vehicle axle rear</c>.</param>
/// <param name="Title">In words.</param>
/// <param name="Quantity">The kind of quantity: <c>mass</c>.</param>
/// <param name="Value">SI.</param>
/// <param name="Unit">Of the value, in base units; 1 for a share.</param>
/// <param name="HalfWidth">SI; holds the truth 19 times out of 20, by what is uncertain of the facts. Absent where nothing is.</param>
/// <param name="Shown">As the program shows it.</param>
/// <param name="Estimated">Whether an estimate went into it.</param>
/// <param name="Needs">The first fact missing.</param>
/// <param name="Facts">The facts that went into it.</param>
internal sealed record ResultJson(
    string Name, string Of, string Title, string Quantity, double? Value, double? HalfWidth, string Unit, string? Shown, bool Estimated, NeedJson? Needs, ImmutableArray<FactJson> Facts,
    ImmutableArray<DoubtJson>? Doubt);

/// <summary>What an uncertain fact does to a result, SI: by how much the result moves at the upper end of the fact's half-width.</summary>
internal sealed record DoubtJson(string Fact, string Words, PlaceJson? Place, double HalfWidth, double Effect);

/// <summary>A fact that is missing: its full name, and the words that a person is told.</summary>
internal sealed record NeedJson(string Fact, string Words);

/// <summary>A fact that went into a result.</summary>
/// <param name="Fact"><c>vehicle.axle.carries</c>.</param>
/// <param name="Origin">written, default, practice, estimate, stand-in, absent or missing.</param>
/// <param name="Place">Where it is written; absent where nothing is.</param>
/// <param name="Text">The line.</param>
/// <param name="Value">SI, where it is a single quantity.</param>
internal sealed record FactJson(string Fact, string Origin, PlaceJson? Place, string? Text, double? Value);
