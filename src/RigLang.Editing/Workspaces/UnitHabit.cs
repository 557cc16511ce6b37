namespace RigLang.Editing.Workspaces;

/// <summary>In which units results are shown. What is written in a file is always shown as written.</summary>
public enum UnitHabit
{
    /// <summary>In the units that the file's author uses.</summary>
    AsWritten,
    Metric,
    Us,
}
