using System.Collections.Immutable;
using RigLang.Analysis.Results;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Quantities;
using RigLang.Syntax.Tree;

namespace RigLang.Analysis.Solving;

/// <summary>A line that asks for the value of a fact by what shall come of it: <c>speed ? for energy-left = 30 % within 60 km/h .. 95 km/h</c>.</summary>
/// <param name="Block">The block that has the line.</param>
/// <param name="Fact">The number asked for.</param>
/// <param name="Result">What is wanted of.</param>
/// <param name="At">SI; the speed for which it is wanted, where the line says one.</param>
/// <param name="Target">The wished value; null where the least or the most is wanted.</param>
/// <param name="Within">The range to look in, as written; null where the line has none.</param>
public sealed record Unknown(Block Block, Fact Line, FactRef Fact, QuerySyntax Query, IResult Result, double? At, Measure? Target, (Measure Low, Measure High)? Within)
{
    public QueryGoal Goal => Query.Goal;

    /// <summary>Where the question stands.</summary>
    public Place Place => Line.Place with { Span = Query.Span };

    /// <summary>"energy-left = 30 %", "least total-time".</summary>
    public string Wish => Goal switch
    {
        QueryGoal.Least => $"least {Result.Name}",
        QueryGoal.Most => $"most {Result.Name}",
        _ => $"{Result.Name}{(Query.At is { } at ? $" at {(Line.Place with { Span = at.Span }).Text}" : "")} = {(Line.Place with { Span = Query.Target!.Span }).Text}",
    };

    /// <summary>The whole declaration that holds the line.</summary>
    public Block Root
    {
        get
        {
            var root = Block;
            while (root.Outer is { } outer)
            {
                root = outer;
            }

            return root;
        }
    }

    /// <summary>"speed", "item stores".</summary>
    public string Name => Line.Title;

    /// <summary>The questions with a goal among a block's own lines, from top to bottom. Those that can't be understood are left out, and reported by a check.</summary>
    public static IEnumerable<Unknown> In(Block block) => block.Facts.SelectMany(line => Questions(line).Select(role => Read(block, line, role)).OfType<Unknown>());

    /// <summary>The slots of a line that hold a question with a goal.</summary>
    internal static IEnumerable<string> Questions(Fact line) =>
        line.Values.Where(pair => pair.Value is QueryValue { Query: { Goal: not QueryGoal.None, Result: not null } }).Select(pair => pair.Key);

    /// <summary>Null when it names no result, or a value or range of another kind.</summary>
    internal static Unknown? Read(Block block, Fact line, string role)
    {
        var query = ((QueryValue)line.Values[role]).Query;
        var fact = line.Declaration.Repeats ? FactRef.Of(block, line, role) : FactRef.Of(block, line.Declaration, role);
        if (Catalogue.FindResult(query.Result!.Value.Text) is not { } result || fact.Kind is not { } kind)
        {
            return null;
        }

        var target = query.Target is { } wished ? SlotReading.Measure(wished, result.Kind) : null;
        var at = query.At is { } where ? SlotReading.Measure(where, QuantityKinds.Speed) : null;
        var within = query.Within is { High: not null } range ? RangeOf(range, kind) : null;
        // Which money, only a range can say.
        var isMoney = kind.Metric.Currency is not null && within is null;
        return isMoney || (query.Goal == QueryGoal.Value && target is null) || (query.At is not null && at is null) || (query.Within is not null && within is null)
            ? null
            : new Unknown(block, line, fact, query, result, at?.Value, target, within);
    }

    /// <summary>Null when it is no range of that kind, or runs backwards.</summary>
    internal static (Measure Low, Measure High)? RangeOf(RangeSyntax range, QuantityKind kind) =>
        SlotReading.Measure(range.Low, kind) is { } low && range.High is { } end && SlotReading.Measure(end, kind) is { } high && low.Value < high.Value ? (low, high) : null;
}
