using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Checks.Law;

/// <summary>A dated fact of law, for rigs that say by <c>rules</c> which law they drive under. No practice loosens it.</summary>
public abstract class LawCheck(params string[] rules) : RigCheck
{
    /// <summary>Behind each message: the state of the texts, and that what holds today where one drives goes first.</summary>
    public static string AsRead { get; } = $"as read {new Moment(GermanTowing.AsOf)}; what holds today goes first";

    public sealed override IEnumerable<Finding> Run(RigStudy rig) => RulesOf(rig) is { } named && rules.Contains(named) ? Judge(rig, named) : [];

    private protected abstract IEnumerable<Finding> Judge(RigStudy rig, string rules);

    /// <summary>The word behind <c>rules</c>; null where the rig names none.</summary>
    internal static string? RulesOf(RigStudy rig) => rig.Rig.Find(RigFacts.Rules)?.WordOf(Signature.ValueRole);

    /// <summary>What the fact says; null where it isn't written as a quantity.</summary>
    internal static Measure? Written(Block block, FactDeclaration fact) => block.Find(fact)?.MeasureOf(Signature.ValueRole);

    /// <summary>Yes, no, or null where nobody has said.</summary>
    internal static bool? Answer(Block block, FactDeclaration fact) => block.Find(fact)?.WordOf(Signature.ValueRole) switch { "yes" => true, "no" => false, _ => null };

    internal static string? Word(Block block, FactDeclaration fact) => block.Find(fact)?.WordOf(Signature.ValueRole);

    /// <summary>The computed value, or null.</summary>
    private protected static Node<double>? Known(Node<double> node) => node.IsComputed ? node : null;

    /// <summary>A mass in the unit in which the trailer's own is written.</summary>
    private protected static string Mass(RigStudy rig, double mass) =>
        Written(rig.Trailer, TrailerFacts.Mass) is { } like ? QuantityWriter.WriteLike(mass, like) : QuantityWriter.Write(mass, QuantityKinds.Mass, DisplaySystem.Metric);
}
