using System.Collections.Immutable;
using RigLang.Editing.Locating;
using RigLang.Editing.Outlining;
using RigLang.Syntax;
using RigLang.Syntax.Tree;

namespace RigLang.Editing.Navigating;

/// <summary>Widens a selection by meaning: number, quantity, sum, value, values, statement, line, block, declaration, file.</summary>
internal static class SelectionWidener
{
    public static ImmutableArray<LineRange> At(Spot spot)
    {
        var ranges = new List<LineRange>();
        foreach (var span in SpansOf(spot).Where(span => span.Touches(spot.Position.Character)).OrderBy(span => span.Length))
        {
            Add(ranges, spot.RangeOf(span));
        }

        AddLines(ranges, spot);
        return [.. ranges];
    }

    private static IEnumerable<TextSpan> SpansOf(Spot spot)
    {
        yield return new TextSpan(spot.Position.Character, 0);
        var (line, statement) = (spot.Syntax, spot.Syntax.Statement);
        if (line.Comment is { } comment)
        {
            yield return comment;
        }

        if (statement is not null)
        {
            yield return statement.Span;
        }

        foreach (var span in statement switch
        {
            FactSyntax fact => Of(fact.Keyword).Concat(Of(fact.Arguments)),
            OpeningSyntax opening => Of(opening.Kind, opening.Name, opening.LikeKeyword, opening.Parent).Concat(Of(opening.Title)).Concat(Of(opening.Stray)),
            UseSyntax use => Of(use.Keyword).Concat(Of(use.Path)).Concat(Of(use.Stray)),
            LanguageSyntax language => Of(language.Keyword, language.Edition).Concat(Of(language.Stray)),
            StrayLineSyntax stray => Of(stray.Arguments),
            _ => [],
        })
        {
            yield return span;
        }
    }

    private static IEnumerable<TextSpan> Of(params Token?[] tokens) => tokens.OfType<Token>().Select(token => token.Span);

    /// <summary>Each argument by itself, then all of them: what stands behind the keyword.</summary>
    private static IEnumerable<TextSpan> Of(ImmutableArray<ArgumentSyntax> arguments) =>
        arguments.IsEmpty ? [] : arguments.SelectMany(Of).Append(TextSpan.FromBounds(arguments[0].Span.Start, arguments[^1].Span.End));

    private static IEnumerable<TextSpan> Of(ArgumentSyntax? argument) => argument switch
    {
        null => [],
        TextSyntax { IsClosed: true } text => [text.Span, new TextSpan(text.Span.Start + 1, text.Span.Length - 2)],
        MeasureSyntax measure => Parts(measure).Append(measure.Span),
        RangeSyntax range => Of(range.Low).Concat(Of(range.High)).Append(range.Span),
        BoundSyntax bound => Of(bound.Measure).Append(bound.Span),
        MomentSyntax moment => Of(moment.Date, moment.Clock, moment.Offset, moment.YearWeek).Append(moment.Span),
        QuerySyntax query => Of(query.Result).Concat(Of(query.At)).Concat(Of(query.Target)).Concat(Of(query.Within)).Append(query.Span),
        TyreSyntax tyre => Of(tyre.SizeText, tyre.ServiceText).Concat(tyre.Marks.Select(mark => mark.Span)).Append(tyre.Span),
        _ => [argument.Span],
    };

    private static IEnumerable<TextSpan> Parts(MeasureSyntax measure)
    {
        foreach (var term in measure.Terms)
        {
            yield return term.Span;
            foreach (var span in Parts(term.Quantity).Concat(Of(term.Count)))
            {
                yield return span;
            }
        }

        foreach (var span in measure.HalfWidth is { } half ? Parts(half) : [])
        {
            yield return span;
        }
    }

    private static IEnumerable<TextSpan> Parts(QuantitySyntax quantity) =>
        quantity.Parts.SelectMany(part => Of(part.Number, part.Unit)).Append(quantity.Span);

    private static void AddLines(List<LineRange> ranges, Spot spot)
    {
        var first = spot.Position.Line - spot.Line;
        Lines(spot.Position.Line, spot.Position.Line);
        foreach (var node in spot.Nodes.Reverse())
        {
            Lines(first + node.Line, first + Stretches.LastLine(node));
        }

        Lines(first, first + Math.Max(spot.Line, Stretches.LastStatement(spot.Own.Syntax)));
        Lines(0, spot.File.Syntax.Lines.Length - 1);

        void Lines(int from, int to) => Add(ranges, new LineRange(new LinePosition(from, 0), new LinePosition(to, spot.File.Syntax.Lines[to].Text.Length)));
    }

    /// <summary>Kept only if it holds the one before it and is more than that.</summary>
    private static void Add(List<LineRange> ranges, LineRange range)
    {
        if (ranges.Count == 0 || (range.Start <= ranges[^1].Start && range.End >= ranges[^1].End && range != ranges[^1]))
        {
            ranges.Add(range);
        }
    }
}
