using System.Collections.Concurrent;
using System.Diagnostics.CodeAnalysis;

namespace RigLang.Quantities;

/// <summary>From the text of a unit to the unit. Safe for use from many threads; a second reading of the same text allocates nothing.</summary>
public static class UnitTable
{
    // Whoever writes a program that makes up units must not make this one grow without end.
    private const int MostComposed = 4096;

    private static readonly Dictionary<string, Unit> Simple = Units.Spellings.ToDictionary(s => s.Spelling, s => s.Unit, StringComparer.Ordinal);
    private static readonly ConcurrentDictionary<string, Unit> Composed = new(StringComparer.Ordinal);

    /// <summary>Every spelling of a simple unit that is read ("m", "deg", "us-gal"), currencies left out.</summary>
    public static IReadOnlyList<string> Spellings { get; } = [.. Units.Spellings.Select(s => s.Spelling)];

    /// <summary>Reads a unit, simple ("kg") or composed ("N·m", "lbf/mph²", "AUD/kWh").</summary>
    /// <param name="text">One word without blanks.</param>
    /// <param name="expected">What is to be measured; null takes any unit.</param>
    /// <param name="unit">The unit, when there is no problem.</param>
    /// <param name="problem">Why not, with what to write instead.</param>
    public static bool TryRead(
        ReadOnlySpan<char> text, QuantityKind? expected, [NotNullWhen(true)] out Unit? unit, [NotNullWhen(false)] out UnitProblem? problem)
    {
        if (expected is not null)
            return TryRead(text, [expected], out unit, out _, out problem);
        unit = Resolve(text);
        problem = unit is null || UnitSpellings.IsRefused(text) ? UnitAdvice.Explain(text, unit, []) : null;
        if (problem is not null)
            unit = null;
        return unit is not null;
    }

    /// <summary>Reads a unit of any of several kinds; the first that takes it is meant.</summary>
    internal static bool TryRead(
        ReadOnlySpan<char> text, ReadOnlySpan<QuantityKind> kinds,
        [NotNullWhen(true)] out Unit? unit, [NotNullWhen(true)] out QuantityKind? kind, [NotNullWhen(false)] out UnitProblem? problem)
    {
        var resolved = Resolve(text);
        problem = null;
        foreach (var wanted in kinds)
        {
            kind = wanted;
            unit = resolved is null ? null : wanted.OwnMeaning(resolved);
            if (unit is not null && wanted.Accepts(unit))
                return true;
        }

        problem = UnitAdvice.Explain(text, resolved, kinds);
        (unit, kind) = (null, null);
        return false;
    }

    /// <summary>The unit spelt so, or null: for code and declarations that name units.</summary>
    public static Unit? Find(string text) => Resolve(text);

    internal static Unit? FindSimple(ReadOnlySpan<char> symbol) =>
        Simple.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(symbol, out var unit) ? unit : Currencies.Find(symbol);

    internal static Unit? Resolve(ReadOnlySpan<char> text)
    {
        if (text.IsEmpty || text.Length > UnitComposer.MostLength)
            return null;
        if (FindSimple(text) is { } simple)
            return simple;
        if (Composed.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(text, out var known))
            return known;
        if (UnitComposer.Compose(text) is not { } composed)
            return null;

        // "Nm", "N*m" and "N·m" are one object.
        if (composed.Symbol != text.ToString())
            composed = Resolve(composed.Symbol) ?? composed;
        return Composed.Count < MostComposed ? Composed.GetOrAdd(text.ToString(), composed) : composed;
    }
}
