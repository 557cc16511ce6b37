namespace RigLang.Quantities;

/// <summary>Reads the numbers and units of one measure and gathers what is wrong with them.</summary>
internal sealed class PartReader(IReadOnlyList<QuantityKind> kinds)
{
    private readonly List<QuantityProblem> _problems = [];
    private QuantityKind[] _kinds = [.. kinds];

    public IReadOnlyList<QuantityProblem> Problems => _problems;

    public bool Failed { get; private set; }

    /// <summary>The one kind, once the first unit has told which is meant.</summary>
    public QuantityKind? Kind => _kinds.Length > 0 ? _kinds[0] : null;

    public void Add(QuantityProblem problem)
    {
        _problems.Add(problem);
        Failed |= problem.IsError;
    }

    public void Error(QuantityProblemKind kind, QuantityPlace place, string message, params QuantityFix[] fixes) =>
        Add(new(kind, place, true, message, fixes));

    public ReadTerm? ReadTerm(IReadOnlyList<QuantityTerm> sum, int index)
    {
        var term = sum[index];
        var count = ReadCount(term.Count, index);
        var parts = ReadParts(term.Parts, index, sum);
        if (count is null || parts is null || !MeasureRules.CheckCompound(parts, term.Parts, index, this))
            return null;
        var size = parts.Count == 1 ? parts[0].Unit.ToSi(parts[0].Number) : MeasureRules.CompoundValue(parts, term.Parts);
        return new((term.Negative ? -1 : 1) * count.Value * size, [.. parts.Select(part => part.Unit)], parts[^1].Form.Decimals, term.Count is not null);
    }

    public IReadOnlyList<ReadPart>? ReadParts(IReadOnlyList<QuantityPart> written, int term, IReadOnlyList<QuantityTerm> sum)
    {
        var parts = new List<ReadPart>();
        for (var index = 0; index < written.Count; index++)
        {
            if (ReadNumber(written[index].Number, new(term, index, QuantitySpot.Number)) is not { } number)
                return null;
            var place = new QuantityPlace(term, index, QuantitySpot.Unit);
            var unit = written[index].Unit is { } text ? ReadUnit(text, written[index], number, place) : BareUnit(written[index], number, place, sum);
            if (unit is null)
                return null;
            // "1:16" is written by its run; its number in the unit 1:n is that run.
            parts.Add(new(unit == Units.SlopeOneIn ? 1 / number.Value : number.Value, number.Form, unit));
        }

        return parts;
    }

    private double? ReadCount(string? text, int term)
    {
        if (text is null)
            return 1;
        var place = new QuantityPlace(term, 0, QuantitySpot.Count);
        if (ReadNumber(text, place) is not { } count)
            return null;
        if (count.Value >= 0 && count.Value == Math.Floor(count.Value) && count.Form.Shape == NumberShape.Decimal)
            return count.Value;
        Error(QuantityProblemKind.NotACount, place, $"before x stands a whole number, not {UnitAdvice.Quoted(text)}");
        return null;
    }

    private (double Value, NumberForm Form)? ReadNumber(string text, QuantityPlace place)
    {
        var read = NumberReader.TryRead(text, out var value, out var form, out var problem);
        if (problem is not null)
        {
            Add(new(QuantityProblemKind.Number, place, problem.IsError, problem.Message, [.. problem.Suggestions.Select(s => new QuantityFix(place, s))])
            {
                Number = problem,
            });
        }

        return read ? (value, form) : null;
    }

    private Unit? BareUnit(QuantityPart part, (double Value, NumberForm Form) number, QuantityPlace place, IReadOnlyList<QuantityTerm> sum)
    {
        if (number.Form.Shape == NumberShape.Slope)
        {
            if (Choose(kind => kind.IsSlope))
                return Units.SlopeOneIn;
            Error(QuantityProblemKind.NumberForm, place with { Spot = QuantitySpot.Number }, $"{UnitAdvice.Quoted(part.Number)} is a slope, and {Kind?.Name} is wanted");
            return null;
        }

        // Of several kinds the unit tells which is meant, so there must be one.
        if (number.Form.Shape == NumberShape.Decimal && _kinds is [{ AllowsBare: true }])
            return Units.One;
        var problem = UnitAdvice.Explain("", null, _kinds);
        var offered = sum.SelectMany(term => term.Parts).Select(other => other.Unit).OfType<string>()
            .Where(unit => UnitTable.TryRead(unit, _kinds, out _, out _, out _))
            .Concat(problem.Suggestions).Distinct();
        var spot = place with { Spot = QuantitySpot.Part };
        Add(new(QuantityProblemKind.Unit, spot, true, problem.Message, [.. offered.Select(unit => new QuantityFix(spot, QuantityWriter.Join(part.Number, unit)))])
        {
            Unit = problem,
        });
        return null;
    }

    private Unit? ReadUnit(string text, QuantityPart part, (double Value, NumberForm Form) number, QuantityPlace place)
    {
        if (!UnitTable.TryRead(text, _kinds, out var unit, out var kind, out var problem))
        {
            Add(UnitFixes.For(problem, part, number, place, Kind));
            return null;
        }

        if (number.Form.Shape == NumberShape.Slope)
        {
            Error(QuantityProblemKind.NumberForm, place, $"{UnitAdvice.Quoted(part.Number)} is a slope and has no unit");
            return null;
        }

        if (number.Form.Shape == NumberShape.Fraction && unit != Units.Inches && unit != Units.Foot)
        {
            var plain = DecimalText.Round(number.Value, 6, trimmed: true);
            var at = place with { Spot = QuantitySpot.Number };
            Error(QuantityProblemKind.NumberForm, at, $"a fraction stands only before in and ft: write {UnitAdvice.Quoted(plain)}", new QuantityFix(at, plain));
            return null;
        }

        Choose(candidate => candidate == kind);
        return unit;
    }

    private bool Choose(Func<QuantityKind, bool> fits)
    {
        if (Array.Find(_kinds, candidate => fits(candidate)) is not { } kind)
            return false;
        if (_kinds.Length > 1)
            _kinds = [kind];
        return true;
    }
}
