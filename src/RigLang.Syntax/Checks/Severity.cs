namespace RigLang.Syntax.Checks;

/// <summary>How much a finding weighs. Ratings and law give errors, practice gives warnings, the rest is said as a note.</summary>
public enum Severity
{
    Error,
    Warning,
    Note,
}
