namespace RigLang.LanguageServer.Protocol;

/// <summary>A file or folder that is about to be called otherwise, or was.</summary>
internal sealed record FileRename(string OldUri, string NewUri);

internal sealed record RenameFilesParams(FileRename[] Files);

internal sealed record FileDelete(string Uri);

internal sealed record DeleteFilesParams(FileDelete[] Files);

/// <summary>Of which operations on files the server wants to hear.</summary>
internal sealed record FileOperationOptions(FileOperationFilters? WillRename = null, FileOperationFilters? DidRename = null, FileOperationFilters? DidDelete = null);

internal sealed record FileOperationFilters(FileOperationFilter[] Filters);

internal sealed record FileOperationFilter(string Scheme, FileOperationPattern Pattern);

/// <param name="Matches">"file" or "folder".</param>
internal sealed record FileOperationPattern(string Glob, string Matches);
