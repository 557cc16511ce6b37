using System.Collections.Immutable;
using RigLang.Quantities;

namespace RigLang.Model.Declaring;

/// <summary>
/// A keyword of the language, declared once. Binding, completion, hover, the reference pages and the highlighting grammar are made from these.
/// </summary>
public sealed class FactDeclaration
{
    internal FactDeclaration(BlockDeclaration home, string keyword, Signature signature, string meaning, string example)
    {
        Home = home;
        Keyword = keyword;
        Signature = signature;
        Meaning = meaning;
        Example = example;
    }

    /// <summary>The only block where it may stand.</summary>
    public BlockDeclaration Home { get; }

    public string Keyword { get; }

    public Signature Signature { get; }

    /// <summary>Half a sentence: what it is and how it is measured.</summary>
    public string Meaning { get; }

    /// <summary>What may stand behind the keyword, as a user would write it.</summary>
    public string Example { get; }

    public Need Need { get; init; }

    /// <summary>What stands in when the line is missing, in words; "none" where the results say they can't be computed.</summary>
    public string Else => Estimate is { } estimate ? $"{estimate.Words} ({estimate.Source})" : Otherwise;

    /// <summary>Said instead of <see cref="Else"/> where there is no estimate.</summary>
    public string Otherwise { get; init; } = "none";

    public Estimate? Estimate { get; init; }

    /// <summary>Whether a practice may put a figure of its own in place of what stands in for a missing line.</summary>
    public bool CanBeAssumed => Kind is not null && (Estimate is not null || Otherwise != "none" || Home.Kind is null);

    /// <summary>The SI values that a real vehicle, trailer or trip would have; outside, a slip of unit or digit is likely. Null: not judged.</summary>
    public (double Low, double High)? Plausible { get; init; }

    /// <summary>Zero or less makes no sense: a wheelbase, a mass.</summary>
    public bool MustBePositive { get; init; }

    /// <summary>Words that people use for it elsewhere; search and the "unknown keyword" message know them, files don't.</summary>
    public ImmutableArray<string> Aliases { get; init; } = [];

    /// <summary>May stand several times in a block.</summary>
    public bool Repeats { get; init; }

    /// <summary>The roles whose values, as written, tell two lines with this keyword apart. Empty with <see cref="Repeats"/>: lines are told apart by order.</summary>
    public ImmutableArray<string> KeyRoles { get; init; } = [];

    /// <summary>For what somebody can change between drives: by how much one would change it. Empty for what is as it is.</summary>
    public ImmutableArray<SensibleStep> Steps { get; private set; } = [];

    /// <summary>The block that the line opens, if it opens one.</summary>
    public BlockDeclaration? Opens { get; internal set; }

    /// <summary>The one kind of quantity, where the fact is a single quantity of one kind.</summary>
    public QuantityKind? Kind => Signature.ValueKinds is [var kind] ? kind : null;

    /// <summary>"vehicle", "vehicle.axle": where it stands, then its keyword.</summary>
    public string FullName => $"{Home.Path}.{Keyword}";

    public override string ToString() => FullName;

    /// <summary>Says that one can change it, and by how much one would: see <see cref="SensibleStep"/>.</summary>
    internal FactDeclaration Stepped(double metric, double us, string role = Signature.ValueRole)
    {
        Steps = Steps.Add(new SensibleStep(role, metric, us));
        return this;
    }
}
