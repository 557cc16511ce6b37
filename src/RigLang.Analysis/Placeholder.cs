namespace RigLang.Analysis;

internal static class Placeholder;
