using System.Collections.Immutable;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Linking;
using RigLang.Quantities;
using RigLang.Syntax.Tree;

namespace RigLang.Analysis.Studies;

/// <summary>The limits and assumptions of the practice that a rig names; none when it names none.</summary>
public sealed class Practice
{
    private Practice(Declaration? declaration, IReadOnlyDictionary<FactDeclaration, Assumption> assumptions, ImmutableArray<Bound> limits)
    {
        Declaration = declaration;
        Assumptions = assumptions;
        Limits = limits;
    }

    public Declaration? Declaration { get; }

    public IReadOnlyDictionary<FactDeclaration, Assumption> Assumptions { get; }

    /// <summary>The <c>limit</c> lines that could be read.</summary>
    public ImmutableArray<Bound> Limits { get; }

    public static Practice Of(Declaration? declaration) => declaration is null
        ? new Practice(null, new Dictionary<FactDeclaration, Assumption>(), [])
        : new Practice(declaration, AssumptionsOf(declaration.Block), [.. declaration.Block.All(PracticeFacts.Limit).Select(Bound.Read).OfType<Bound>()]);

    /// <summary>The fact that an <c>assume</c> line is about; null when the word names none that can be assumed.</summary>
    public static FactDeclaration? AssumedFact(string keyword) => Vocabulary.Assumable.FirstOrDefault(fact => fact.Keyword == keyword);

    private static Dictionary<FactDeclaration, Assumption> AssumptionsOf(Block practice)
    {
        var assumptions = new Dictionary<FactDeclaration, Assumption>();
        foreach (var line in practice.All(PracticeFacts.Assume))
        {
            if (line.WordOf("fact") is not { } keyword || line.Values.GetValueOrDefault("value") is not RawValue { Argument: MeasureSyntax syntax })
            {
                continue;
            }

            // One keyword may be at home in several blocks (rolling of vehicle and trailer): the assumption holds for each.
            foreach (var fact in Vocabulary.Assumable.Where(fact => fact.Keyword == keyword))
            {
                if (SlotReading.Measure(syntax, fact.Kind!) is { } measure)
                {
                    assumptions[fact] = new Assumption(measure.Value, measure.HalfWidth, line);
                }
            }
        }

        return assumptions;
    }
}
