namespace RigLang.LanguageServer.Protocol;

internal sealed record SignatureHelpParams(TextDocumentIdentifier TextDocument, Position Position, SignatureHelpContext? Context = null);

/// <param name="TriggerKind">1 asked for by the person, 2 by a character, 3 by moving on.</param>
/// <param name="IsRetrigger">It is on the screen already.</param>
internal sealed record SignatureHelpContext(int TriggerKind, bool IsRetrigger);

internal sealed record SignatureHelp(SignatureInformation[] Signatures, uint ActiveSignature, uint? ActiveParameter);

internal sealed record SignatureInformation(string Label, MarkupContent Documentation, ParameterInformation[] Parameters);

/// <param name="Label">A text that is part of the signature's, or its first and last character in it.</param>
internal sealed record ParameterInformation(object Label, MarkupContent Documentation);
