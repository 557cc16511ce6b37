namespace RigLang.Model;

internal static class Placeholder;
