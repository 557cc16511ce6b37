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
        select (ArgumentSyntax)new WordSyntax(token.Span, token.Text);

    // bound = compare, blank, measure                                        (a measure that isn't there is null, and reported)
    private static readonly Parser<ArgumentSyntax> Less = BoundOf(AtomKind.Less, Comparison.Less);
    private static readonly Parser<ArgumentSyntax> Greater = BoundOf(AtomKind.Greater, Comparison.Greater);
    private static readonly Parser<ArgumentSyntax> AtMost = BoundOf(AtomKind.AtMost, Comparison.AtMost);
    private static readonly Parser<ArgumentSyntax> AtLeast = BoundOf(AtomKind.AtLeast, Comparison.AtLeast);
    private static readonly Parser<ArgumentSyntax> Equal = BoundOf(AtomKind.Equal, Comparison.Equal);

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

    private static readonly Parser<Goal?> ValueGoal =
        from word in Of(AtomKind.For)
        from result in IfWord
        from at in If(AtomKind.At, GoalAt)
        from target in If(AtomKind.Equal, GoalValue)
        select new Goal(QueryGoal.Value, word.Span.End, result, at, target);

    private static readonly Parser<Goal?> LeastGoal =
        from word in Of(AtomKind.Least)
        from result in IfWord
        select new Goal(QueryGoal.Least, word.Span.End, result, null, null);

    private static readonly Parser<Goal?> MostGoal =
        from word in Of(AtomKind.Most)
        from result in IfWord
        select new Goal(QueryGoal.Most, word.Span.End, result, null, null);

    private static readonly Parser<Goal?> QuestionGoal = Choice(
        static kind => kind switch
        {
            AtomKind.For => ValueGoal,
            AtomKind.Least => LeastGoal,
            AtomKind.Most => MostGoal,
            _ => null,
        },
        otherwise: Parse.Return<Goal?>(null));

    private static readonly Parser<RangeSyntax> Within =
        from word in Of(AtomKind.Within)
        from range in FullRange
        select range;

    private static readonly Parser<ArgumentSyntax> Query =
        from sign in Of(AtomKind.Query)
        from goal in QuestionGoal
        from within in If(AtomKind.Within, Within)
        select (ArgumentSyntax)Question(sign, goal, within);

    // moment = date, [ clock, [ offset ] ] | offset | year-week              (a clock alone is kept too; what it lacks depends on the fact)
    private static readonly Parser<ArgumentSyntax> DateAndClock =
        from date in If(AtomKind.Date)
        from clock in If(AtomKind.Clock)
        from offset in If(AtomKind.Offset)
        select (ArgumentSyntax)When(date, clock, offset, null);

    private static readonly Parser<ArgumentSyntax> YearWeek =
        from week in Of(AtomKind.YearWeek)
        select (ArgumentSyntax)When(null, null, null, week);

    private static readonly Parser<ArgumentSyntax> Stray =
        from token in Any
        select (ArgumentSyntax)new StraySyntax(token.Span, token.Text);

    // argument = text | query | bound | range | measure | moment | word
    public static readonly Parser<ArgumentSyntax> Argument = Choice(
        static kind => kind switch
        {
            AtomKind.Text => Text,
            AtomKind.Query => Query,
            AtomKind.Less => Less,
            AtomKind.Greater => Greater,
            AtomKind.AtMost => AtMost,
            AtomKind.AtLeast => AtLeast,
            AtomKind.Equal => Equal,
            AtomKind.Number or AtomKind.Count => RangeOrMeasure,
            AtomKind.Date or AtomKind.Clock or AtomKind.Offset => DateAndClock,
            AtomKind.YearWeek => YearWeek,
            AtomKind.Word or AtomKind.For or AtomKind.Least or AtomKind.Most or AtomKind.Within or AtomKind.At or AtomKind.Like => Word,
            _ => null,
        },
        otherwise: Stray);

    private static Parser<ArgumentSyntax> BoundOf(AtomKind kind, Comparison comparison) =>
        from sign in Of(kind)
        from measure in IfMeasure
        select (ArgumentSyntax)new BoundSyntax(TextSpan.FromBounds(sign.Span.Start, measure?.Span.End ?? sign.Span.End), comparison, measure);

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
