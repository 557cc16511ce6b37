using System.Collections.Immutable;
using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Results.Rigs;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Law;

/// <summary>The rig's speed is above what German law allows with a trailer.</summary>
public sealed class SpeedOverLaw() : LawCheck("de")
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL610",
        Slug = "speed-over-law",
        Severity = Severity.Error,
        Summary = "The rig's speed is above what German law allows with a trailer.",
        Why = "Without the exemption it is 80 km/h, on motorways too. The exemption asks for light enough a trailer, dampers or a stabiliser, antilock brakes, young tyres, and a seal on its tail.",
        Bad = RigExample.Ruled("de").With(("speed 80 km/h", "speed 90 km/h")),
        Good = RigExample.Ruled("de"),
        Fix = "Drive slower, or bring the rig within the exemption and have it entered in the papers.",
        Source = "StVO sections 3(3) and 18(5), 9th exemption regulation to the StVO, read in the state of 2022-03-26",
    };

    /// <summary>Through the reader, so that it can be varied.</summary>
    private static readonly Computation<RigStudy, double> Driven = new("speed driven", (read, rig) => read.Quantity(rig.Rig, RigFacts.Speed));

    public override ImmutableArray<Lever> Cures => [Levers.DriveSlower];

    private protected override IEnumerable<Finding> Judge(RigStudy rig, string rules)
    {
        if (rig.HasTrailer && rig.Rig.Find(RigFacts.Speed) is { } line && Written(rig.Rig, RigFacts.Speed) is { } written && rig.Compute(Driven, rig) is { IsComputed: true } speed && Limits.Exceeds(speed.Value, GermanTowing.Speed)
            && Message(rig, speed.Value, written.Text) is { } message)
        {
            yield return Report(rig, line, message.Text) with { Severity = message.Severity };
        }
    }

    /// <summary>What to say of a speed; null where it is allowed.</summary>
    internal static (string Text, Severity Severity)? Message(RigStudy rig, double speed, string words)
    {
        var law = GermanSpeed.Of(rig);
        var isAboveAll = Limits.Exceeds(speed, GermanTowing.SpeedWithExemption);
        if (!Limits.Exceeds(speed, law.Limit))
        {
            return null;
        }

        var why = isAboveAll ? "100 km/h is the most with any trailer" : law.Why;
        return ($"{words} with a trailer: German law allows 80 km/h. {why} (StVO 3(3), 18(5), 9th exemption regulation, {AsRead}).", isAboveAll || !law.IsOpen ? Severity.Error : Severity.Warning);
    }
}
