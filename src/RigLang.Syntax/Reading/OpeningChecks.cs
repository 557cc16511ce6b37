using System.Collections.Immutable;
using RigLang.Syntax.Checks.Writing;
using RigLang.Syntax.Scanning;
using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Reading;

/// <summary>Reports what is wrong with a line that begins a declaration, with a <c>use</c> or with the <c>language</c> line.</summary>
internal static class OpeningChecks
{
    public static OpeningSyntax Of(OpeningSyntax opening, ScannedLine line)
    {
        if (opening.Name is null)
        {
            line.Findings.Add(OpeningWithoutName.Of(opening));
        }

        if (opening is { LikeKeyword: { } like, Parent: null })
        {
            line.Findings.Add(OpeningWithoutName.OfParent(like));
        }

        if (opening is { Title: { } title, LikeKeyword: { } late } && late.Span.Start > title.Span.Start)
        {
            line.Findings.Add(OpeningOutOfOrder.Of(title, TextOf(line, title.Span), late, opening.Parent, Between(line, late, opening.Parent)));
        }

        if (opening is { Name: not null, Title: null, LikeKeyword: null, Stray: [WordSyntax first, ..] } && opening.Stray.All(argument => argument is WordSyntax or MeasureSyntax))
        {
            var words = TextSpan.FromBounds(first.Span.Start, opening.Stray[^1].Span.End);
            line.Findings.RemoveAll(finding => finding.Span.Start >= words.Start); // a title's words are many things to the scanner
            line.Findings.Add(StrayText.OfTitle(words, TextOf(line, words)));
            return opening;
        }

        ReportExcess(opening.Stray, line, "an opening is kind, name, `like` other, \"title\"");
        return opening;
    }

    public static UseSyntax Of(UseSyntax use, ScannedLine line)
    {
        if (use.Keyword.Text != "use")
        {
            line.Findings.Add(UnknownKind.Of(use.Keyword, "use"));
        }

        if (use.Path is null)
        {
            line.Findings.Clear(); // a path without quotes is many things to the scanner
            line.Findings.Add(use.Stray.Length == 0
                ? UseWithoutPath.Of(use.Keyword.Span, null)
                : UseWithoutPath.Of(TextSpan.FromBounds(use.Stray[0].Span.Start, use.Span.End), line.Text[use.Stray[0].Span.Start..use.Span.End]));
        }
        else
        {
            ReportExcess(use.Stray, line, "`use` takes one path");
        }

        return use;
    }

    public static LanguageSyntax Of(LanguageSyntax language, ScannedLine line)
    {
        if (language.Edition is not { Text: "1" })
        {
            line.Findings.Add(LanguageEdition.Of(language.Edition?.Span ?? language.Keyword.Span, language.Edition?.Text));
        }

        ReportExcess(language.Stray, line, "`language` takes one number");
        return language;
    }

    /// <summary>One finding for all that is too much, unless the scanner has already said that it is nothing.</summary>
    private static void ReportExcess(ImmutableArray<ArgumentSyntax> stray, ScannedLine line, string complete)
    {
        var kept = stray.Where(argument => !line.Findings.Exists(finding => finding.Span.Start < argument.Span.End && argument.Span.Start < finding.Span.End)).ToList();
        if (kept.Count > 0)
        {
            var span = TextSpan.FromBounds(kept[0].Span.Start, kept[^1].Span.End);
            line.Findings.Add(StrayText.OfExcess(span, line.Text.AsSpan(span.Start, span.Length), complete));
        }
    }

    private static string TextOf(ScannedLine line, TextSpan span) => line.Text.Substring(span.Start, span.Length);

    private static string Between(ScannedLine line, Token like, Token? parent) => parent is { } name ? line.Text[like.Span.End..name.Span.Start] : "";
}
