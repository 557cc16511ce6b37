using System.Collections.Concurrent;
using RigLang.Model.Binding;
using RigLang.Model.Files;
using RigLang.Syntax.Tree;

namespace RigLang.Model.Declaring;

/// <summary>The examples of the declared facts, read: what a value of such a fact ordinarily looks like.</summary>
public static class FactExamples
{
    private static readonly ConcurrentDictionary<FactDeclaration, Fact?> Known = new();

    /// <summary>The fact's own example as a line; null for those that no file writes.</summary>
    public static Fact? Of(FactDeclaration fact) => Known.GetOrAdd(fact, static fact => Read(fact));

    private static Fact? Read(FactDeclaration fact)
    {
        var declaration = FileSyntax.Parse($"{(fact.Home.Kind ?? DeclarationKind.Rig).Keyword()} example\n    {fact.Keyword} {fact.Example}").Declarations.LastOrDefault(found => !found.Nodes.IsEmpty);
        return declaration is null
            ? null
            : FactReader.Read(fact, declaration.Nodes[0].Fact, new Place(new FileId("/example.rig"), declaration, declaration.Nodes[0].Line, declaration.Nodes[0].Fact.Span), []);
    }
}
