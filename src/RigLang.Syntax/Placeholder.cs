namespace RigLang.Syntax;

internal static class Placeholder;
