namespace RigLang.Quantities;

/// <summary>Finds what was meant by a spelling that is refused, by another word for a unit, or by capitals in the wrong place, also inside a composed unit.</summary>
internal static class UnitSlips
{
    private const int MostAlternatives = 12;

    /// <summary>The problem with its choices, or null if nothing that would fit is meant by this text.</summary>
    public static UnitProblem? Find(string text, ReadOnlySpan<QuantityKind> kinds)
    {
        var (kind, meant) = Whole(text);
        if (meant.Count == 0)
            (kind, meant) = ByFactor(text);
        var fitting = new List<Unit>();
        foreach (var spelling in meant)
        {
            if (UnitTable.Find(spelling) is { } unit && Fits(unit, kinds) && !fitting.Contains(unit))
                fitting.Add(unit);
        }

        if (fitting.Count == 0 || (fitting.Count == 1 && fitting[0].Symbol == text))
            return null;
        string[] symbols = [.. fitting.Select(unit => unit.Symbol)];
        var named = UnitAdvice.Either([.. fitting.Select(unit => unit.Name == unit.Symbol ? $"`{unit.Symbol}`" : $"`{unit.Symbol}` ({unit.Name})")]);
        var quoted = UnitAdvice.Quoted(text);
        var message = kind switch
        {
            UnitProblemKind.Ambiguous when symbols.Length > 1 => $"{quoted} has several meanings: write {named}",
            UnitProblemKind.Ambiguous => $"`lb` is a unit of mass: {quoted} is written {named}",
            UnitProblemKind.CaseSlip => $"capitals and small letters count in units: {quoted} is written {named}",
            _ => $"{quoted} is written {named}",
        };
        return new(kind, message, symbols, fitting.Count == 1 ? fitting[0] : null);
    }

    private static bool Fits(Unit unit, ReadOnlySpan<QuantityKind> kinds)
    {
        foreach (var kind in kinds)
        {
            if (kind.Accepts(kind.OwnMeaning(unit)))
                return true;
        }

        return kinds.Length == 0;
    }

    private static (UnitProblemKind Kind, IReadOnlyList<string> Meant) Whole(string text) =>
        UnitSpellings.ChoicesFor(text) is { } choices ? (UnitProblemKind.Ambiguous, choices)
        : UnitTable.FindSimple(text) is not null ? (UnitProblemKind.Unknown, [])
        : Alternatives(text);

    private static (UnitProblemKind Kind, IReadOnlyList<string> Meant) ByFactor(string text)
    {
        var kind = UnitProblemKind.Unknown;
        List<string> meant = [""];
        var rest = text.AsSpan();
        while (true)
        {
            var end = UnitComposer.IndexOfSeparator(rest);
            var factor = end < 0 ? rest : rest[..end];
            var hundred = factor.StartsWith("100") ? "100" : "";
            factor = factor[hundred.Length..];
            var (length, power) = UnitComposer.SplitPower(factor);
            var symbol = factor[..length].ToString();
            var tail = power switch { 2 => "²", 3 => "³", _ => "" } + (end < 0 ? "" : rest[end].ToString());

            var (why, spellings) = UnitTable.FindSimple(symbol) is not null ? (UnitProblemKind.Unknown, [symbol]) : Alternatives(symbol);
            if (spellings.Count == 0)
                return (UnitProblemKind.Unknown, []);
            if (kind != UnitProblemKind.Ambiguous && why != UnitProblemKind.Unknown)
                kind = why;
            meant = [.. meant.SelectMany(_ => spellings, (head, spelling) => head + hundred + spelling + tail).Take(MostAlternatives)];
            if (end < 0)
                return kind == UnitProblemKind.Unknown ? (kind, []) : (kind, meant);
            rest = rest[(end + 1)..];
        }
    }

    private static (UnitProblemKind Kind, IReadOnlyList<string> Meant) Alternatives(string symbol)
    {
        if (UnitSpellings.ChoicesFor(symbol) is { } choices)
            return (UnitProblemKind.Ambiguous, choices);
        string[] otherCase = [.. UnitTable.Spellings.Concat(Currencies.Codes).Where(s => string.Equals(s, symbol, StringComparison.OrdinalIgnoreCase))];
        var word = UnitSpellings.WordFor(symbol);
        return otherCase.Length > 0 ? (UnitProblemKind.CaseSlip, word is null ? otherCase : [.. otherCase, word])
            : word is not null ? (UnitProblemKind.OtherSpelling, [word])
            : (UnitProblemKind.Unknown, []);
    }
}
