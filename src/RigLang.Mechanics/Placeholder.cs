namespace RigLang.Mechanics;

internal static class Placeholder;
