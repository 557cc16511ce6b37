using RigLang.Model.Files;
using RigLang.Syntax;

namespace RigLang.Editing;

/// <summary>A stretch of a file in lines and UTF-16 units, both from 0; the end is not part of it.</summary>
public readonly record struct LineRange(LinePosition Start, LinePosition End);

/// <summary>A stretch of a named file.</summary>
public readonly record struct FilePlace(FileId File, LineRange Range);

/// <summary>Replace the range by the text.</summary>
public readonly record struct TextReplacement(LineRange Range, string NewText);
