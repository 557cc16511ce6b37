namespace RigLang.Quantities;

/// <summary>Reads what stands behind ±: a quantity, or a share of the value.</summary>
internal static class HalfWidthReader
{
    /// <summary>In SI; zero where there is a problem.</summary>
    public static double Read(IReadOnlyList<QuantityPart> written, double value, IReadOnlyList<ReadTerm> terms, PartReader problems)
    {
        var kind = problems.Kind!;
        var unit = terms[0].Units[^1];
        var whole = new QuantityPlace(QuantityPlace.HalfWidth, 0, QuantitySpot.Whole);
        if (written.Count == 0)
            return Fail(whole, "behind ± stands a quantity or a percentage");
        if (kind.IsCount)
            return Fail(whole, "a count is exact and has no ±");

        var isShare = written is [{ Unit: "%" or "‰" }];
        if (isShare && kind.PercentIsPoints && unit == Units.One)
            return TwoMeanings(written[0], value, problems);
        if (isShare && !kind.PercentIsPoints)
            return Share(written[0], value, kind, problems);
        if (kind.PercentIsPoints && unit != Units.One && written is [{ Unit: null } bare] && !bare.Number.StartsWith("1:", StringComparison.Ordinal))
        {
            var place = whole with { Spot = QuantitySpot.Part };
            problems.Error(QuantityProblemKind.HalfWidth, place, $"the value has a unit and ± {bare.Number} has none", new QuantityFix(place, QuantityWriter.Join(bare.Number, unit == Units.SlopeOneIn ? "%" : unit.Symbol)));
            return 0;
        }

        var term = new QuantityTerm(false, null, [new("", unit == Units.One || unit == Units.SlopeOneIn ? null : unit.Symbol)]);
        if (problems.ReadParts(written, QuantityPlace.HalfWidth, [term]) is not { } parts
            || !MeasureRules.CheckCompound(parts, written, QuantityPlace.HalfWidth, problems))
            return 0;
        if (HasSign(written[0].Number))
            return Fail(whole with { Spot = QuantitySpot.Number }, "behind ± stands a number without a sign");
        if (parts[0].Unit == Units.SlopeOneIn)
            return Fail(whole, "a half-width is not written 1:n: write it in % or °");
        if (parts[0].Unit.Currency != unit.Currency)
            return Fail(whole with { Spot = QuantitySpot.Unit }, $"the half-width is in {parts[0].Unit.Currency}, the value in {unit.Currency}: money is never converted");
        var half = parts.Count == 1 ? parts[0].Unit.HalfWidthToSi(parts[0].Number, value) : MeasureRules.CompoundValue(parts, written);
        return double.IsFinite(half) ? half : Fail(whole, "this is more than can be reckoned with");

        double Fail(QuantityPlace place, string message)
        {
            problems.Error(QuantityProblemKind.HalfWidth, place, message);
            return 0;
        }
    }

    private static double Share(QuantityPart written, double value, QuantityKind kind, PartReader problems)
    {
        var place = new QuantityPlace(QuantityPlace.HalfWidth, 0, QuantitySpot.Part);
        if (kind.IsTemperature)
        {
            problems.Error(QuantityProblemKind.HalfWidth, place, "a percentage of a temperature means nothing: write ± in °C, °F or K");
            return 0;
        }

        return ReadShare(written, problems) is { } share ? Math.Abs(value) * share : 0;
    }

    // "0.0095 ± 5 %": five points would be five times the value and more; a share would be 0.0005.
    private static double TwoMeanings(QuantityPart written, double value, PartReader problems)
    {
        var place = new QuantityPlace(QuantityPlace.HalfWidth, 0, QuantitySpot.Part);
        if (ReadShare(written, problems) is not { } share)
            return 0;
        var (points, part) = (Digits(share), Digits(share * Math.Abs(value)));
        problems.Error(
            QuantityProblemKind.HalfWidth,
            place,
            $"the value is a bare number, so ± {written.Number} {written.Unit} can mean ± {points} or ± {part}: write which",
            new QuantityFix(place, part),
            new QuantityFix(place, points));
        return 0;
    }

    private static double? ReadShare(QuantityPart written, PartReader problems)
    {
        var place = new QuantityPlace(QuantityPlace.HalfWidth, 0, QuantitySpot.Number);
        if (!NumberReader.TryRead(written.Number, out var number, out var form, out var problem) || form.Shape != NumberShape.Decimal || HasSign(written.Number))
        {
            problems.Add(new(QuantityProblemKind.HalfWidth, place, true, problem?.Message ?? "behind ± stands a number without a sign", [.. (problem?.Suggestions ?? []).Select(s => new QuantityFix(place, s))])
            {
                Number = problem,
            });
            return null;
        }

        if (problem is not null)
            problems.Add(new(QuantityProblemKind.Number, place, false, problem.Message, [.. problem.Suggestions.Select(s => new QuantityFix(place, s))]) { Number = problem });
        return number * (written.Unit == "‰" ? Units.PerMille : Units.Percent).Factor;
    }

    private static string Digits(double number) => DecimalText.Round(number, QuantityWriter.DecimalsFor(number, 3), trimmed: true);

    private static bool HasSign(string number) => number.AsSpan().IndexOfAny('-', '+', '−') == 0;
}
