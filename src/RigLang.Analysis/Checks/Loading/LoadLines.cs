using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Linking;

namespace RigLang.Analysis.Checks.Loading;

/// <summary>The lines of a rig's loads.</summary>
internal static class LoadLines
{
    public static IReadOnlyList<string> Carriers { get; } = ["vehicle", "trailer"];

    /// <summary>The whole lines of that keyword that a load has for the vehicle, or for the trailer.</summary>
    public static IEnumerable<Fact> Of(Declaration load, string carrier, FactDeclaration fact) =>
        load.Block.AllBlocks(CargoFacts.Load.Block).Where(block => block.Key == carrier).SelectMany(block => block.All(fact)).Where(line => line.IsComplete);

    /// <summary>The rig's line that names the load.</summary>
    public static Fact? Naming(RigStudy rig, Declaration load) => rig.Rig.All(RigFacts.Load).FirstOrDefault(line => line.WordOf(Signature.ValueRole) == load.Name);

    /// <summary>The vehicle or the trailer of a rig, when the rig has it and it is in sight.</summary>
    public static Declaration? Carrier(RigStudy rig, string carrier) => carrier == "vehicle" ? rig.Parts.Vehicle : rig.Parts.Trailer;

    /// <summary>The built-in tanks of a vehicle or trailer.</summary>
    public static IEnumerable<Fact> TanksOf(Declaration carrier) =>
        carrier.Block.All(carrier.Kind == DeclarationKind.Vehicle ? VehicleFacts.Tank : TrailerFacts.Tank).Where(line => line.IsComplete);
}
