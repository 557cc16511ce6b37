using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Linking;
using RigLang.Syntax;
using RigLang.Syntax.Checks;
using RigLang.Syntax.Tree;

namespace RigLang.Analysis.Checks.Expectations;

/// <summary>An `assume` line names nothing that can be assumed, or gives it a value that it can't have.</summary>
public sealed class UnknownAssumption : DeclarationCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL905",
        Slug = "unknown-assumption",
        Severity = Severity.Error,
        Summary = "An `assume` line names nothing that can be assumed, or gives it a value that it can't have.",
        Why = "Only what an estimate stands in for can be assumed in its place, and a few figures that belong to no rig. A wheelbase is measured, not assumed.",
        Bad = """
            practice ours
                assume frictoin 0.65
            """,
        Good = """
            practice ours
                assume friction 0.65
            """,
        Fix = "Name a fact that has an estimate, or one of `friction`, `reaction-time`, `wind-spread`, `person`, `dynamic-factor`.",
    };

    public override IEnumerable<Finding> Run(Declaration declaration)
    {
        foreach (var line in declaration.Block.All(PracticeFacts.Assume).Where(line => line.Place.Declaration == declaration.Own.Syntax))
        {
            if (line.WordOf("fact") is { } word && Practice.AssumedFact(word) is null)
            {
                var place = line.PlaceOf("fact");
                yield return Vocabulary.FindAnywhere(word).Any() ? Report(place, $"`{word}` has no estimate to stand in place of: write it where it belongs.")
                    : Spelling.Nearest(word, Vocabulary.Assumable.Select(fact => fact.Keyword).Distinct()) is { } near
                    ? Report(place, $"Nothing that can be assumed is called `{word}`. Did you mean `{near}`?") with { Fixes = [new Fix($"Write `{near}`", place, near)] }
                    : Report(place, $"Nothing that can be assumed is called `{word}`.");
            }
            else if (line.WordOf("fact") is { } known && Practice.AssumedFact(known)?.Kind is { } kind && line.Values.GetValueOrDefault("value") is RawValue { Argument: var value }
                && !(value is MeasureSyntax measure && SlotReading.Measure(measure, kind) is not null))
            {
                yield return Report(line.PlaceOf("value"), $"`{known}` is of the kind {kind.Name}: this is no value of it, so nothing is assumed.");
            }
        }
    }
}
