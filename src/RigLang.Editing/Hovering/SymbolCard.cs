using RigLang.Analysis.Studies;
using RigLang.Editing.Locating;
using RigLang.Editing.Navigating;
using RigLang.Editing.Reasons;
using RigLang.Model.Linking;

namespace RigLang.Editing.Hovering;

/// <summary>What a name stands for, seen from where it is used.</summary>
internal static class SymbolCard
{
    public static CardText? Of(View view, Symbol symbol, CancellationToken cancel) => symbol switch
    {
        DeclarationSymbol named => Find(view, named) is { } declaration ? DeclarationCard.Of(view, declaration, cancel) : null,
        LocalSymbol local => Find(view, local.Owner) is { } owner ? OfLocal(view, local, owner) : null,
        _ => null,
    };

    private static CardText? OfLocal(View view, LocalSymbol local, Declaration owner)
    {
        if (LocalScope.LinesOf(owner, local.Sort).FirstOrDefault(line => LocalScope.NameOf(line) == local.Name) is not { } line)
        {
            return null;
        }

        var block = owner.Block.WithInner().FirstOrDefault(block => ReferenceEquals(block.Opener, line));
        if (block is not null && BlockCard.Of(view, owner, block) is { } card)
        {
            return card;
        }

        return new CardText().Paragraph($"**{line.Title}** of {owner}").Paragraph(BlockWords.Value(line));
    }

    private static Declaration? Find(View view, DeclarationSymbol symbol) =>
        symbol.File == BuiltInPractices.File ? BuiltInPractices.Find(symbol.Kind, symbol.Name) : view.State.Workspace.Link(symbol.File)?.FindOwn(symbol.Kind, symbol.Name);
}
