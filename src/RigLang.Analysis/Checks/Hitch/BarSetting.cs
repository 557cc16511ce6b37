using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Checks.Hitch;

/// <summary>The three ways to say how a rig's spring bars are set, of which one is wanted.</summary>
internal static class BarSetting
{
    private static readonly FactDeclaration[] Ways = [RigFacts.Restoration, RigFacts.Couple, RigFacts.BarForce];

    /// <summary>The rig's lines that say it, in the order in which they count.</summary>
    public static IReadOnlyList<Fact> Lines(RigStudy rig) => [.. Ways.Select(rig.Rig.Find).OfType<Fact>()];
}
