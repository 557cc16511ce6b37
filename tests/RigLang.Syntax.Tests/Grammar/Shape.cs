using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Tests.Grammar;

/// <summary>Writes arguments in brackets, so that a test can say in one line what a line is read as.</summary>
internal static class Shape
{
    public static string Of(string line) => string.Join("  ", Fixture.Fact(line).Arguments.Select(Of));

    private static string Of(ArgumentSyntax argument) => argument switch
    {
        WordSyntax word => word.Text,
        TextSyntax text => $"\"{text.Value}\"",
        MeasureSyntax measure => Measure(measure),
        RangeSyntax range => $"({Measure(range.Low)} .. {Measure(range.High)})",
        BoundSyntax bound => $"({bound.Comparison} {Measure(bound.Measure)})",
        MomentSyntax moment => $"(date {moment.Date} clock {moment.Clock} offset {moment.Offset} week {moment.YearWeek})",
        QuerySyntax query => $"(? {query.Goal} {query.Result} at {Measure(query.At)} = {Measure(query.Target)} within {(query.Within is { } within ? Of(within) : "-")})",
        StraySyntax stray => $"!{stray.Text}!",
        _ => argument.GetType().Name,
    };

    private static string Measure(MeasureSyntax? measure) => measure is null
        ? "-"
        : $"[{string.Join(' ', measure.Terms.Select(Term))}{(measure.HalfWidth is { } half ? " ± " + Quantity(half) : "")}]";

    private static string Term(TermSyntax term) => (term.IsNegative ? "- " : "") + (term.Count is { } count ? $"{count} x " : "") + Quantity(term.Quantity);

    private static string Quantity(QuantitySyntax quantity) => string.Join(' ', quantity.Parts.Select(part => $"{part.Number}|{part.Unit}"));
}
