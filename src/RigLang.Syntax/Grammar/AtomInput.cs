using RigLang.Syntax.Scanning;
using RigLang.Syntax.Tree;
using Sprache;

namespace RigLang.Syntax.Grammar;

/// <summary>
/// What Sprache's parsers read: the atoms of one line, each seen as the character of its class. One object a place, made once, so that
/// going on and going back cost nothing.
/// </summary>
internal sealed class AtomInput : IInput
{
    private readonly List<Atom> atoms;
    private AtomInput? next;

    public AtomInput(List<Atom> atoms, int position)
    {
        this.atoms = atoms;
        Position = position;
    }

    public Atom Atom => atoms[Position];

    public Token Token => atoms[Position].Token;

    /// <summary>The class of the atom here; behind the last one a class that none has.</summary>
    public AtomKind Kind => Position < atoms.Count ? atoms[Position].Kind : default;

    public int Position { get; }

    public bool AtEnd => Position >= atoms.Count;

    public char Current => (char)atoms[Position].Kind;

    public string Source => string.Concat(atoms.Select(atom => (char)atom.Kind));

    public int Line => 1;

    public int Column => Position + 1;

    public IDictionary<object, object> Memos => field ??= new Dictionary<object, object>();

    public IInput Advance() => next ??= new AtomInput(atoms, Position + 1);

    public bool Equals(IInput? other) => ReferenceEquals(this, other) || (other is AtomInput input && input.atoms == atoms && input.Position == Position);

    public override bool Equals(object? obj) => Equals(obj as IInput);

    public override int GetHashCode() => Position;
}
