using RigLang.Analysis.Ranking;
using RigLang.Analysis.Results;
using RigLang.Analysis.Tracking;
using RigLang.Model.Declaring;
using RigLang.Quantities;

namespace RigLang.Editing.Reasons;

/// <summary>A step and what it does, in words.</summary>
public static class MoveWords
{
    /// <summary>"item bicycles of … 0.5 m forward".</summary>
    public static string Step(Move move, UnitChoice units)
    {
        var fact = move.Fact.Fact;
        var title = (fact.Line?.Title ?? fact.Fact.Keyword) + BlockOf(fact);
        var size = units.Write(Math.Abs(move.Step), move.Fact.Kind);
        var way = (fact.Role, move.Step > 0, move.Fact.Kind == QuantityKinds.Speed) switch
        {
            ("place", true, _) => "rearward",
            ("place", false, _) => "forward",
            (_, true, true) => "faster",
            (_, false, true) => "slower",
            (_, true, _) => "more",
            _ => "less",
        };
        return $"{title}: {Trimmed(size)} {way}";
    }

    /// <summary>By how much the result is more or less then: "+1.3 %".</summary>
    public static string Effect(Move move, IResult result, ISubject subject, double now, UnitChoice units) =>
        units.WriteDifference(result, subject, now, now + move.Difference, now);

    /// <summary>Of a load the load alone: on which of both an item stands is told by its own name.</summary>
    private static string BlockOf(FactRef fact) =>
        BlockWords.Of(fact.Block.Declaration.Kind == DeclarationKind.Load ? fact.Block.Outer ?? fact.Block : fact.Block) is { Length: > 0 } owner ? $" of {owner}" : "";

    /// <summary>A step is a round figure: "0.5 m", not "0.500 m".</summary>
    private static string Trimmed(string size)
    {
        var parts = size.Split(' ', 2);
        var number = parts[0].Contains('.', StringComparison.Ordinal) ? parts[0].TrimEnd('0').TrimEnd('.') : parts[0];
        return parts.Length > 1 ? $"{number} {parts[1]}" : number;
    }
}
