using System.Collections.Immutable;

namespace RigLang.Syntax.Tree;

/// <summary>One argument of a fact, with its place in the line.</summary>
public abstract record ArgumentSyntax(TextSpan Span);

/// <summary>A name, a joining word (<c>at</c>, <c>behind</c>), or a choice (<c>diesel</c>).</summary>
public sealed record WordSyntax(TextSpan Span, string Text) : ArgumentSyntax(Span);

/// <summary>Text in double quotes; <see cref="Value"/> is without them.</summary>
public sealed record TextSyntax(TextSpan Span, string Value, bool IsClosed) : ArgumentSyntax(Span);

/// <summary>A sum of quantities with an optional half-width: <c>2 x 11 kg + 4 kg ± 1 kg</c>. Units aren't looked up here.</summary>
public sealed record MeasureSyntax(TextSpan Span, ImmutableArray<TermSyntax> Terms, QuantitySyntax? HalfWidth) : ArgumentSyntax(Span);

/// <summary>One summand; <see cref="Count"/> is the number before <c>x</c>.</summary>
public sealed record TermSyntax(TextSpan Span, bool IsNegative, Token? Count, QuantitySyntax Quantity);

/// <summary>A number with its unit, or several of falling size: <c>33 ft 4 in</c>.</summary>
public sealed record QuantitySyntax(TextSpan Span, ImmutableArray<QuantityPartSyntax> Parts);

/// <summary>A number as typed and the unit as typed, if there is one.</summary>
public sealed record QuantityPartSyntax(Token Number, Token? Unit);

/// <summary><c>7 % .. 10 %</c>; an end that isn't there is null.</summary>
public sealed record RangeSyntax(TextSpan Span, MeasureSyntax Low, MeasureSyntax? High) : ArgumentSyntax(Span);

/// <summary><c>&lt; 6000 lb</c>.</summary>
public sealed record BoundSyntax(TextSpan Span, Comparison Comparison, MeasureSyntax? Measure) : ArgumentSyntax(Span);

/// <summary>The sign of a bound.</summary>
public enum Comparison
{
    Less,
    Greater,
    AtMost,
    AtLeast,
    Equal,
}

/// <summary>A date, a clock time, an offset from universal time or a year and week, each as typed; at least one is there.</summary>
public sealed record MomentSyntax(TextSpan Span, Token? Date, Token? Clock, Token? Offset, Token? YearWeek) : ArgumentSyntax(Span);

/// <summary>A <c>?</c>: asked and not known; with a goal, a wish to have it solved.</summary>
public sealed record QuerySyntax(TextSpan Span, QueryGoal Goal, Token? Result, MeasureSyntax? At, MeasureSyntax? Target, RangeSyntax? Within) : ArgumentSyntax(Span);

/// <summary>What a <c>?</c> asks for.</summary>
public enum QueryGoal
{
    /// <summary><c>?</c> alone.</summary>
    None,

    /// <summary><c>? for RESULT = VALUE</c>.</summary>
    Value,

    /// <summary><c>? least RESULT</c>.</summary>
    Least,

    /// <summary><c>? most RESULT</c>.</summary>
    Most,
}

/// <summary>A tyre's size and marks as typed behind <c>tyres</c> or <c>spare</c>; null parts weren't found.</summary>
public sealed record TyreSyntax(TextSpan Span, TyreSize? Size, Token? SizeText, TyreService? Service, Token? ServiceText, ImmutableArray<Token> Marks) : ArgumentSyntax(Span);

/// <summary>Text that is no argument of any form; reported by the reader, kept in the tree.</summary>
public sealed record StraySyntax(TextSpan Span, string Text) : ArgumentSyntax(Span);
