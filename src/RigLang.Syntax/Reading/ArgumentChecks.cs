using System.Collections.Immutable;
using RigLang.Syntax.Checks.Writing;
using RigLang.Syntax.Scanning;
using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Reading;

/// <summary>Reports what the grammar found incomplete: signs without their values, questions without their goals.</summary>
internal static class ArgumentChecks
{
    public static void Report(ImmutableArray<ArgumentSyntax> arguments, ScannedLine line)
    {
        for (var i = 0; i < arguments.Length; i++)
        {
            switch (arguments[i])
            {
                case RangeSyntax { High: null } range:
                    line.Findings.Add(RangeWithoutEnd.Of(range.Span));
                    break;
                case BoundSyntax { Measure: null } bound:
                    line.Findings.Add(BoundWithoutValue.Of(bound.Span, line.Text.Substring(bound.Span.Start, bound.Span.Length)));
                    break;
                case QuerySyntax query:
                    ReportQuery(query, i + 1 < arguments.Length ? arguments[i + 1] : null, line);
                    break;
                case StraySyntax stray when !IsCut(line):
                    ReportStray(stray, line);
                    break;
            }
        }
    }

    /// <summary>A sign at the end of what was read of an endless line lacks nothing: its value wasn't read.</summary>
    private static bool IsCut(ScannedLine line) => line.Atoms.Count > LineTooLong.MostAtoms;

    private static void ReportQuery(QuerySyntax query, ArgumentSyntax? next, ScannedLine line)
    {
        var missing = query switch
        {
            { Goal: not QueryGoal.None, Result: null } => "the result",
            { Goal: QueryGoal.Value, Target: null } => "`=` and the wished value",
            { Within.High: null, Within: not null } => "the upper end of its range",
            { Within: null } when next is WordSyntax { Text: "within" } => "the range behind `within`",
            _ => null,
        };
        if (missing is not null)
        {
            line.Findings.Add(QuestionUnfinished.Of(query.Span, missing));
        }
    }

    private static void ReportStray(StraySyntax stray, ScannedLine line)
    {
        var atom = line.Atoms.Find(atom => atom.Span == stray.Span);
        switch (atom.Kind)
        {
            case AtomKind.PlusMinus:
                line.Findings.Add(HalfWidthWithoutValue.Of(stray.Span));
                break;
            case AtomKind.Dots:
                line.Findings.Add(RangeWithoutEnd.Of(stray.Span));
                break;
            case AtomKind.Plus or AtomKind.Minus:
                line.Findings.Add(SumWithoutSummand.Of(stray.Span, stray.Text));
                break;
            case AtomKind.Times:
                line.Findings.Add(CountWithoutQuantity.Of(stray.Span));
                break;
        }
    }
}
