using System.Collections.Immutable;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Linking;
using RigLang.Syntax;
using RigLang.Syntax.Tree;

namespace RigLang.Editing.Outlining;

/// <summary>The declarations and blocks of a file, by name.</summary>
internal static class OutlineBuilder
{
    public static ImmutableArray<OutlineEntry> Of(RigFile file)
    {
        var entries = ImmutableArray.CreateBuilder<OutlineEntry>();
        for (var index = 0; index < file.Declarations.Length; index++)
        {
            if (Entry(file.Declarations[index], file.Syntax.FirstLines[index]) is { } entry)
            {
                entries.Add(entry);
            }
        }

        return entries.DrainToImmutable();
    }

    private static OutlineEntry? Entry(OwnDeclaration own, int first)
    {
        var last = Stretches.LastStatement(own.Syntax);
        var range = Lines(own.Syntax, first, 0, last);
        if (own.Syntax.Head is UseSyntax { Path: { } path })
        {
            return new OutlineEntry(path.Value, "use", OutlineSort.File, range, On(first, path.Span), []);
        }

        if (own.Kind is not { } kind)
        {
            return null;
        }

        var detail = string.Join(" ", new[] { kind.Keyword(), own.Parent is { } parent ? $"like {parent.Text}" : null, own.Title is { } title ? $"“{title}”" : null }.OfType<string>());
        return new OutlineEntry(own.Name, detail, SortOf(kind), range, On(first, own.NamePlace.Span), Children(own.Syntax, first, Vocabulary.Root(kind), own.Syntax.Nodes));
    }

    private static ImmutableArray<OutlineEntry> Children(DeclarationSyntax declaration, int first, BlockDeclaration home, ImmutableArray<NodeSyntax> nodes)
    {
        var entries = ImmutableArray.CreateBuilder<OutlineEntry>();
        foreach (var node in nodes)
        {
            if (Vocabulary.Find(home, node.Fact.Keyword.Text)?.Opens is not { } block)
            {
                continue;
            }

            var name = string.Join(" ", node.Fact.Arguments.OfType<WordSyntax>().Select(word => word.Text).Prepend(node.Fact.Keyword.Text));
            var title = node.Fact.Arguments.OfType<TextSyntax>().FirstOrDefault()?.Value ?? "";
            var nameSpan = node.Fact.Arguments.OfType<WordSyntax>().FirstOrDefault()?.Span ?? node.Fact.Keyword.Span;
            entries.Add(new OutlineEntry(
                name, title, OutlineSort.Block, Lines(declaration, first, node.Line, Stretches.LastLine(node)), On(first + node.Line, nameSpan),
                Children(declaration, first, block, node.Children)));
        }

        return entries.DrainToImmutable();
    }

    private static LineRange Lines(DeclarationSyntax declaration, int first, int from, int to) =>
        new(new LinePosition(first + from, 0), new LinePosition(first + to, declaration.Lines[to].Text.Length));

    private static LineRange On(int line, TextSpan span) => new(new LinePosition(line, span.Start), new LinePosition(line, span.End));

    private static OutlineSort SortOf(DeclarationKind kind) => kind switch
    {
        DeclarationKind.Vehicle => OutlineSort.Vehicle,
        DeclarationKind.Trailer => OutlineSort.Trailer,
        DeclarationKind.Hitch => OutlineSort.Hitch,
        DeclarationKind.Load => OutlineSort.Load,
        DeclarationKind.Rig => OutlineSort.Rig,
        DeclarationKind.Trip => OutlineSort.Trip,
        DeclarationKind.Weighing => OutlineSort.Weighing,
        DeclarationKind.Run => OutlineSort.Run,
        _ => OutlineSort.Practice,
    };
}
