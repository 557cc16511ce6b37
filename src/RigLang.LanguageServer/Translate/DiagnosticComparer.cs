using RigLang.LanguageServer.Protocol;

namespace RigLang.LanguageServer.Translate;

/// <summary>Whether two diagnostics say the same, arrays compared by what is in them.</summary>
internal static class DiagnosticComparer
{
    internal static bool SameSet(Diagnostic[] left, Diagnostic[] right) => left.Length == right.Length && left.Zip(right).All(pair => Same(pair.First, pair.Second));

    private static bool Same(Diagnostic left, Diagnostic right) =>
        Bare(left) == Bare(right) && SameItems(left.Tags, right.Tags) && SameItems(left.RelatedInformation, right.RelatedInformation) && Same(left.Data, right.Data);

    private static Diagnostic Bare(Diagnostic diagnostic) => diagnostic with { Tags = null, RelatedInformation = null, Data = null };

    private static bool SameItems<T>(T[]? left, T[]? right) => (left ?? []).AsSpan().SequenceEqual(right ?? []);

    private static bool Same(DiagnosticData? left, DiagnosticData? right) => left?.Check == right?.Check && SameItems(left?.Fixes, right?.Fixes);
}
