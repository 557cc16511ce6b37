using RigLang.Model.Declaring;

namespace RigLang.Model.Facts;

/// <summary>The four keywords that are at home in every declaration and block.</summary>
public static class EverywhereFacts
{
    public static BlockDeclaration Block { get; } = BlockDeclaration.Everywhere();

    public static FactDeclaration Expect { get; } = Block.Fact(
        "expect",
        Signature.Of(
            new Slot("result", new ResultNameForm()),
            new Slot("bound", new BoundForm()),
            new Slot("at", new AnyValueForm(), "at", IsOptional: true)),
        "tongue-ratio 11 % .. 14 %",
        "a test of this declaration or leg: failing is an error; `= 1180 kg ± 15 kg` means from 1165 to 1195",
        key: ["result", "at"]);

    public static FactDeclaration Allow { get; } = Block.Fact(
        "allow",
        Signature.Of(
            new Slot("check", new CheckNameForm()),
            new Slot("reason", new TextForm(), "because")),
        "tongue-below-usual because \"maker asks for 8 %\"",
        "accepts a finding here, with the reason; one that accepts nothing is reported",
        key: ["check"]);

    public static FactDeclaration Note { get; } = Block.Fact(
        "note", Signature.Text, "\"Plate reads 2200 kg\"", "shown in the report, unlike a comment", repeats: true);

    public static FactDeclaration Without { get; } = Block.Fact(
        "without",
        Signature.Of(new Slot("keyword", new KeywordForm())),
        "item bicycles",
        "takes away an inherited line or block; only under `like`",
        key: ["keyword"]);
}
