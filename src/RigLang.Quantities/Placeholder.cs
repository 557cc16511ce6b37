namespace RigLang.Quantities;

internal static class Placeholder;
