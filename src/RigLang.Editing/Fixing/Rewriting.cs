using RigLang.Editing.Locating;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Quantities;
using RigLang.Syntax;
using RigLang.Syntax.Tree;

namespace RigLang.Editing.Fixing;

/// <summary>Other ways to write the value at the caret: in a unit of the other system, or as a question.</summary>
internal static class Rewriting
{
    public static IEnumerable<OfferedChange> At(Spot spot) => Converted(spot).Concat(Asked(spot));

    /// <summary>A quantity in a unit of the other system. Sums stay sums, so they aren't offered.</summary>
    private static IEnumerable<OfferedChange> Converted(Spot spot)
    {
        foreach (var value in (spot.Fact?.Values.Values ?? []).OfType<MeasureValue>().Where(value => value.Span.Touches(spot.Position.Character)))
        {
            var isPlain = spot.Statement!.Arguments.OfType<MeasureSyntax>().Any(syntax => syntax.Span == value.Span && syntax.Terms is [{ Count: null, IsNegative: false }]);
            if (isPlain && QuantityWriter.WriteInOtherSystem(value.Measure) is { } other)
            {
                yield return new OfferedChange($"Convert to {other}", ChangeSort.Rewrite, new FilePlace(spot.File.Id, spot.RangeOf(value.Span)), other);
            }
        }
    }

    /// <summary>The value becomes a question, and stays as a comment so that nothing typed is lost.</summary>
    private static IEnumerable<OfferedChange> Asked(Spot spot)
    {
        if (spot.Fact is not { Value: MeasureValue value } || spot.Declared?.Signature.Slots is not [{ Form: QuantityForm or QuantityOrNoneForm, Lead: null }] || !value.Span.Touches(spot.Position.Character))
        {
            yield break;
        }

        var line = spot.Syntax;
        var behind = line.Text[value.Span.End..].TrimEnd();
        var text = line.Comment is null && behind.Length == 0 ? $"?  # was {line.TextOf(value.Span)}" : "?";
        var end = line.Comment is null && behind.Length == 0 ? line.Text.Length : value.Span.End;
        yield return new OfferedChange(
            "Ask for it: write `?` in place of the value", ChangeSort.Rewrite, new FilePlace(spot.File.Id, spot.RangeOf(TextSpan.FromBounds(value.Span.Start, end))), text);
    }
}
