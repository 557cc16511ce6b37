using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Tracking;

/// <summary>
/// Names one number among the facts of a study: the only quantity of a line (<c>wheelbase</c>, a leg's <c>speed</c>), or one of several in a line (<c>mass</c> or
/// <c>place</c> of an <c>item</c>, <c>power</c> of a <c>charger</c>). A fact that no line writes has a name too: what stands in for it can be replaced.
/// Two names of the same number are equal.
/// </summary>
public sealed class FactRef : IEquatable<FactRef>
{
    private FactRef(Block block, FactDeclaration fact, Fact? line, string role)
    {
        Block = block;
        Fact = fact;
        Line = line;
        Role = role;
    }

    /// <summary>The block that has the line, or would have it. Of an assumption, the block that the practice assumed it for.</summary>
    public Block Block { get; }

    public FactDeclaration Fact { get; }

    /// <summary>The line that says it; null where none does.</summary>
    public Fact? Line { get; }

    /// <summary>Which slot of the line.</summary>
    public string Role { get; }

    /// <summary>An <c>assume</c> line of the practice.</summary>
    public bool IsAssumption => Fact == PracticeFacts.Assume;

    /// <summary>As written; null where no line writes a number there.</summary>
    public Measure? Written => Line?.Values.GetValueOrDefault(Role) switch
    {
        MeasureValue value => value.Measure,
        PositionValue place => place.Written,
        _ => null,
    };

    /// <summary>What it is measured in: the written kind, else the likeliest that the slot takes. Null for an assumption, whose keyword decides.</summary>
    public QuantityKind? Kind => Written?.Kind ?? Fact.Signature.Slots.FirstOrDefault(slot => slot.Role == Role)?.Form switch
    {
        QuantityForm form => form.Kinds[0],
        QuantityOrNoneForm form => form.Kind,
        PositionForm => QuantityKinds.Length,
        _ => null,
    };

    /// <summary>The fact of a block that holds at most one line of it.</summary>
    public static FactRef Of(Block block, FactDeclaration fact, string role = Signature.ValueRole) => new(block, fact, block.Find(fact), role);

    /// <summary>A slot of a line of the block.</summary>
    public static FactRef Of(Block block, Fact line, string role = Signature.ValueRole) => new(block, line.Declaration, line, role);

    /// <summary>Every number that a line of the block says, in the order of its slots; a place counts as the distance to its point, positive rearward of it.</summary>
    public static IEnumerable<FactRef> AllOf(Block block, Fact line) =>
        line.Declaration.Signature.Slots
            .Where(slot => line.Values.GetValueOrDefault(slot.Role) is MeasureValue or PositionValue { Written: not null })
            .Select(slot => Of(block, line, slot.Role));

    /// <summary>"wheelbase", "item bicycles, place".</summary>
    public string Title => (Line?.Title ?? Fact.Keyword) + (Role == Signature.ValueRole || IsOnlyNumber ? "" : $", {Role}");

    /// <summary>"`carries` of axle rear, vehicle van".</summary>
    public string Words => $"`{Title}`{OwnerWords.Of(Block)}";

    public bool Equals(FactRef? other) =>
        other is not null && Role == other.Role && Fact == other.Fact && ReferenceEquals(Home, other.Home);

    public override bool Equals(object? obj) => Equals(obj as FactRef);

    public override int GetHashCode() => HashCode.Combine(RuntimeHelpers.GetHashCode(Home), Fact, Role);

    public override string ToString() => $"{Block.Path}: {Title}";

    /// <summary>What tells it from others of the same fact: the line where a block may have several, else the block.</summary>
    private object Home => Fact.Repeats && Line is not null ? Line : Block;

    private bool IsOnlyNumber => Line is { } line && AllOf(Block, line).Take(2).Count() < 2;
}
