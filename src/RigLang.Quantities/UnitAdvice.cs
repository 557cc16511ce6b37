namespace RigLang.Quantities;

/// <summary>The slow path: says why a unit was not taken and what to write. No kinds wanted means that any unit would do.</summary>
internal static class UnitAdvice
{
    private const int MostSuggestions = 6;

    public static UnitProblem Explain(ReadOnlySpan<char> text, Unit? resolved, ReadOnlySpan<QuantityKind> kinds)
    {
        var written = text.ToString();
        if (written.Length == 0)
            return new(UnitProblemKind.Missing, $"a unit is missing{Wanted(kinds)}", Offered(kinds)) { IsOffer = true };
        if (kinds.Length > 0 && AllBare(kinds))
            return new(UnitProblemKind.NotWanted, $"a {kinds[0].Name} has no unit: leave out {Quoted(written)}", [], resolved);
        if (written.Length > UnitComposer.MostLength)
            return new(UnitProblemKind.Unknown, $"no unit is as long as {Quoted(written)}{Wanted(kinds)}", Offered(kinds)) { IsOffer = true };
        return UnitSlips.Find(written, kinds)
            ?? (resolved is null ? Unknown(written, kinds) : MassOrForce(written, resolved, kinds) ?? WrongDimension(written, resolved, kinds));
    }

    public static string Quoted(string text) => "`" + (text.Length > 24 ? text[..24] + "…" : text) + "`";

    /// <summary>"a, b or c".</summary>
    public static string Either(IReadOnlyList<string> items) =>
        items.Count < 2 ? string.Concat(items) : string.Join(", ", items.Take(items.Count - 1)) + " or " + items[^1];

    public static IReadOnlyList<string> Offered(ReadOnlySpan<QuantityKind> kinds)
    {
        var offered = new List<string>();
        foreach (var kind in kinds)
        {
            foreach (var unit in kind.ExampleUnits.Take(kinds.Length > 1 ? 3 : MostSuggestions))
            {
                if (!offered.Contains(unit.Symbol))
                    offered.Add(unit.Symbol);
            }
        }

        return offered;
    }

    /// <summary>What the unit measures, in a word: "mass"; null where there is no word.</summary>
    private static string? Measures(Unit unit) => QuantityKinds.All.FirstOrDefault(kind => kind.Accepts(unit))?.Name;

    private static bool AllBare(ReadOnlySpan<QuantityKind> kinds)
    {
        foreach (var kind in kinds)
        {
            if (!kind.BareOnly)
                return false;
        }

        return true;
    }

    private static string Wanted(ReadOnlySpan<QuantityKind> kinds)
    {
        if (kinds.Length == 0)
            return "";
        var names = new List<string>();
        foreach (var kind in kinds)
            names.Add(kind.Name);
        var offered = Offered(kinds);
        return $": {Either(names)} is written in {Either(offered)}{(kinds.Length == 1 && kinds[0].AllowsBare ? ", or as a bare number" : "")}";
    }

    private static UnitProblem Unknown(string text, ReadOnlySpan<QuantityKind> kinds)
    {
        var near = Nearness.Among(text, Candidates(kinds));
        return near.Count > 0
            ? new(UnitProblemKind.Unknown, $"no unit is spelt {Quoted(text)}; did you mean {Either([.. near.Select(Quoted)])}?", near)
            : new(UnitProblemKind.Unknown, $"no unit is spelt {Quoted(text)}{Wanted(kinds)}", Offered(kinds)) { IsOffer = true };
    }

    private static IEnumerable<string> Candidates(ReadOnlySpan<QuantityKind> kinds)
    {
        if (kinds.Length == 0)
            return UnitTable.Spellings;
        var candidates = new List<string>();
        foreach (var kind in kinds)
        {
            candidates.AddRange(kind.ExampleUnits.Select(unit => unit.Symbol));
            candidates.AddRange(Units.All.Where(kind.Accepts).Select(unit => unit.Symbol));
            if (kind.Dimension == Dimension.Money)
                candidates.AddRange(Currencies.Codes);
        }

        return candidates.Distinct();
    }

    private static UnitProblem WrongDimension(string text, Unit unit, ReadOnlySpan<QuantityKind> kinds)
    {
        // km for km/h, kN for kN/rad, AUD for AUD/kWh: what is written is the beginning of what is wanted.
        var longer = new List<string>();
        foreach (var kind in kinds)
        {
            longer.AddRange(UnitSpellings.LooseFor(text, kind) ?? []);
            longer.AddRange(kind.ExampleUnits.Select(example => InCurrency(example.Symbol, unit)).Where(symbol => symbol.StartsWith(unit.Symbol + "/", StringComparison.Ordinal)));
        }

        string[] meant = [.. longer.Distinct()];
        var what = Measures(unit) is { } word ? $"{Quoted(text)} measures {word}" : $"{Quoted(text)} does not fit";
        return meant.Length > 0
            ? new(UnitProblemKind.WrongDimension, $"{what}; did you mean {Either([.. meant.Select(Quoted)])}?", meant, unit)
            : new(UnitProblemKind.WrongDimension, what + Wanted(kinds), Offered(kinds), unit) { IsOffer = true };
    }

    private static string InCurrency(string symbol, Unit unit) =>
        unit.Currency is { } code && symbol.Length > 3 && Currencies.Find(symbol[..3]) is not null ? code + symbol[3..] : symbol;

    private static UnitProblem? MassOrForce(string text, Unit unit, ReadOnlySpan<QuantityKind> kinds)
    {
        foreach (var kind in kinds)
        {
            if (kind == QuantityKinds.Force && unit.Dimension == Dimension.Mass)
                return new(UnitProblemKind.MassForForce, $"{Quoted(text)} is a unit of mass, and a force is wanted", Preferred(kind, unit), unit);
            if (kind == QuantityKinds.Mass && unit.Dimension == Dimension.Force && unit.Family == UnitFamily.Plain)
                return new(UnitProblemKind.ForceForMass, $"{Quoted(text)} is a unit of force, and a mass is wanted", Preferred(kind, unit), unit);

            // kg/mm for a spring: the same figure with the force of that mass is what was meant.
            foreach (var (mass, force) in (ReadOnlySpan<(string, string)>)[("kg", "kgf"), ("lb", "lbf")])
            {
                if (text.StartsWith(mass, StringComparison.Ordinal) && UnitTable.Find(force + text[mass.Length..]) is { } meant && kind.Accepts(meant))
                    return new(UnitProblemKind.MassForForce, $"{Quoted(mass)} is a unit of mass, and {kind.Name} wants a force: write {Quoted(meant.Symbol)}", [meant.Symbol], unit);
            }
        }

        return null;
    }

    private static string[] Preferred(QuantityKind kind, Unit like)
    {
        var first = like.IsCustomary ? kind.Us : kind.Metric;
        return [first.Symbol, .. kind.ExampleUnits.Where(unit => unit != first && unit.IsCustomary == first.IsCustomary).Select(unit => unit.Symbol)];
    }
}
