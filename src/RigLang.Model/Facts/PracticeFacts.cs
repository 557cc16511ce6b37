using RigLang.Model.Declaring;

namespace RigLang.Model.Facts;

/// <summary>What is said of a practice: house limits, and figures to use in place of the documented estimates.</summary>
public static class PracticeFacts
{
    public static BlockDeclaration Block { get; } = BlockDeclaration.Root(DeclarationKind.Practice, "limits and assumptions for the rigs that name it");

    public static FactDeclaration Limit { get; } = Block.Fact(
        "limit",
        Signature.Of(
            new Slot("result", new ResultNameForm()),
            new Slot("bound", new BoundForm()),
            new Slot("at", new AnyValueForm(), "at", IsOptional: true)),
        "tongue-ratio 7 % .. 10 %", "warned about on rigs that name this practice; a practice can tighten a rating, never loosen one", key: ["result", "at"]);

    public static FactDeclaration Assume { get; } = Block.Fact(
        "assume",
        Signature.Of(new Slot("fact", new ResultNameForm()), new Slot("value", new AnyValueForm())),
        "friction 0.65", "in place of the documented estimate", otherwise: "the estimate", key: ["fact"]);
}
