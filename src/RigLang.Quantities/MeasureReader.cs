using System.Text;

namespace RigLang.Quantities;

/// <summary>Reads a measure: a sum of products of quantities, with or without a half-width.</summary>
public static class MeasureReader
{
    /// <summary>Reads a measure of one kind.</summary>
    /// <param name="sum">The terms in order.</param>
    /// <param name="halfWidth">What stands behind ±, or null.</param>
    /// <param name="kind">What is to be measured.</param>
    public static MeasureReading Read(IReadOnlyList<QuantityTerm> sum, IReadOnlyList<QuantityPart>? halfWidth, QuantityKind kind) =>
        Read(sum, halfWidth, [kind]);

    /// <summary>Reads a measure of any of several kinds ("60 %" or "32 L"): the first kind that takes the first unit is meant.</summary>
    public static MeasureReading Read(IReadOnlyList<QuantityTerm> sum, IReadOnlyList<QuantityPart>? halfWidth, IReadOnlyList<QuantityKind> kinds)
    {
        var parts = new PartReader(kinds);
        if (sum.Count == 0 || sum.Any(term => term.Parts.Count == 0) || kinds.Count == 0)
            parts.Error(QuantityProblemKind.NoValue, new(0, 0, QuantitySpot.Whole), "a quantity is missing");
        var terms = new List<ReadTerm>();
        for (var index = 0; index < sum.Count && !parts.Failed; index++)
        {
            if (parts.ReadTerm(sum, index) is { } term)
                terms.Add(term);
        }

        if (parts.Failed || terms.Count != sum.Count)
            return new(null, parts.Problems);
        var kind = parts.Kind!;
        MeasureRules.CheckSum(terms, kind, parts);
        var value = terms.Count == 1 ? terms[0].Value : terms.Sum(term => term.Value);
        MeasureRules.CheckValue(value, terms[0], kind, parts);
        var half = halfWidth is null || parts.Failed ? 0 : HalfWidthReader.Read(halfWidth, value, terms, parts);
        return new(parts.Failed ? null : Finish(sum, halfWidth, terms, kind, value, half), parts.Problems);
    }

    private static Measure Finish(
        IReadOnlyList<QuantityTerm> sum, IReadOnlyList<QuantityPart>? halfWidth, List<ReadTerm> terms, QuantityKind kind, double value, double half)
    {
        var units = terms[0].Units;
        var decimals = terms.Where(term => term.Units[^1] == units[^1]).Max(term => term.Decimals);
        return new(kind, value, half, units, decimals, Text(sum, halfWidth));
    }

    private static string Text(IReadOnlyList<QuantityTerm> sum, IReadOnlyList<QuantityPart>? halfWidth)
    {
        var text = new StringBuilder();
        for (var index = 0; index < sum.Count; index++)
        {
            text.Append(sum[index].Negative ? index == 0 ? "-" : " - " : index == 0 ? "" : " + ");
            if (sum[index].Count is { } count)
                text.Append(count).Append(" x ");
            Append(text, sum[index].Parts);
        }

        if (halfWidth is not null)
            Append(text.Append(" ± "), halfWidth);
        return text.ToString();
    }

    private static void Append(StringBuilder text, IReadOnlyList<QuantityPart> parts)
    {
        for (var index = 0; index < parts.Count; index++)
            text.Append(index == 0 ? "" : " ").Append(QuantityWriter.Join(parts[index].Number.Replace('−', '-'), parts[index].Unit ?? ""));
    }
}
