using System.Collections.Immutable;
using RigLang.Syntax.Checks;

namespace RigLang.Editing;

/// <summary>A finding with its place in the file as it stands now.</summary>
public sealed record EditorFinding(
    LineRange Range, CheckDeclaration Check, Severity Severity, string Message, ImmutableArray<RelatedPlace> Related, ImmutableArray<EditorFix> Fixes);

/// <summary>Another place that has to do with a finding, and how.</summary>
public sealed record RelatedPlace(FilePlace Place, string Message);

/// <summary>A change that cures a finding, ready to apply.</summary>
public sealed record EditorFix(string Title, ImmutableArray<(FilePlace Place, string NewText)> Edits, bool IsPreferred);
