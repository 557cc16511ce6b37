namespace RigLang.LanguageServer;

internal static class Placeholder;
