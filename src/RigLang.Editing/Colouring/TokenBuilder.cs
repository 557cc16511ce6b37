using System.Collections.Immutable;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Linking;
using RigLang.Syntax;
using RigLang.Syntax.Tree;

namespace RigLang.Editing.Colouring;

/// <summary>What every stretch of a file means, from its lines' own text and signatures alone: an unknown name has the colour of a known one, the finding says the rest.</summary>
internal static class TokenBuilder
{
    /// <param name="range">Only lines that it touches; null for all.</param>
    public static ImmutableArray<MeaningToken> Of(LinkedFile file, LineRange? range, CancellationToken cancel)
    {
        var (from, to) = range is { } stretch ? (stretch.Start.Line, stretch.End.Line) : (0, int.MaxValue);
        var tokens = ImmutableArray.CreateBuilder<MeaningToken>();
        for (var index = 0; index < file.File.Declarations.Length; index++)
        {
            cancel.ThrowIfCancellationRequested();
            var own = file.File.Declarations[index];
            var first = file.File.Syntax.FirstLines[index];
            if (first > to || first + own.Syntax.Lines.Length <= from)
            {
                continue;
            }

            var facts = file.Of(own) is { } declaration ? FactsByLine(declaration) : [];
            AddDeclaration(tokens, own, facts, first, from - first, to - first);
        }

        return tokens.DrainToImmutable();
    }

    private static Dictionary<int, Fact> FactsByLine(Declaration declaration)
    {
        var facts = new Dictionary<int, Fact>();
        foreach (var fact in declaration.Block.WithInner().SelectMany(block => block.Facts).Where(fact => fact.Place.Declaration == declaration.Own.Syntax))
        {
            facts.TryAdd(fact.Place.Line, fact);
        }

        return facts;
    }

    private static void AddDeclaration(ImmutableArray<MeaningToken>.Builder tokens, OwnDeclaration own, Dictionary<int, Fact> facts, int first, int from, int to)
    {
        for (var line = Math.Max(0, from); line < own.Syntax.Lines.Length && line <= to; line++)
        {
            var syntax = own.Syntax.Lines[line];
            var found = new LineTokens(first + line, syntax.Text);
            switch (syntax.Statement)
            {
                case OpeningSyntax opening:
                    found.Add(opening, own.Kind is not null);
                    break;
                case UseSyntax use:
                    found.Add(use.Keyword.Span, MeaningSort.Keyword);
                    found.Add(use.Path?.Span, MeaningSort.Text);
                    break;
                case LanguageSyntax language:
                    found.Add(language.Keyword.Span, MeaningSort.Keyword);
                    found.Add(language.Edition?.Span, MeaningSort.Number);
                    break;
                case FactSyntax fact:
                    found.Add(fact, facts.GetValueOrDefault(line));
                    break;
            }

            found.Add(syntax.Comment, MeaningSort.Comment);
            tokens.AddRange(found.InOrder());
        }
    }
}
