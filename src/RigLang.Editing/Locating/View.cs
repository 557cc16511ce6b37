using RigLang.Editing.Workspaces;
using RigLang.Model.Files;

namespace RigLang.Editing.Locating;

/// <summary>A state of the files, looked at from one of them: its own lines are named without the file.</summary>
internal sealed record View(EditorState State, FileId File);
