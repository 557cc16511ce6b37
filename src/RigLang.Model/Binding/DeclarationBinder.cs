using System.Collections.Immutable;
using RigLang.Model.Checks.Naming;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Files;
using RigLang.Syntax;
using RigLang.Syntax.Checks.Writing;
using RigLang.Syntax.Reading;
using RigLang.Syntax.Tree;

namespace RigLang.Model.Binding;

/// <summary>Understands one declaration from its own lines: which fact each line is, what it says, and what is wrong with it.</summary>
internal sealed class DeclarationBinder
{
    private readonly FileId file;
    private readonly DeclarationSyntax syntax;
    private readonly List<Finding> findings = [];

    private DeclarationBinder(FileId file, DeclarationSyntax syntax)
    {
        this.file = file;
        this.syntax = syntax;
    }

    public static OwnDeclaration Bind(FileId file, DeclarationSyntax syntax)
    {
        var binder = new DeclarationBinder(file, syntax);
        binder.TakeLineFindings();
        var kind = syntax.Opening is { } opening ? DeclarationKinds.Find(Kinds.Meant(opening.Kind.Text) ?? "") : null;
        var root = kind is { } known ? binder.BindBlock(Vocabulary.Root(known), null, syntax.Nodes) : null;
        if (kind is null)
        {
            binder.ReportOutside();
        }

        return new OwnDeclaration(file, syntax, kind, root, [.. binder.findings]);
    }

    private void TakeLineFindings()
    {
        for (var line = 0; line < syntax.Lines.Length; line++)
        {
            foreach (var found in syntax.Lines[line].Findings)
            {
                Take(line, found);
            }
        }

        foreach (var (line, found) in syntax.Findings)
        {
            Take(line, found);
        }
    }

    private void Take(int line, Syntax.Checks.LineFinding found) =>
        findings.Add(new Finding(found.Check, PlaceOf(line, found.Span), found.Message)
        {
            Fixes = [.. found.Fixes.Select(fix => new Fix(fix.Title, PlaceOf(line, fix.Span), fix.NewText))],
        });

    private void ReportOutside()
    {
        if (syntax.Head is LanguageSyntax { Edition: { } edition } && edition.Text != EditionUnknown.Newest.ToString(System.Globalization.CultureInfo.InvariantCulture))
        {
            findings.Add(EditionUnknown.Report(PlaceOf(0, edition.Span)));
        }

        // Under an opening that isn't understood everything waits for the opening to be mended; it was reported when the line was read.
        if (syntax.Opening is null && syntax.Nodes is [var first, ..])
        {
            findings.RemoveAll(static finding => finding.Check == FactInFirstColumn.Check); // its advice, to indent, would not help
            findings.Add(NothingOpen.Report(PlaceOf(first.Line, first.Fact.Span)));
        }
    }

    private OwnBlock BindBlock(BlockDeclaration block, Fact? opener, ImmutableArray<NodeSyntax> nodes)
    {
        var facts = ImmutableArray.CreateBuilder<Fact>();
        var blocks = ImmutableArray.CreateBuilder<OwnBlock>();
        var seen = new Dictionary<(FactDeclaration, string), Fact>();
        foreach (var node in nodes)
        {
            if (BindFact(block, node) is not { } fact)
            {
                continue;
            }

            var isOrdered = fact.Declaration.Repeats && fact.Declaration.KeyRoles.IsEmpty;
            if (!isOrdered && !seen.TryAdd((fact.Declaration, fact.Key), fact))
            {
                findings.Add(SaidTwice.Report(fact, seen[(fact.Declaration, fact.Key)]));
                continue;
            }

            facts.Add(fact);
            if (fact.Declaration.Opens is { } inner)
            {
                blocks.Add(BindBlock(inner, fact, node.Children));
            }
            else
            {
                foreach (var child in node.Children)
                {
                    findings.Add(LinesUnderFact.Report(PlaceOf(child.Line, child.Fact.Span), fact.Declaration.Keyword));
                }
            }
        }

        return new OwnBlock(block, opener, facts.ToImmutable(), blocks.ToImmutable());
    }

    private Fact? BindFact(BlockDeclaration block, NodeSyntax node)
    {
        var keyword = node.Fact.Keyword;
        if (Vocabulary.Find(block, keyword.Text) is { } declared)
        {
            return FactReader.Read(declared, node.Fact, PlaceOf(node.Line, node.Fact.Span), findings);
        }

        var place = PlaceOf(node.Line, keyword.Span);
        var elsewhere = Vocabulary.FindInKind(block.Kind!.Value, keyword.Text) ?? Vocabulary.FindAnywhere(keyword.Text).FirstOrDefault();
        findings.Add(elsewhere is null ? UnknownKeyword.Report(place, block) : KeywordElsewhere.Report(place, block, elsewhere));
        return null;
    }

    private Place PlaceOf(int line, TextSpan span) => new(file, syntax, line, span);
}
