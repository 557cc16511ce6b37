using System.Collections.Immutable;
using RigLang.Syntax.Checks;
using RigLang.Syntax.Checks.Writing;
using RigLang.Syntax.Grammar;
using RigLang.Syntax.Scanning;
using RigLang.Syntax.Tree;
using Sprache;

namespace RigLang.Syntax.Reading;

/// <summary>Makes a <see cref="LineSyntax"/> of one line, knowing nothing of its neighbours.</summary>
internal static class LineReader
{
    private const int TabStop = 4;

    public static LineSyntax Read(string text, LineBreak lineBreak)
    {
        var (indentLength, indentColumns) = MeasureIndent(text);
        if (indentLength == text.Length)
        {
            return new LineSyntax { Text = text, Break = lineBreak, IndentLength = indentLength, IndentColumns = indentColumns, Statement = null, Comment = null, Findings = [] };
        }

        var line = LineScanner.Scan(text, indentLength);
        var comment = line.Comment;
        var statement = line.Atoms.Count == 0 ? null : ReadStatement(line, indentColumns, ref comment);
        if (statement is not null && TabInIndent.Find(text, indentLength, indentColumns) is { } tab)
        {
            line.Findings.Insert(0, tab);
        }

        return new LineSyntax
        {
            Text = text,
            Break = lineBreak,
            IndentLength = indentLength,
            IndentColumns = indentColumns,
            Statement = statement,
            Comment = comment,
            Findings = line.Findings.Count == 0 ? [] : [.. line.Findings.OrderBy(finding => finding.Span.Start)],
        };
    }

    /// <summary>A byte order mark at the start takes no column.</summary>
    private static (int Length, int Columns) MeasureIndent(string text)
    {
        var length = text.Length > 0 && text[0] == '\uFEFF' ? 1 : 0;
        var columns = 0;
        for (; length < text.Length && Characters.IsBlank(text[length]); length++)
        {
            columns = text[length] == '\t' ? (columns / TabStop * TabStop) + TabStop : columns + 1;
        }

        return (length, columns);
    }

    private static StatementSyntax ReadStatement(ScannedLine line, int column, ref TextSpan? comment)
    {
        var first = line.Atoms[0];
        var input = new AtomInput(line.Atoms, 0);
        if (!first.IsWord)
        {
            var stray = StatementGrammar.StrayLine(input).Value;
            line.Findings.RemoveAll(static finding => finding.Check != InvisibleCharacter.Check); // one finding says the rest
            line.Findings.Add(LineWithoutKeyword.Of(stray.Span, line.Text.AsSpan(first.Span.Start, first.Span.Length)));
            return stray;
        }

        var keyword = first.Token.Text;
        if (column == 0)
        {
            if (Kinds.IsKind(keyword))
            {
                return OpeningChecks.Of(StatementGrammar.Opening(input).Value, line);
            }

            if (keyword == "use" || (line.Atoms.Count > 1 && line.Atoms[1].Kind == AtomKind.Text && Spelling.Distance(keyword, "use", 1) <= 1))
            {
                return OpeningChecks.Of(StatementGrammar.Use(input).Value, line);
            }

            if (keyword == "language")
            {
                return OpeningChecks.Of(StatementGrammar.Language(input).Value, line);
            }

            if (OpensSomething(line) && Kinds.Meant(keyword) is { } kind)
            {
                line.Findings.RemoveAll(finding => finding.Span == first.Span);
                line.Findings.Add(UnknownKind.Of(first.Token, kind));
                return OpeningChecks.Of(StatementGrammar.Opening(input).Value, line);
            }

            line.Findings.Add(FactInFirstColumn.Of(first.Token));
        }

        if (TyreScanner.Applies(keyword, line.Text, first.Span.End))
        {
            line.Findings.RemoveAll(finding => finding.Span.Start >= first.Span.End); // they took the designation for a quantity
            var arguments = TyreScanner.Scan(line.Text, first.Token, out comment, line.Findings);
            return new FactSyntax(TextSpan.FromBounds(first.Span.Start, arguments.Length > 0 ? arguments[^1].Span.End : first.Span.End), first.Token, arguments);
        }

        return Checked(StatementGrammar.Fact(input).Value, line);
    }

    /// <summary>Looks like <c>KIND NAME</c>, with nothing behind that an opening can't have.</summary>
    private static bool OpensSomething(ScannedLine line) =>
        line.Atoms.Count > 1 && line.Atoms[1].Kind == AtomKind.Word && (line.Atoms.Count == 2 || line.Atoms[2].Kind is AtomKind.Text or AtomKind.Like);

    private static FactSyntax Checked(FactSyntax fact, ScannedLine line)
    {
        ArgumentChecks.Report(fact.Arguments, line);
        return fact;
    }
}
