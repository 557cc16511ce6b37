using RigLang.Editing.Workspaces;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Files;
using RigLang.Model.Linking;
using RigLang.Syntax;
using RigLang.Syntax.Tree;

namespace RigLang.Editing.Locating;

/// <summary>What a caret stands on: the line and, as far as it is understood, its declaration, block and fact.</summary>
internal sealed class Spot
{
    private Spot(EditorState state, RigFile file, LinePosition position)
    {
        State = state;
        File = file;
        Position = position;
        var index = file.Syntax.DeclarationAt(position.Line);
        Own = file.Declarations[index];
        Line = position.Line - file.Syntax.FirstLines[index];
        Linked = state.Workspace.Link(file.Id)?.Of(Own);
        Nodes = [.. NodePath.To(Own.Syntax, Line)];
        (Block, Fact) = Linked is null ? (null, null) : NodePath.FactAt(Linked, Line);
        Home = HomeOf(Own, Nodes);
    }

    public EditorState State { get; }

    public RigFile File { get; }

    public View View => new(State, File.Id);

    public LinePosition Position { get; }

    public OwnDeclaration Own { get; }

    /// <summary>Null where the opening isn't understood.</summary>
    public Declaration? Linked { get; }

    /// <summary>Counted from the declaration's first line.</summary>
    public int Line { get; }

    /// <summary>The statement of the line, the ones it is indented under before it; empty on an opening and on a line without a statement.</summary>
    public IReadOnlyList<NodeSyntax> Nodes { get; }

    /// <summary>The block that holds the line's fact; null where no fact could be read.</summary>
    public Block? Block { get; }

    public Fact? Fact { get; }

    /// <summary>The block whose keywords are at home in the line's place; null where the blocks around it aren't understood.</summary>
    public BlockDeclaration? Home { get; }

    public LineSyntax Syntax => Own.Syntax.Lines[Line];

    public FactSyntax? Statement => Syntax.Statement as FactSyntax;

    /// <summary>The declared fact of the line, whether or not its values could be read.</summary>
    public FactDeclaration? Declared => Fact?.Declaration ?? (Home is not null && Statement is { } fact ? Vocabulary.Find(Home, fact.Keyword.Text) : null);

    public bool IsOnKeyword => Statement?.Keyword.Span.Touches(Position.Character) == true;

    /// <summary>The argument that the caret touches; of two that meet there the later one.</summary>
    public ArgumentSyntax? Argument => Statement?.Arguments.LastOrDefault(argument => argument.Span.Touches(Position.Character));

    /// <summary>The value that the caret touches, with its role.</summary>
    public (string Role, SlotValue Value)? Value
    {
        get
        {
            foreach (var (role, value) in Fact?.Values ?? [])
            {
                if (value.Span.Touches(Position.Character))
                {
                    return (role, value);
                }
            }

            return null;
        }
    }

    public static Spot? At(EditorState state, FileId file, LinePosition position) =>
        state.Workspace.Find(file) is { } found && position.Line >= 0 && position.Line < found.Syntax.Lines.Length && position.Character >= 0
        && position.Character <= found.Syntax.Lines[position.Line].Text.Length
            ? new Spot(state, found, position)
            : null;

    public Place PlaceOf(TextSpan span) => new(File.Id, Own.Syntax, Line, span);

    public LineRange RangeOf(TextSpan span) => new(Position with { Character = span.Start }, Position with { Character = span.End });

    private static BlockDeclaration? HomeOf(OwnDeclaration own, IReadOnlyList<NodeSyntax> nodes)
    {
        var home = own.Kind is { } kind ? Vocabulary.Root(kind) : null;
        foreach (var node in nodes.SkipLast(1))
        {
            home = home is null ? null : Vocabulary.Find(home, node.Fact.Keyword.Text)?.Opens;
        }

        return home;
    }
}
