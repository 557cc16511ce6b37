using RigLang.Analysis.Results;
using RigLang.Analysis.Solving;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Linking;
using RigLang.Quantities;
using RigLang.Syntax;
using RigLang.Syntax.Checks;
using RigLang.Syntax.Tree;

namespace RigLang.Analysis.Checks.Expectations;

/// <summary>An <c>expect</c> or <c>limit</c> line, or a question, names no result, or a value that the result can't have.</summary>
public sealed class UnknownResult : DeclarationCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL904",
        Slug = "unknown-result",
        Severity = Severity.Error,
        Summary = "An `expect` or `limit` line, or a `?`, names no result, or gives it a value that it can't have.",
        Why = "A test that nobody carries out looks like one that is met.",
        Bad = """
            practice ours
                limit tongue-share 7 % .. 10 %
            """,
        Good = """
            practice ours
                limit tongue-ratio 7 % .. 10 %
            """,
        Fix = "Write the result's name as the reference page has it, and the value in one of its units.",
        CanBeAllowed = false,
    };

    public override IEnumerable<Finding> Run(Declaration declaration)
    {
        foreach (var (line, query) in declaration.Block.WithInner().SelectMany(block => block.Facts).SelectMany(line => Unknown.Questions(line).Select(role => (line, ((QueryValue)line.Values[role]).Query))))
        {
            if (line.Place.Declaration == declaration.Own.Syntax && Wrong(line, query) is { } finding)
            {
                yield return finding;
            }
        }

        foreach (var line in declaration.Block.WithInner().SelectMany(block => block.All(EverywhereFacts.Expect).Concat(block.All(PracticeFacts.Limit))))
        {
            // Inherited lines are looked at where they are written.
            if (line.Place.Declaration == declaration.Own.Syntax && line.WordOf("result") is { } name && Wrong(line, name) is { } finding)
            {
                yield return finding;
            }
        }
    }

    private Finding? Wrong(Fact line, QuerySyntax query) =>
        Wrong(line, query.Result!.Value.Text, line.Place with { Span = query.Result!.Value.Span }, [query.Target], "nothing is looked for") ?? (query.At is { } at ? WrongSpeed(line, at, "nothing is looked for") : null);

    private Finding? Wrong(Fact line, string name)
    {
        MeasureSyntax?[] measures = (line.Values.GetValueOrDefault("bound") as RawValue)?.Argument switch
        {
            RangeSyntax range => [range.Low, range.High],
            BoundSyntax bound => [bound.Measure],
            _ => [],
        };
        // Read past, it would be judged at the rig's own speed.
        return Wrong(line, name, line.PlaceOf("result"), measures, "nothing is tested") ?? Uneven(line) ?? Backward(line)
            ?? (line.Values.GetValueOrDefault("at") is RawValue { Argument: var at } ? WrongSpeed(line, at, "nothing is tested") : null);
    }

    private Finding? Wrong(Fact line, string name, Place place, MeasureSyntax?[] measures, string soWhat)
    {
        if (Catalogue.FindResult(name) is not { } result)
        {
            var near = Spelling.Nearest(name, Catalogue.Results.Select(known => known.Name));
            return near is null
                ? Report(place, $"No result is called `{name}`, so {soWhat} here.")
                : Report(place, $"No result is called `{name}`, so {soWhat} here. Did you mean `{near}`?") with { Fixes = [new Fix($"Write `{near}`", place, near)] };
        }

        foreach (var measure in measures.OfType<MeasureSyntax>())
        {
            var reading = SlotReading.Reading(measure, result.Kind);
            if (reading.Measure is null)
            {
                var problem = reading.Problems.FirstOrDefault(found => found.IsError);
                return Report(line.Place with { Span = measure.Span }, $"`{name}` is of the kind {result.Kind.Name}, for instance {Example(result.Kind)}; so {soWhat} here{(problem is null ? "" : $": {problem.Message}")}.");
            }
        }

        return null;
    }

    private Finding? WrongSpeed(Fact line, ArgumentSyntax at, string soWhat) => at is MeasureSyntax speed && SlotReading.Measure(speed, QuantityKinds.Speed) is not null
        ? null
        : Report(line.Place with { Span = at.Span }, $"Behind `at` stands a speed, for instance {Example(QuantityKinds.Speed)}; so {soWhat} here.");

    /// <summary>A bare number is a ratio by itself: in `7 .. 10 %` it would be seven times the whole.</summary>
    private Finding? Uneven(Fact line)
    {
        if ((line.Values.GetValueOrDefault("bound") as RawValue)?.Argument is not RangeSyntax
            { Low: { Terms: [{ Quantity.Parts: [.., { Unit: null }] }] } low, High: { Terms: [{ Quantity.Parts: [.., { Unit: { } unit }] }] } high })
        {
            return null;
        }

        var (place, number) = (line.PlaceOf("bound") with { Span = low.Span }, TextOf(line, low));
        return Report(place, $"`{number}` has no unit and `{TextOf(line, high)}` has one, so nothing is tested here. Write `{number} {unit.Text}`.") with
        {
            Fixes = [new Fix($"Write `{number} {unit.Text}`", place, $"{number} {unit.Text}")],
        };
    }

    /// <summary>From high to low, nothing can lie in a range.</summary>
    private Finding? Backward(Fact line)
    {
        if (line.WordOf("result") is not { } name || Catalogue.FindResult(name) is not { } result
            || (line.Values.GetValueOrDefault("bound") as RawValue)?.Argument is not RangeSyntax { Low: { } low, High: { } high}
            || !(SlotReading.Measure(low, result.Kind)?.Value > SlotReading.Measure(high, result.Kind)?.Value))
        {
            return null;
        }

        var (from, to) = (TextOf(line, low), TextOf(line, high));
        var backward = line.PlaceOf("bound");
        return Report(backward, $"`{from} .. {to}` runs from high to low, so nothing can lie in it. Write `{to} .. {from}`.") with { Fixes = [new Fix($"Write `{to} .. {from}`", backward, $"{to} .. {from}")] };
    }

    private static string TextOf(Fact line, MeasureSyntax measure) => (line.Place with { Span = measure.Span }).Text;

    private static string Example(QuantityKind kind)
    {
        var unit = kind.ExampleUnits is [var first, ..] ? first : kind.Metric;
        return QuantityWriter.Write(unit.ToSi(20), unit, 0);
    }
}
