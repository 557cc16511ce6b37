using RigLang.Analysis.Studies;
using RigLang.Editing.Workspaces;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Files;
using RigLang.Model.Linking;
using RigLang.Syntax;
using RigLang.Syntax.Tree;

namespace RigLang.Editing.Navigating;

/// <summary>Every name in a file's text, with what it stands for. Names that stand for nothing are left out.</summary>
internal static class Occurrences
{
    public static IEnumerable<Occurrence> InFile(EditorState state, LinkedFile file) => file.File.Declarations.SelectMany(own => In(state, own, file.Of(own)));

    public static IEnumerable<Occurrence> In(EditorState state, OwnDeclaration own, Declaration? linked) =>
        linked is null ? InUse(state, own) : InOpening(linked).Concat(InLines(state, linked)).Concat(InWithouts(state, linked));

    /// <summary>Only the paths of other files: of <c>use</c> lines and of tracks.</summary>
    public static IEnumerable<Occurrence> Paths(EditorState state, LinkedFile file)
    {
        foreach (var own in file.File.Declarations)
        {
            if (file.Of(own) is not { } declaration)
            {
                foreach (var found in InUse(state, own))
                {
                    yield return found;
                }

                continue;
            }

            foreach (var line in OwnLines(declaration))
            {
                foreach (var slot in line.Declaration.Signature.Slots.Where(slot => slot.Form is PathForm))
                {
                    foreach (var found in InSlot(state, declaration, line, slot))
                    {
                        yield return found;
                    }
                }
            }
        }
    }

    private static IEnumerable<Occurrence> InUse(EditorState state, OwnDeclaration own)
    {
        if (own.Syntax.Head is UseSyntax { Path: { } path } && FilePaths.Resolve(own.File, path.Value) is { } file && state.Workspace.IsInside(file, own.File))
        {
            yield return new Occurrence(new FileSymbol(file), new Place(own.File, own.Syntax, 0, path.Span), false);
        }
    }

    private static IEnumerable<Occurrence> InOpening(Declaration declaration)
    {
        if (declaration.Name.Length > 0)
        {
            yield return new Occurrence(DeclarationSymbol.Of(declaration), declaration.Own.NamePlace, true);
        }

        if (declaration.Parent is { } parent && declaration.Own.Parent is { } name)
        {
            yield return new Occurrence(DeclarationSymbol.Of(parent), declaration.Own.NamePlace with { Span = name.Span }, false);
        }
    }

    private static IEnumerable<Fact> OwnLines(Declaration declaration) =>
        declaration.Block.WithInner().SelectMany(block => block.Facts).Where(line => line.Place.Declaration == declaration.Own.Syntax);

    private static IEnumerable<Occurrence> InLines(EditorState state, Declaration declaration)
    {
        return OwnLines(declaration).SelectMany(line => line.Declaration.Signature.Slots.SelectMany(slot => InSlot(state, declaration, line, slot)));
    }

    private static IEnumerable<Occurrence> InSlot(EditorState state, Declaration declaration, Fact line, Slot slot)
    {
        if (!line.Values.TryGetValue(slot.Role, out var value))
        {
            return [];
        }

        return (slot.Form, value) switch
        {
            (ReferenceForm { Kind: var kind }, WordValue) => RigParts.Named(state.Workspace, line, kind) is { } named
                ? [new Occurrence(DeclarationSymbol.Of(named), line.PlaceOf(slot.Role), false)]
                : [],
            (LocalNameForm form, WordValue word) => InLocal(state, declaration, line, form.Of, word),
            (PositionForm, PositionValue position) => Locals(state, declaration, line, LocalSort.Axle, position.Point, position.PointSpan),
            (ScaledAxlesForm, WordsValue words) => InScaled(state, declaration, line, words),
            (PathForm, TextValue path) => FilePaths.Resolve(declaration.Own.File, path.Text) is { } file
                ? [new Occurrence(new FileSymbol(file), line.PlaceOf(slot.Role), false)]
                : [],
            (_, WordValue) when ReferenceEquals(slot, line.Declaration.Signature.Slots[0]) && LocalScope.MadeBy(declaration, line) is { } made =>
                [new Occurrence(made, line.PlaceOf(slot.Role), true)],
            _ => [],
        };
    }

