namespace RigLang.Quantities;

/// <summary>Which units a result is shown in when no author's unit stands beside it.</summary>
public enum DisplaySystem
{
    Metric,
    Us,
}
