using System.Collections.Immutable;
using RigLang.Editing;
using RigLang.LanguageServer.Client;
using RigLang.LanguageServer.Documents;
using RigLang.LanguageServer.Protocol;
using RigLang.Model.Files;
using RigLang.Syntax.Checks;

namespace RigLang.LanguageServer.Translate;

/// <summary>Findings as the client is able to show them.</summary>
internal sealed class DiagnosticTranslator(Func<ClientFeatures> features, Func<CheckDeclaration, string?>? checkPage)
{
    internal Diagnostic[] Translate(ImmutableArray<EditorFinding> findings, FileId file, OpenDocuments documents) =>
        [.. findings.Select(finding => Translate(finding, file, documents))];

    internal Diagnostic Translate(EditorFinding finding, FileId file, OpenDocuments documents)
    {
        var client = features();
        var page = client.CodeDescriptions ? checkPage?.Invoke(finding.Check) : null;
        var related = client.RelatedInformation && finding.Related.Length > 0
            ? finding.Related.Select(r => new DiagnosticRelatedInformation(Places.ToProtocol(r.Place, documents), r.Message)).ToArray()
            : null;
        return new Diagnostic(
            Places.ToProtocol(finding.Range),
            Severity(finding.Severity),
            finding.Check.Code,
            "riglang",
            related is null ? finding.Message + RelatedAsText(finding, file) : finding.Message,
            page is null ? null : new CodeDescription(page),
            client.UnnecessaryTag && finding.Check.Slug.Contains("unused", StringComparison.Ordinal) ? [DiagnosticTag.Unnecessary] : null,
            related,
            client.DiagnosticData ? new DiagnosticData(finding.Check.Slug, [.. finding.Fixes.Select(f => f.Title)]) : null);
    }

    private static int Severity(Severity severity) => severity switch
    {
        Syntax.Checks.Severity.Error => DiagnosticSeverity.Error,
        Syntax.Checks.Severity.Warning => DiagnosticSeverity.Warning,
        _ => DiagnosticSeverity.Information,
    };

    /// <summary>A client that can't show related places has them in the message: the file when it is another one, and the line counted from 1.</summary>
    private static string RelatedAsText(EditorFinding finding, FileId file) => string.Concat(finding.Related.Select(r =>
        $"\n{(r.Place.File == file ? "line " : r.Place.File.Name + ":")}{r.Place.Range.Start.Line + 1}: {r.Message}"));
}
