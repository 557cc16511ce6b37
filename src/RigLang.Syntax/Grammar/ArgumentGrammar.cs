using RigLang.Syntax.Scanning;
using RigLang.Syntax.Tree;
using Sprache;
using static RigLang.Syntax.Grammar.AtomParsers;
using static RigLang.Syntax.Grammar.QuantityGrammar;

namespace RigLang.Syntax.Grammar;

/// <summary>The arguments of a fact. Whatever is none of them is stray, atom by atom, so every line has a reading.</summary>
internal static class ArgumentGrammar
{
    // text = '"', { any - '"' }, '"'
    public static readonly Parser<TextSyntax> Text =
        from token in Of(AtomKind.Text)
        select Unquote(token);

    // word = name
    private static readonly Parser<ArgumentSyntax> Word =
        from token in AnyWord
        select new WordSyntax(token.Span, token.Text);

    // bound = compare, blank, measure
    private static readonly Parser<(Token Sign, Comparison Comparison)> Compare =
        Sign(AtomKind.Less, Comparison.Less)
            .Or(Sign(AtomKind.Greater, Comparison.Greater))
            .Or(Sign(AtomKind.AtMost, Comparison.AtMost))
            .Or(Sign(AtomKind.AtLeast, Comparison.AtLeast))
            .Or(Sign(AtomKind.Equal, Comparison.Equal));

    private static readonly Parser<ArgumentSyntax> Bound =
        from compare in Compare
        from measure in Measure.Optional()
        select new BoundSyntax(TextSpan.FromBounds(compare.Sign.Span.Start, measure.OrNothing()?.Span.End ?? compare.Sign.Span.End), compare.Comparison, measure.OrNothing());

    // query = "?", [ ( "for", goal | ( "least" | "most" ), name ), [ "within", range ] ]
    // goal  = name, [ "at", measure ], "=", measure                          (what is missing is null, and reported)
    private static readonly Parser<MeasureSyntax> GoalAt =
        from at in Of(AtomKind.At)
        from measure in Measure
        select measure;

    private static readonly Parser<MeasureSyntax> GoalValue =
        from equal in Of(AtomKind.Equal)
        from measure in Measure
        select measure;

    private static readonly Parser<Goal> ValueGoal =
        from word in Of(AtomKind.For)
        from result in Name.Optional()
        from at in GoalAt.Optional()
        from target in GoalValue.Optional()
        select new Goal(QueryGoal.Value, word.Span.End, result.OrNull(), at.OrNothing(), target.OrNothing());

    private static readonly Parser<Goal> ExtremeGoal =
        from word in Of(AtomKind.Least).Or(Of(AtomKind.Most))
        from result in Name.Optional()
        select new Goal(word.Text == "least" ? QueryGoal.Least : QueryGoal.Most, word.Span.End, result.OrNull(), null, null);

    private static readonly Parser<RangeSyntax> Within =
        from word in Of(AtomKind.Within)
        from range in FullRange
        select range;

    private static readonly Parser<ArgumentSyntax> Query =
        from sign in Of(AtomKind.Query)
        from goal in ValueGoal.Or(ExtremeGoal).Optional()
        from within in Within.Optional()
        select Question(sign, goal.OrNothing(), within.OrNothing());

    // moment = date, [ clock, [ offset ] ] | offset | year-week              (a clock alone is kept too; what it lacks depends on the fact)
    private static readonly Parser<ArgumentSyntax> Moment =
        (from date in Of(AtomKind.Date)
         from clock in Of(AtomKind.Clock).Optional()
         from offset in Of(AtomKind.Offset).Optional()
         select When(date, clock.OrNull(), offset.OrNull(), null))
        .Or(from clock in Of(AtomKind.Clock)
            from offset in Of(AtomKind.Offset).Optional()
            select When(null, clock, offset.OrNull(), null))
        .Or(from offset in Of(AtomKind.Offset)
            select When(null, null, offset, null))
        .Or(from week in Of(AtomKind.YearWeek)
            select When(null, null, null, week));

    private static readonly Parser<ArgumentSyntax> Stray =
        from atom in Any
        select new StraySyntax(atom.Span, atom.Token.Text);

    // argument = text | query | bound | range | measure | moment | word      (the classes of their first atoms differ, so the order is free)
    public static readonly Parser<ArgumentSyntax> Argument =
        Word.Or(RangeOrMeasure).Or(Text).Or(Bound).Or(Query).Or(Moment).Or(Stray);

    private static Parser<(Token Sign, Comparison Comparison)> Sign(AtomKind kind, Comparison comparison) =>
        from sign in Of(kind)
        select (sign, comparison);

    private static TextSyntax Unquote(Token token)
    {
        var text = token.Text;
        var isClosed = text.Length > 1 && (text[0] != '"' || text[^1] == '"');
        return new TextSyntax(token.Span, isClosed ? text[1..^1] : text[1..], isClosed);
    }

    private static MomentSyntax When(Token? date, Token? clock, Token? offset, Token? week)
    {
        var start = (date ?? clock ?? offset ?? week)!.Value.Span.Start;
        var end = (week ?? offset ?? clock ?? date)!.Value.Span.End;
        return new MomentSyntax(TextSpan.FromBounds(start, end), date, clock, offset, week);
    }

    private static QuerySyntax Question(Token sign, Goal? goal, RangeSyntax? within)
    {
        var end = within?.Span.End ?? goal?.Target?.Span.End ?? goal?.At?.Span.End ?? goal?.Result?.Span.End ?? goal?.WordEnd ?? sign.Span.End;
        return new QuerySyntax(TextSpan.FromBounds(sign.Span.Start, end), goal?.Kind ?? QueryGoal.None, goal?.Result, goal?.At, goal?.Target, within);
    }

    private sealed record Goal(QueryGoal Kind, int WordEnd, Token? Result, MeasureSyntax? At, MeasureSyntax? Target);
}
