using RigLang.Analysis.Checks.Trips;
using RigLang.Analysis.Solving;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Linking;
using RigLang.Quantities;
using RigLang.Syntax.Checks;
using RigLang.Syntax.Tree;

namespace RigLang.Analysis.Checks.Questions;

/// <summary>The range behind <c>within</c> is none in which the fact can be looked for.</summary>
public sealed class QuestionRange : DeclarationCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL916",
        Slug = "question-range",
        Severity = Severity.Error,
        Summary = "The range behind `within` runs backwards, isn't one of what is asked for, or lacks where a currency has to be said.",
        Why = "`within` says where to look for the fact, not for the result.",
        Bad = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg coast
                    distance 190 km
                    speed ? for energy-left = 55 % within 20 % .. 80 %
                    climb 0 m
            """),
        Good = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg coast
                    distance 190 km
                    speed ? for energy-left = 55 % within 60 km/h .. 100 km/h
                    climb 0 m
            """),
        Fix = "Write the lower value first, both in a unit of the fact.",
        CanBeAllowed = false,
    };

    public override IEnumerable<Finding> Run(Declaration declaration)
    {
        foreach (var block in declaration.Block.WithInner())
        {
            foreach (var line in block.Facts.Where(line => line.Place.Declaration == declaration.Own.Syntax))
            {
                foreach (var role in Unknown.Questions(line).Where(role => ((QueryValue)line.Values[role]).Query.Within is null && FactRef.Of(block, line, role).Kind?.Metric.Currency is not null))
                {
                    yield return Report(line.PlaceOf(role), $"In which currency? Say it with a range to look in, for instance `within 0.20 EUR/kWh .. 1.00 EUR/kWh`; `{line.Declaration.Keyword}` isn't looked for without.");
                }

                foreach (var (role, range) in RangesOf(line))
                {
                    if (Wrong(line, FactRef.Of(block, line, role), range) is { } finding)
                    {
                        yield return finding;
                    }
                }
            }
        }
    }

    private static IEnumerable<(string Role, RangeSyntax Range)> RangesOf(Fact line) =>
        from pair in line.Values
        let range = (pair.Value as QueryValue)?.Query.Within
        where range is { High: not null }
        select (pair.Key, range);

    private Finding? Wrong(Fact line, FactRef fact, RangeSyntax range)
    {
        if (fact.Kind is not { } kind || Unknown.RangeOf(range, kind) is not null)
        {
            return null;
        }

        var place = line.Place with { Span = range.Span };
        var (low, high) = (SlotReading.Reading(range.Low, kind), SlotReading.Reading(range.High!, kind));
        if (low.Measure is { } from && high.Measure is { } to)
        {
            return Report(place, $"The range runs backwards: {to.Text} isn't more than {from.Text}.") with { Fixes = [new Fix($"Write `{to.Text} .. {from.Text}`", place, $"{to.Text} .. {from.Text}")] };
        }

        var problem = low.Problems.Concat(high.Problems).FirstOrDefault(found => found.IsError)?.Message;
        return Report(place, $"`within` says where to look for `{line.Declaration.Keyword}`, which is of the kind {kind.Name}, for instance {Words(kind)}{(problem is null ? "" : $": {problem}")}.");
    }

    private static string Words(QuantityKind kind)
    {
        var unit = kind.ExampleUnits is [var first, ..] ? first : kind.Metric;
        return $"`within {QuantityWriter.Write(unit.ToSi(20), unit, 0)} .. {QuantityWriter.Write(unit.ToSi(80), unit, 0)}`";
    }
}
