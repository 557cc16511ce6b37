namespace RigLang.Editing;

internal static class Placeholder;
