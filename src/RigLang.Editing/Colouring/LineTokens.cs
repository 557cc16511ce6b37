using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Syntax;
using RigLang.Syntax.Tree;

namespace RigLang.Editing.Colouring;

/// <summary>Gathers the stretches of one line.</summary>
internal sealed class LineTokens(int line, string text)
{
    private readonly List<MeaningToken> tokens = [];

    public IEnumerable<MeaningToken> InOrder() => tokens.OrderBy(token => token.Character);

    public void Add(TextSpan? span, MeaningSort sort, bool isDeclaration = false)
    {
        if (span is { Length: > 0 } stretch)
        {
            tokens.Add(new MeaningToken(line, stretch.Start, stretch.Length, sort, isDeclaration));
        }
    }

    public void Add(OpeningSyntax opening, bool isKnown)
    {
        Add(opening.Kind.Span, isKnown ? MeaningSort.Keyword : MeaningSort.Unknown);
        Add(opening.Name?.Span, MeaningSort.DeclarationName, isDeclaration: true);
        Add(opening.LikeKeyword?.Span, MeaningSort.Joint);
        Add(opening.Parent?.Span, MeaningSort.Reference);
        Add(opening.Title?.Span, MeaningSort.Text);
        AddStray(opening.Stray);
    }

    public void Add(FactSyntax syntax, Fact? fact)
    {
        // Lines that take something away aren't among a declaration's facts any more.
        var isWithout = fact is null && syntax.Keyword.Text == EverywhereFacts.Without.Keyword;
        Add(syntax.Keyword.Span, fact is null && !isWithout ? MeaningSort.Unknown : MeaningSort.Keyword);
        if (isWithout)
        {
            for (var index = 0; index < syntax.Arguments.Length; index++)
            {
                Add(syntax.Arguments[index].Span, index == 0 ? MeaningSort.Keyword : MeaningSort.Key);
            }

            return;
        }

        foreach (var argument in syntax.Arguments)
        {
            Add(argument, fact);
        }
    }

    private void Add(ArgumentSyntax argument, Fact? fact)
    {
        switch (argument)
        {
            case WordSyntax word:
                var (sort, isDeclaration) = SortOf(word, fact);
                Add(word.Span, sort, isDeclaration);
                break;
            case TextSyntax text:
                Add(text.Span, MeaningSort.Text);
                break;
            case MeasureSyntax measure:
                Add(measure);
                break;
            case RangeSyntax range:
                Add(range.Low);
                Add(range.High);
                break;
            case BoundSyntax bound:
                Add(SignAt(bound.Span.Start), MeaningSort.Sign);
                Add(bound.Measure);
                break;
            case MomentSyntax moment:
                Add(moment.Span, MeaningSort.Number);
                break;
            case TyreSyntax tyre:
                Add(tyre.SizeText?.Span, MeaningSort.Number);
                Add(tyre.ServiceText?.Span, MeaningSort.Number);
                foreach (var mark in tyre.Marks)
                {
                    Add(mark.Span, MeaningSort.Choice);
                }

                break;
            case QuerySyntax query:
                Add(new TextSpan(query.Span.Start, 1), MeaningSort.Sign);
                Add(query.Result?.Span, MeaningSort.Reference);
                Add(query.At);
                Add(query.Target);
                Add(query.Within?.Low);
                Add(query.Within?.High);
                break;
            default:
                Add(argument.Span, MeaningSort.Unknown);
                break;
        }
    }

    private void Add(MeasureSyntax? measure)
    {
        foreach (var term in measure?.Terms ?? [])
        {
            Add(term.Count?.Span, MeaningSort.Number);
            Add(term.Quantity);
        }

        Add(measure?.HalfWidth);
    }

    private void Add(QuantitySyntax? quantity)
    {
        foreach (var part in quantity?.Parts ?? [])
        {
            Add(part.Number.Span, MeaningSort.Number);
            Add(part.Unit?.Span, MeaningSort.Unit);
        }
    }

    private TextSpan SignAt(int start)
    {
        var end = start;
        while (end < text.Length && text[end] is '<' or '>' or '=' or '≤' or '≥')
        {
            end++;
        }

        return TextSpan.FromBounds(start, end);
    }

    private void AddStray(IEnumerable<ArgumentSyntax> stray)
    {
        foreach (var argument in stray)
        {
            Add(argument.Span, MeaningSort.Unknown);
        }
    }

    private static (MeaningSort Sort, bool IsDeclaration) SortOf(WordSyntax word, Fact? fact)
    {
        if (fact is null)
        {
            return (MeaningSort.Unknown, false);
        }

        foreach (var slot in fact.Declaration.Signature.Slots)
        {
            if (!fact.Values.TryGetValue(slot.Role, out var value) || value.Span.Start > word.Span.Start || value.Span.End < word.Span.End)
            {
                continue;
            }

            return (slot.Form, value) switch
            {
                (PositionForm, PositionValue position) => (position.PointSpan == word.Span ? MeaningSort.Key : MeaningSort.Joint, false),
                (NameForm, _) => (MeaningSort.Key, true),
                (ChoiceForm, _) when fact.Declaration.KeyRoles.Contains(slot.Role) => (MeaningSort.Key, fact.Declaration.Opens is not null),
                (ChoiceForm, _) or (QuantityOrNoneForm, _) => (MeaningSort.Choice, false),
                (LocalNameForm, _) => (MeaningSort.Key, false),
                (KeywordForm, _) => (word.Span.Start == value.Span.Start ? MeaningSort.Keyword : MeaningSort.Key, false),
                (ScaledAxlesForm, _) => (MeaningSort.Key, false),
                _ => (MeaningSort.Reference, false),
            };
        }

        return fact.Declaration.Signature.Slots.Any(slot => slot.Lead == word.Text) ? (MeaningSort.Joint, false) : (MeaningSort.Unknown, false);
    }
}
