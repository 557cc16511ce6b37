namespace RigLang.Quantities;

/// <summary>What makes sense: compounds go from large to small, only multiples are added up, a value is one that can be.</summary>
internal static class MeasureRules
{
    /// <summary>"33 ft 4 in": units of one dimension, each smaller than the one before, whole numbers but for the last.</summary>
    public static bool CheckCompound(IReadOnlyList<ReadPart> parts, IReadOnlyList<QuantityPart> written, int term, PartReader problems)
    {
        for (var index = 1; index < parts.Count; index++)
        {
            var (larger, smaller) = (parts[index - 1], parts[index]);
            var place = new QuantityPlace(term, index, QuantitySpot.Part);
            if (!larger.Unit.IsLinear || !smaller.Unit.IsLinear || smaller.Unit == Units.One)
                problems.Error(QuantityProblemKind.Compound, place, $"{Unit(larger)} and {Unit(smaller)} do not make one quantity together");
            else if (smaller.Unit.Factor >= larger.Unit.Factor)
                problems.Error(QuantityProblemKind.Compound, place, $"a quantity of several units goes from large to small: {Unit(smaller)} is not smaller than {Unit(larger)}; to add, write + between");
            else if (larger.Form.Shape != NumberShape.Decimal || larger.Number != Math.Floor(larger.Number))
                problems.Error(QuantityProblemKind.Compound, place with { Part = index - 1, Spot = QuantitySpot.Number }, $"only the last number of a quantity of several units may have a fraction, not {UnitAdvice.Quoted(written[index - 1].Number)}");
            else if (written[index].Number.AsSpan().IndexOfAny('-', '+', '−') == 0)
                problems.Error(QuantityProblemKind.Compound, place with { Spot = QuantitySpot.Number }, $"a sign stands only before the first number of a quantity of several units, not in {UnitAdvice.Quoted(written[index].Number)}");
            else if (smaller.Number * smaller.Unit.Factor >= larger.Unit.Factor * (1 + Limits.RelativeTolerance) || Limits.Same(smaller.Number * smaller.Unit.Factor, larger.Unit.Factor))
                problems.Add(new(QuantityProblemKind.Compound, place, false, $"{written[index].Number} {smaller.Unit} is as much as 1 {larger.Unit} or more", []));
            else
                continue;
            if (problems.Failed)
                return false;
        }

        return true;

        static string Unit(ReadPart part) => part.Unit == Units.One ? "a bare number" : "`" + part.Unit + "`";
    }

    /// <summary>In SI; the sign of the first number is that of the whole: "-1 h 20 min".</summary>
    public static double CompoundValue(IReadOnlyList<ReadPart> parts, IReadOnlyList<QuantityPart> written)
    {
        var size = parts.Sum(part => Math.Abs(part.Number) * part.Unit.Factor);
        return written[0].Number.AsSpan().IndexOfAny('-', '−') == 0 ? -size : size;
    }

    public static void CheckSum(IReadOnlyList<ReadTerm> terms, QuantityKind kind, PartReader problems)
    {
        if (terms.Count == 1 && !terms[0].HasCount)
            return;
        for (var index = 0; index < terms.Count; index++)
        {
            var unit = terms[index].Units[0];
            var place = new QuantityPlace(index, 0, QuantitySpot.Unit);
            if (kind.IsTemperature)
                problems.Error(QuantityProblemKind.Sum, place, "temperatures are not added up or counted");
            else if (!unit.IsLinear)
                problems.Error(QuantityProblemKind.Sum, place, $"figures in {(unit == Units.SlopeOneIn ? "1:n" : "`" + unit + "`")} are not added up or counted");
            else if (unit.Currency != terms[0].Units[0].Currency)
                problems.Error(QuantityProblemKind.Sum, place, $"{unit.Currency} and {terms[0].Units[0].Currency} are not added up: money is never converted");
            else
                continue;
            return;
        }
    }

    public static void CheckValue(double value, ReadTerm first, QuantityKind kind, PartReader problems)
    {
        if (problems.Failed)
            return;
        var unit = first.Units[0];
        var whole = new QuantityPlace(0, 0, QuantitySpot.Whole);
        if (unit.IsReciprocal && (!double.IsFinite(value) || value <= 0) && unit != Units.SlopeOneIn)
            problems.Error(QuantityProblemKind.NoValue, whole, $"a figure in `{unit}` is more than zero");
        else if (unit.IsTangent && Math.Abs(unit.FromSi(value) - 0) >= 89.9999)
            problems.Error(QuantityProblemKind.NoValue, whole, "a slope is less than 90°");
        else if (!double.IsFinite(value))
            problems.Error(QuantityProblemKind.NoValue, whole, "this is more than can be reckoned with");
        else if (kind.IsTemperature && value < 0)
            problems.Error(QuantityProblemKind.NoValue, whole, "this is colder than can be (-273.15 °C)");
        else if (kind.IsCount && (value < 0 || value != Math.Floor(value)))
            problems.Error(QuantityProblemKind.NotACount, whole, "a count is a whole number, zero or more");
    }
}
