using RigLang.Analysis.Checks.Examples;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Linking;
using RigLang.Syntax.Checks;
using RigLang.Syntax.Tree;

namespace RigLang.Analysis.Checks.Unused;

/// <summary>A line asks for a value with `?`.</summary>
public sealed class OpenQuestion : DeclarationCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL171",
        Slug = "open-question",
        Severity = Severity.Note,
        Summary = "A line asks for a value with `?`.",
        Why = "Somebody wanted to know and didn't yet. Until the value is there an estimate stands in, or what needs it isn't computed.",
        Bad = RigExample.Pair.With(("combined-rating 5000 kg", "combined-rating ?")),
        Good = RigExample.Pair,
        Fix = "Measure it or look it up, and write it in place of the `?`.",
    };

    public override IEnumerable<Finding> Run(Declaration declaration)
    {
        foreach (var line in declaration.Block.WithInner().SelectMany(block => block.Facts))
        {
            // A question with a goal is one that the program answers.
            if (line.Query is { Query.Goal: QueryGoal.None } && line.Place.Declaration == declaration.Own.Syntax)
            {
                var meanwhile = line.Declaration.Else.StartsWith("none", StringComparison.Ordinal) ? "what needs it isn't computed" : $"in its place stands: {line.Declaration.Else}";
                yield return Report(line.PlaceOf(Signature.ValueRole), $"`{line.Declaration.Keyword}` is asked for; until it is known, {meanwhile}.");
            }
        }
    }
}
