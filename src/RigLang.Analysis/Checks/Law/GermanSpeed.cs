using System.Collections.Immutable;
using RigLang.Analysis.Results.Axles;
using RigLang.Analysis.Studies;
using RigLang.Mechanics;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Checks.Law;

/// <summary>How fast German law lets a rig with a trailer go: 80 km/h, or 100 km/h where every condition of the exemption is met.</summary>
/// <param name="Fails">The conditions that are known to fail, in words.</param>
/// <param name="Unknown">The conditions of which a fact isn't written, in words.</param>
internal sealed record GermanSpeed(ImmutableArray<string> Fails, ImmutableArray<string> Unknown)
{
    public double Limit => Fails.IsEmpty && Unknown.IsEmpty ? GermanTowing.SpeedWithExemption : GermanTowing.Speed;

    /// <summary>100 km/h may be open to the rig: nothing is known against it.</summary>
    public bool IsOpen => Fails.IsEmpty;

    /// <summary>What stands in the way, as the rest of a sentence.</summary>
    public string Why => !Fails.IsEmpty ? $"100 km/h is ruled out: {string.Join("; ", Fails)}" : $"100 km/h asks for more than is written here: {string.Join("; ", Unknown)}";

    public static GermanSpeed Of(RigStudy rig)
    {
        var fails = ImmutableArray.CreateBuilder<string>();
        var unknown = ImmutableArray.CreateBuilder<string>();
        Ask(LawCheck.Answer(rig.Vehicle, VehicleFacts.Abs), "the vehicle has no antilock brakes (`abs`)", "whether the vehicle has antilock brakes (`abs`)");
        Masses(rig, fails, unknown);
        foreach (var axle in rig.TrailerAxles)
        {
            var top = rig.Compute(TyreResults.TopSpeed, axle);
            Ask(
                top.IsComputed && !top.IsEstimated ? !Limits.FallsBelow(top.Value, SpeedSymbols.Speed(SpeedSymbol.L)) : null,
                $"the tyres of axle {axle.Axle.Key} have a speed symbol below L", $"the speed symbol of the tyres of axle {axle.Axle.Key}");
        }

        return new GermanSpeed(fails.ToImmutable(), unknown.ToImmutable());

        void Ask(bool? answer, string fail, string ask)
        {
            if (answer != true)
            {
                (answer is null ? unknown : fails).Add(answer is null ? ask : fail);
            }
        }
    }

    /// <summary>The trailer's gross mass against a multiple of the vehicle's kerb mass.</summary>
    private static void Masses(RigStudy rig, ImmutableArray<string>.Builder fails, ImmutableArray<string>.Builder unknown)
    {
        if (LawCheck.Written(rig.Vehicle, VehicleFacts.KerbMass) is not { } kerb || LawCheck.Written(rig.Trailer, TrailerFacts.GrossRating) is not { } gross)
        {
            unknown.Add("`kerb-mass` of the vehicle and `gross-rating` of the trailer");
            return;
        }

        var mayBeCaravan = LawCheck.Word(rig.Trailer, TrailerFacts.Body) is null or "box" or "rounded";
        var isBraked = LawCheck.Word(rig.Trailer, TrailerFacts.Brakes) is not (null or "none");
        var damped = LawCheck.Answer(rig.Trailer, TrailerFacts.ShockAbsorbers);
        bool?[] steadied = [LawCheck.Answer(rig.Trailer, TrailerFacts.Stabiliser), LawCheck.Answer(rig.Trailer, TrailerFacts.StabilityControl)];
        if (!Limits.Exceeds(gross.Value, Largest(isBraked && damped == true, mayBeCaravan, steadied.Contains(true))))
        {
            return;
        }

        // What isn't said may still open it; whether a box is a caravan only its papers say.
        var best = Largest(isBraked && damped != false, false, steadied.Contains(true) || steadied.Contains(null));
        if (!Limits.Exceeds(gross.Value, best))
        {
            unknown.Add($"`shock-absorbers`, and `stabiliser` or `stability-control`, of the trailer{(mayBeCaravan ? ", and whether its papers call it a caravan" : "")}");
        }
        else
        {
            fails.Add($"the trailer's `gross-rating` of {gross.Text} is more than {QuantityWriter.WriteLike(best, gross)}, the most behind this vehicle with its kerb mass of {kerb.Text}");
        }

        double Largest(bool isDamped, bool isCaravan, bool isSteadied) => GermanTowing.LargestAtHundred(
            !isDamped ? SpeedRuleTrailer.WithoutDampers : isCaravan ? SpeedRuleTrailer.Caravan : SpeedRuleTrailer.Other,
            isSteadied, kerb.Value,
            LawCheck.Written(rig.Vehicle, VehicleFacts.GrossRating)?.Value ?? double.MaxValue, LawCheck.Written(rig.Vehicle, VehicleFacts.TowingRating)?.Value ?? double.MaxValue);
    }
}
