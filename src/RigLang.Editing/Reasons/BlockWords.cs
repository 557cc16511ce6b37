using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Quantities;

namespace RigLang.Editing.Reasons;

/// <summary>Names blocks in words.</summary>
public static class BlockWords
{
    /// <summary>"vehicle van", "axle front of vehicle van"; empty for the figures that belong to nobody.</summary>
    public static string Of(Block block)
    {
        var names = block.Path[(block.Path.IndexOf('#', StringComparison.Ordinal) + 1)..].Split('/', StringSplitOptions.RemoveEmptyEntries);
        return string.Join(" of ", names.Reverse());
    }

    /// <summary>"wheelbase of vehicle van".</summary>
    public static string Of(Block block, string fact) => Of(block) is { Length: > 0 } owner ? $"{fact} of {owner}" : fact;

    /// <summary>The quantity as read: as its author wrote it, or what was put in its place for a question of the kind "what if".</summary>
    public static string Value(FactRead read, UnitChoice units)
    {
        var isReplaced = read.Fact.Kind is not null && !double.IsNaN(read.Value) && read.Line?.MeasureOf(Signature.ValueRole) is var written && (written is null || !Limits.Same(written.Value, read.Value));
        return isReplaced && read.Line?.Value is not AbsentValue ? units.Write(read.Value, read.Fact.Kind!) : read.Line is { } line ? Value(line) : "";
    }

    /// <summary>What was found for a question, in the unit of the range that it names.</summary>
    public static string Found(FactRead read, UnitChoice units)
    {
        var asked = read.Line?.Values.FirstOrDefault(pair => pair.Value is QueryValue);
        var fact = asked is { Key: { } role } && read.Line is { } line ? read.Fact.Repeats ? FactRef.Of(read.Block, line, role) : FactRef.Of(read.Block, read.Fact, role) : null;
        var value = double.IsNaN(read.Value) && read.Held is { } held && fact is not null ? held.MeasureOf(fact.Role)?.Value ?? double.NaN : read.Value;
        return fact?.Kind is { } kind && !double.IsNaN(value) ? units.Write(value, kind) : "";
    }

    /// <summary>The question of a line: "`? for energy-left = 30 %`".</summary>
    public static string Wish(Fact line) => line.Values.Values.OfType<QueryValue>().FirstOrDefault() is { } query ? $"`{(line.Place with { Span = query.Span }).Text}`" : "`?`";

    /// <summary>The line behind its keyword, as written, with one blank between its words.</summary>
    public static string Text(Fact line) => string.Join(' ', line.Place.Text[line.Declaration.Keyword.Length..].Split([' ', '\t'], StringSplitOptions.RemoveEmptyEntries));

    /// <summary>The line behind its keyword and key, as written, with one blank between its words.</summary>
    public static string Value(Fact line)
    {
        var text = Text(line);
        // A line that is all key, such as "load autumn", would have nothing left to say.
        return line.Key.Length > 0 && text.Length > line.Key.Length && text.StartsWith(line.Key + " ", StringComparison.Ordinal) ? text[line.Key.Length..].TrimStart() : text;
    }
}
