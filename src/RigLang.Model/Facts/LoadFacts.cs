using RigLang.Model.Declaring;

namespace RigLang.Model.Facts;

/// <summary>What is said of a load: who and what is aboard, on any vehicle and any trailer.</summary>
public static class LoadFacts
{
    public static BlockDeclaration Block { get; } = BlockDeclaration.Root(DeclarationKind.Load, "everybody and everything aboard, the driver included");

    public static FactDeclaration On { get; } = Block.Fact(
        "on", Signature.Of(new Slot("carrier", new ChoiceForm(["vehicle", "trailer"]))), "vehicle", "what is on the vehicle, or on the trailer",
        otherwise: "nothing loaded, said", key: ["carrier"]);
}
