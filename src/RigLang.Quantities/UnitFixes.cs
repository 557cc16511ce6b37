namespace RigLang.Quantities;

/// <summary>Turns a unit's problem into a measure's: with the figure converted where the number must change with the unit.</summary>
internal static class UnitFixes
{
    private const int LeastSignificant = 4;
    private const int MostFigures = 3;

    public static QuantityProblem For(UnitProblem problem, QuantityPart part, (double Value, NumberForm Form) number, QuantityPlace place, QuantityKind? kind)
    {
        var whole = place with { Spot = QuantitySpot.Part };
        var (message, fixes) = problem.Kind switch
        {
            UnitProblemKind.MassForForce when problem.Read?.Dimension == Dimension.Mass => Weighed(Units.KilogramForce.Factor, "weighs"),
            UnitProblemKind.ForceForMass => Weighed(1 / Units.KilogramForce.Factor, "is the weight of"),
            UnitProblemKind.WrongDimension when kind == QuantityKinds.Acceleration && problem.Read == Units.Gram => Weighed(1000 * Units.KilogramForce.Factor, "(of gravity) is"),
            UnitProblemKind.NotWanted when problem.Read is { } unit && unit.Dimension.IsNone && kind is { IsCount: false } =>
                (problem.Message, [new(whole, Figure(unit.ToSi(number.Value), number.Form.SignificantDigits))]),
            UnitProblemKind.NotWanted => (problem.Message, [new(whole, part.Number)]),
            UnitProblemKind.WrongDimension when problem.IsOffer => (problem.Message, []),
            _ => (problem.Message, problem.Suggestions.Select(s => new QuantityFix(place, s)).ToArray()),
        };
        return new(QuantityProblemKind.Unit, place, true, message, fixes) { Unit = problem };

        (string Message, QuantityFix[] Fixes) Weighed(double perUnit, string verb)
        {
            var si = problem.Read!.ToSi(number.Value) * perUnit;
            // 9 kg is 88.26 N rather than 0.08826 kN.
            var units = problem.Suggestions.Select(UnitTable.Find).OfType<Unit>().OrderBy(unit => Math.Abs(unit.FromSi(si)) is >= 1 and < 1000 ? 0 : 1).ToArray();
            var figures = units.Take(MostFigures)
                .Select(unit => QuantityWriter.Join(Figure(unit.FromSi(si), number.Form.SignificantDigits), unit.Symbol)).ToArray();
            return figures.Length == 0
                ? (problem.Message, [])
                : ($"{problem.Message}; {QuantityWriter.Join(part.Number, part.Unit!)} {verb} {figures[0]}", [.. figures.Select(figure => new QuantityFix(whole, figure))]);
        }
    }

    // A converted limit keeps the digits that were written, and never fewer than four: it is going to be compared with.
    private static string Figure(double number, int significant) =>
        DecimalText.Round(number, QuantityWriter.DecimalsFor(number, Math.Max(significant, LeastSignificant)), trimmed: true);
}
