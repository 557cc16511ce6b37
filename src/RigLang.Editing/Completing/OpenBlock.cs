using RigLang.Editing.Locating;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Linking;
using RigLang.Syntax.Tree;

namespace RigLang.Editing.Completing;

/// <summary>The block that a line at some indent belongs to, found from the lines above it, whether or not the line says anything yet.</summary>
internal sealed record OpenBlock(BlockDeclaration Home, Block? Block, int? OpenerLine)
{
    public static OpenBlock? At(Spot spot, int indent)
    {
        if (spot.Own.Kind is not { } kind)
        {
            return null;
        }

        var open = new Stack<(int Indent, BlockDeclaration? Home, int? Line)>([(0, Vocabulary.Root(kind), null)]);
        for (var line = 1; line < spot.Line; line++)
        {
            if (spot.Own.Syntax.Lines[line] is { Statement: FactSyntax fact, IndentColumns: var columns } && columns > 0)
            {
                Close(open, columns);
                var home = open.Peek().Home;
                open.Push((columns, home is null ? null : Vocabulary.Find(home, fact.Keyword.Text)?.Opens, line));
            }
        }

        Close(open, indent);
        return open.Peek() is (_, { } found, var opener) ? new OpenBlock(found, BlockOf(spot.Linked, opener), opener) : null;
    }

    /// <summary>The lines that the block has: its own of this declaration, and those inherited.</summary>
    public IEnumerable<Fact> Lines => Block?.Facts ?? [];

    private static void Close(Stack<(int Indent, BlockDeclaration? Home, int? Line)> open, int indent)
    {
        while (open.Count > 1 && open.Peek().Indent >= indent)
        {
            open.Pop();
        }
    }

    private static Block? BlockOf(Declaration? declaration, int? opener) => opener is not { } line
        ? declaration?.Block
        : declaration?.Block.WithInner().FirstOrDefault(block => block.Opener is { } fact && fact.Place.Line == line && fact.Place.Declaration == declaration.Own.Syntax);
}
