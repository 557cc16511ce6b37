using RigLang.Model.Checks.Naming;
using RigLang.Model.Checks.Units;
using RigLang.Model.Declaring;
using RigLang.Quantities;
using RigLang.Syntax;
using RigLang.Syntax.Tree;

namespace RigLang.Model.Binding;

/// <summary>Reads <c>0.9 m behind axle</c>, <c>0.9 m ahead of axle</c> and <c>axle</c>, the word <c>at</c> before it taken already.</summary>
internal static class PositionReader
{
    public static PositionValue? Read(LineReading line)
    {
        if (line.Next is WordSyntax point)
        {
            line.Advance();
            return new PositionValue(point.Span, 0, null, point.Text, point.Span);
        }

        if (line.Next is not MeasureSyntax distance)
        {
            return null;
        }

        var measure = SlotReader.ReadMeasure(line, distance, [QuantityKinds.Length]);
        if (line.Next is not WordSyntax { Text: "behind" or "ahead" } direction)
        {
            var place = line.Next is { } wrong ? line.PlaceOf(wrong.Span) : line.PlaceOf(distance.Span);
            line.Findings.Add(new Finding(ValueMissing.Declaration, place, "Behind the distance stands `behind POINT` or `ahead of POINT`, for instance `at 0.9 m behind axle`."));
            return null;
        }

        line.Advance();
        var isAhead = direction.Text == "ahead";
        if (isAhead && line.Next is WordSyntax { Text: "of" })
        {
            line.Advance();
        }
        else if (isAhead)
        {
            line.Findings.Add(new Finding(WrongForm.Declaration, line.PlaceOf(direction.Span), "`ahead` is followed by `of`: `ahead of axle`.")
            {
                Fixes = [new Fix("Write `ahead of`", line.PlaceOf(direction.Span), "ahead of")],
            });
        }

        if (line.Next is not WordSyntax name)
        {
            line.Findings.Add(new Finding(ValueMissing.Declaration, line.PlaceOf(direction.Span), $"`{direction.Text}` what? Name a point, such as `axle` or `front-axle`."));
            return null;
        }

        line.Advance();
        if (line.Next is WordSyntax { Text: "axle" } axle)
        {
            line.Advance();
            var pieces = line.PlaceOf(TextSpan.FromBounds(name.Span.Start, axle.Span.End));
            line.Findings.Add(new Finding(WrongForm.Declaration, pieces, $"A point is one word: `{name.Text}-axle`.") { Fixes = [new Fix($"Write `{name.Text}-axle`", pieces, $"{name.Text}-axle")] });
            return null;
        }

        if (measure is { Measure.Value: < 0 })
        {
            line.Findings.Add(MustBePositive.ReportPlace(line.PlaceOf(TextSpan.FromBounds(distance.Span.Start, name.Span.End)), measure.Measure, isAhead, name.Text));
            return null;
        }

        return measure is null
            ? null
            : new PositionValue(TextSpan.FromBounds(distance.Span.Start, name.Span.End), isAhead ? -measure.Measure.Value : measure.Measure.Value, measure.Measure, name.Text, name.Span);
    }
}
