using RigLang.Syntax.Checks;

namespace RigLang.Syntax.Scanning;

/// <summary>A line cut into atoms. Everything but blanks and the comment is in one of them.</summary>
internal sealed record ScannedLine(string Text, List<Atom> Atoms, TextSpan? Comment, List<LineFinding> Findings);