    private static IEnumerable<Occurrence> InLocal(EditorState state, Declaration declaration, Fact line, LocalNames of, WordValue word)
    {
        var sort = of switch
        {
            LocalNames.Axle => LocalSort.Axle,
            LocalNames.Tank => LocalSort.Tank,
            LocalNames.Leg => LocalSort.Place,
            _ => line.WordOf("what") == "fill" ? LocalSort.Tank : LocalSort.Item,
        };
        return Locals(state, declaration, line, sort, word.Word, word.Span);
    }

    private static IEnumerable<Occurrence> InScaled(EditorState state, Declaration declaration, Fact line, WordsValue words)
    {
        var from = words.Span.Start;
        foreach (var word in words.Words)
        {
            var start = line.Place.Declaration.Lines[line.Place.Line].Text.IndexOf(word, from, StringComparison.Ordinal);
            from = start + word.Length;
            foreach (var found in Locals(state, declaration, line, LocalSort.Axle, word, new TextSpan(start, word.Length)))
            {
                yield return found;
            }
        }
    }

    private static IEnumerable<Occurrence> Locals(EditorState state, Declaration declaration, Fact line, LocalSort sort, string name, TextSpan span) =>
        LocalScope.Find(state, declaration, sort, name).Select(symbol => new Occurrence(symbol, line.Place with { Span = span }, false));

    /// <summary>Lines that take something away aren't among the declaration's facts any more; their text still names what they take.</summary>
    private static IEnumerable<Occurrence> InWithouts(EditorState state, Declaration declaration)
    {
        if (declaration.Parent is not { } parent)
        {
            yield break;
        }

        foreach (var node in AllNodes(declaration.Own.Syntax.Nodes))
        {
            if (node.Fact.Keyword.Text != EverywhereFacts.Without.Keyword || node.Fact.Arguments is not [WordSyntax keyword, WordSyntax key, ..])
            {
                continue;
            }

            var place = new Place(declaration.Own.File, declaration.Own.Syntax, node.Line, key.Span);
            foreach (var symbol in TakenAway(state, parent, keyword.Text, key.Text))
            {
                yield return new Occurrence(symbol, place, false);
            }
        }
    }

    /// <summary>What the key of an inherited line stands for: the name it makes, or the one it is about.</summary>
    private static IEnumerable<Symbol> TakenAway(EditorState state, Declaration parent, string keyword, string key)
    {
        if (Vocabulary.FindInKind(parent.Kind, keyword) is not { } fact)
        {
            return [];
        }

        if (LocalScope.SortOf(fact) is { } made)
        {
            return LocalScope.Find(state, parent, made, key);
        }

        return fact.Signature.Slots is not [{ Form: var form, Role: var role }, ..] ? [] : form switch
        {
            LocalNameForm { Of: LocalNames.Tank } => LocalScope.Find(state, parent, LocalSort.Tank, key),
            LocalNameForm { Of: LocalNames.Leg } => LocalScope.Find(state, parent, LocalSort.Place, key),
            LocalNameForm { Of: LocalNames.Axle } or ScaledAxlesForm => LocalScope.Find(state, parent, LocalSort.Axle, key),
            ReferenceForm { Kind: var kind } => parent.Block.WithInner().SelectMany(block => block.All(fact)).Where(line => line.WordOf(role) == key)
                .Select(line => RigParts.Named(state.Workspace, line, kind)).OfType<Declaration>().Select(DeclarationSymbol.Of).Distinct(),
            _ => [],
        };
    }

    private static IEnumerable<NodeSyntax> AllNodes(IEnumerable<NodeSyntax> nodes) => nodes.SelectMany(node => AllNodes(node.Children).Prepend(node));
}
