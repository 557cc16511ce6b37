using RigLang.Model.Binding;
using RigLang.Quantities;
using RigLang.Syntax.Tree;

namespace RigLang.Analysis.Studies;

/// <summary>Reads measures whose kind another word of the line decides.</summary>
internal static class SlotReading
{
    public static Measure? Measure(MeasureSyntax syntax, QuantityKind kind) => Reading(syntax, kind).Measure;

    public static MeasureReading Reading(MeasureSyntax syntax, QuantityKind kind) => SlotReader.ReadMeasure(syntax, [kind]);
}
