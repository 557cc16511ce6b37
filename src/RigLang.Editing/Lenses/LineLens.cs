namespace RigLang.Editing;

/// <summary>A line shown above a declaration.</summary>
/// <param name="Range">Where the declaration's name stands.</param>
/// <param name="Subject">Names the declaration in its file: <c>rig coast</c>.</param>
public sealed record LineLens(LineRange Range, string Subject);
