using RigLang.Quantities;

namespace RigLang.Model.Declaring;

/// <summary>
/// A declaration or a block in one, with the keywords that are at home there. Each keyword of a declaration is at home in one block only, so a wrong
/// indent can't hand a fact to another owner.
/// </summary>
public sealed class BlockDeclaration
{
    private readonly Dictionary<string, FactDeclaration> facts = new(StringComparer.Ordinal);

    private BlockDeclaration(DeclarationKind? kind, BlockDeclaration? parent, string keyword, string meaning)
    {
        Kind = kind;
        Parent = parent;
        Keyword = keyword;
        Meaning = meaning;
    }

    /// <summary>Null for the two blocks that no file writes: what is at home everywhere, and the figures of a practice.</summary>
    public DeclarationKind? Kind { get; }

    /// <summary>Null for the declaration itself.</summary>
    public BlockDeclaration? Parent { get; }

    public string Keyword { get; }

    public string Meaning { get; }

    /// <summary>"vehicle", "vehicle.axle".</summary>
    public string Path => Parent is null ? Keyword : $"{Parent.Path}.{Keyword}";

    /// <summary>In the order of the reference page.</summary>
    public IReadOnlyCollection<FactDeclaration> Facts => facts.Values;

    public FactDeclaration? Find(string keyword) => facts.GetValueOrDefault(keyword);

    internal static BlockDeclaration Everywhere() => new(null, null, "everywhere", "at home in every declaration and block");

    internal static BlockDeclaration Figures() => new(null, null, "figures", "figures that belong to no rig");

    internal static BlockDeclaration Root(DeclarationKind kind, string meaning) => new(kind, null, kind.Keyword(), meaning);

    /// <summary>Declares a keyword at home here.</summary>
    internal FactDeclaration Fact(
        string keyword,
        Signature signature,
        string example,
        string meaning,
        Need need = Need.Never,
        Estimate? estimate = null,
        string otherwise = "none",
        (double Low, double High)? plausible = null,
        bool positive = false,
        string[]? aliases = null,
        bool repeats = false,
        string[]? key = null)
    {
        var fact = new FactDeclaration(this, keyword, signature, meaning, example)
        {
            Need = need,
            Estimate = estimate,
            Otherwise = otherwise,
            Plausible = plausible,
            MustBePositive = positive,
            Aliases = [.. aliases ?? []],
            Repeats = repeats || key is not null,
            KeyRoles = [.. key ?? []],
        };
        facts.Add(keyword, fact);
        return fact;
    }

    /// <summary>Declares a single quantity.</summary>
    internal FactDeclaration Fact(
        string keyword,
        QuantityKind kind,
        string example,
        string meaning,
        Need need = Need.Never,
        Estimate? estimate = null,
        string otherwise = "none",
        (double Low, double High)? plausible = null,
        bool positive = false,
        string[]? aliases = null)
        => Fact(keyword, Signature.Quantity(kind), example, meaning, need, estimate, otherwise, plausible, positive, aliases);

    /// <summary>Declares a keyword that opens a block of its own.</summary>
    internal BlockDeclaration Block(FactDeclaration opener)
    {
        var block = new BlockDeclaration(Kind, this, opener.Keyword, opener.Meaning);
        opener.Opens = block;
        return block;
    }
}
