using Spectre.Console;

namespace RigLang.Cli.Terminals;

/// <summary>What a stretch of output is, so that it can be coloured where there are colours. Nothing is said by colour alone.</summary>
public enum Ink
{
    Plain,
    Strong,
    Faint,
    Error,
    Warning,
    Note,
    Place,
    Good,
}

internal static class Inks
{
    public static Style Style(this Ink ink) => ink switch
    {
        Ink.Strong => new Style(decoration: Decoration.Bold),
        Ink.Faint => new Style(foreground: Color.Grey),
        Ink.Error => new Style(foreground: Color.Red, decoration: Decoration.Bold),
        Ink.Warning => new Style(foreground: Color.Olive, decoration: Decoration.Bold),
        Ink.Note => new Style(foreground: Color.Teal, decoration: Decoration.Bold),
        Ink.Place => new Style(decoration: Decoration.Bold),
        Ink.Good => new Style(foreground: Color.Green),
        _ => Spectre.Console.Style.Plain,
    };
}

/// <summary>A stretch of a line in one ink.</summary>
public readonly record struct Piece(string Text, Ink Ink = Ink.Plain)
{
    public static implicit operator Piece(string text) => new(text);
}
