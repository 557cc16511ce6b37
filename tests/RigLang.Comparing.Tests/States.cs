using RigLang.Model.Files;

namespace RigLang.Comparing.Tests;

/// <summary>States of a small work folder.</summary>
internal static class States
{
    public const string Root = "/work";

    /// <summary>1250 + 1150 kg solo, wheelbase 3.00 m, ball 1.20 m behind; the trailer puts 300 kg of 2500 kg on the ball.</summary>
    public const string Rig = """
        vehicle v
            wheelbase 3.00 m
            overhang 1.20 m
            ball-height 0.45 m
            gross-rating 3000 kg
            combined-rating 5500 kg
            towing-rating 3000 kg
            tongue-rating 350 kg
            axle front
                carries 1250 kg
                axle-rating 1400 kg
            axle rear
                carries 1150 kg
                axle-rating 1700 kg
            aboard nothing

        trailer t
            mass 2500 kg
            tongue 300 kg
            coupling-to-axle 5.00 m
            gross-rating 2700 kg
            brakes electric
            axle only
                axle-rating 2600 kg
            aboard nothing

        load day
            on vehicle
                item box 100 kg at 3.50 m behind front-axle

        rig r
            vehicle v
            trailer t
            load day

        """;

    public static ComparedState Of(params (string Name, string Text)[] files)
    {
        var source = new MemoryFileSource([.. files.Select(file => ($"{Root}/{file.Name}", file.Text))]);
        return new ComparedState(source, Root, source.RigFilesUnder(Root));
    }

    public static Comparison Compare(string before, string after) => Comparison.Of(Of(("a.rig", before)), Of(("a.rig", after)));

    /// <summary>The small rig against itself with one text put in another's place.</summary>
    public static Comparison Edited(params (string Old, string New)[] edits) =>
        Compare(Rig, edits.Aggregate(Rig, (text, edit) => text.Contains(edit.Old, StringComparison.Ordinal) ? text.Replace(edit.Old, edit.New, StringComparison.Ordinal) : throw new ArgumentException($"There is no `{edit.Old}`.")));

    public static ResultChange Result(this Comparison comparison, string name, string part = "") =>
        comparison.Results.Single(change => change.Result.Name == name && change.Part == part);
}
