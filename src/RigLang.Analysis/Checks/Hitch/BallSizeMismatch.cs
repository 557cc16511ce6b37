using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Studies;
using RigLang.Mechanics;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Hitch;

/// <summary>Ball and coupling head are of different sizes.</summary>
public sealed class BallSizeMismatch : RigCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL403",
        Slug = "ball-size-mismatch",
        Severity = Severity.Error,
        Summary = "Ball and coupling head are of different sizes.",
        Why = "A ball that is too small lets the coupling jump off in a dip, and it seems to fit: 50 mm and 2 in differ by less than a millimetre.",
        Bad = RigExample.Bars.With(("    brakes electric", "    coupling 2-5/16 in\n    brakes electric"), ("    reach 10 in", "    ball 2 in\n    reach 10 in")),
        Good = RigExample.Bars.With(("    brakes electric", "    coupling 2-5/16 in\n    brakes electric"), ("    reach 10 in", "    ball 2-5/16 in\n    reach 10 in")),
        Fix = "Fit the ball whose size is stamped on the coupling head.",
        Source = "sizes as they are stamped; ISO 1103 and SAE J684 name 50 mm and 2 in apart (values from memory)",
    };

    public override IEnumerable<Finding> Run(RigStudy rig)
    {
        if (rig.HasTrailer && rig.Hitch.Find(HitchFacts.Ball) is { } ball && ball.MeasureOf(Signature.ValueRole) is { } size
            && rig.Trailer.Find(TrailerFacts.Coupling) is { } coupling && coupling.MeasureOf(Signature.ValueRole) is { } wanted && !CouplingBall.Fits(size.Value, wanted.Value))
        {
            var danger = size.Value < wanted.Value ? "The coupling can jump off." : "The coupling can't close over it.";
            yield return Report(rig, RigFacts.Hitch, $"The ball is {size.Text}, the coupling head is made for {wanted.Text}. {danger} Fit a ball of {wanted.Text}.")
                with { Related = [new Related(ball.Place, "the ball"), new Related(coupling.Place, "the coupling head")] };
        }
    }
}
