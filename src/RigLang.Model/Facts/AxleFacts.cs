using RigLang.Model.Declaring;
using RigLang.Model.Estimates;
using Q = RigLang.Quantities.QuantityKinds;

namespace RigLang.Model.Facts;

/// <summary>What is said of an axle. A vehicle's and a trailer's blocks hold the same keywords, save those that only one of them has.</summary>
public sealed class AxleFacts
{
    public static AxleFacts Vehicle { get; } = new(VehicleFacts.Block.Block(VehicleFacts.Axle), isTrailer: false);

    public static AxleFacts Trailer { get; } = new(TrailerFacts.Block.Block(TrailerFacts.Axle), isTrailer: true);

    private AxleFacts(BlockDeclaration block, bool isTrailer)
    {
        Block = block;
        if (!isTrailer)
        {
            Carries = block.Fact(
                "carries", Q.Mass, "1195 kg ± 10 kg", "load on this axle, as under aboard", Need.ForVerdict,
                otherwise: "`mass` times the axle's share", plausible: (150, 8000), positive: true);
        }

        AxleRating = block.Fact(
            "axle-rating", Q.Mass, "1350 kg", "most that the axle may carry; each axle, where there are several equal ones", Need.ForVerdict,
            plausible: (200, 10_000), positive: true, aliases: ["gawr", "plated-axle", "axle-plate"]);
        TrackWidth = block.Fact(
            "track-width", Q.Length, "1.63 m", "middle to middle of the wheels", Need.ForResults, AxleEstimates.TrackWidth, plausible: (0.8, 2.6), positive: true);
        Tyres = block.Fact(
            "tyres", Signature.Tyre, "235/55R19 105W XL", "size, service description and marks from the sidewall", Need.ForResults, aliases: ["tires", "tyre", "tire"]);
        Wheels = block.Fact(
            "wheels", Q.Count, "2", "tyres on this axle", Need.ForResults, Estimate.Default(2, "2"), plausible: (1, 4), positive: true);
        Pressure = block.Fact(
            "pressure", Q.Pressure, "270 kPa", "gauge, cold", Need.ForResults, plausible: (80_000, 900_000), positive: true).Stepped(20_000, 3 * 6894.757293168);
        RatedPressure = block.Fact(
            "rated-pressure", Q.Pressure, "290 kPa", "cold pressure at which the load index holds, from the sidewall or its maker", Need.ForResults,
            AxleEstimates.RatedPressure, plausible: (150_000, 900_000), positive: true);
        TyresMade = block.Fact(
            "tyres-made", Signature.Moment(MomentShape.YearWeek), "2024-W18", "year and week; the sidewall code 1824 is week 18 of 2024");
        RideRate = block.Fact(
            "ride-rate", Q.SpringRate, "48 N/mm", "both wheels together, at the wheel", Need.ForResults,
            otherwise: isTrailer ? "equal springs, marked" : "the level isn't computed, and independent axles of a trailer share as if level, marked", plausible: (5000, 1_000_000), positive: true);
        Levelling = block.Fact(
            "levelling", Signature.YesNo, "no", "keeps its height by air or oil", otherwise: "no, said", aliases: ["load-levelling", "air-suspension"]);
        CorneringStiffness = block.Fact(
            "cornering-stiffness", Q.CorneringStiffness, "110 kN/rad", "whole axle", Need.ForResults, AxleEstimates.CorneringStiffness,
            plausible: (5000, 1_000_000), positive: true);
        if (isTrailer)
        {
            EqualAxles = block.Fact(
                "count", Q.Count, "2", "equal axles in this place", Need.ForResults, Estimate.Default(1, "1"), plausible: (1, 4), positive: true);
            Spacing = block.Fact(
                "spacing", Q.Length, "34 in", "between the equal axles", otherwise: "0.85 m (our choice), for the drawing only", plausible: (0.4, 2.5), positive: true);
            BehindCoupling = block.Fact(
                "behind-coupling", Q.Length, "4.79 m", "ball centre to this axle", Need.ForResults, otherwise: "`coupling-to-axle`", plausible: (0.5, 15), positive: true);
        }
    }

    public BlockDeclaration Block { get; }

    /// <summary>A vehicle's axle only.</summary>
    public FactDeclaration? Carries { get; }

    public FactDeclaration AxleRating { get; }

    public FactDeclaration TrackWidth { get; }

    public FactDeclaration Tyres { get; }

    public FactDeclaration Wheels { get; }

    public FactDeclaration Pressure { get; }

    public FactDeclaration RatedPressure { get; }

    public FactDeclaration TyresMade { get; }

    public FactDeclaration RideRate { get; }

    public FactDeclaration Levelling { get; }

    public FactDeclaration CorneringStiffness { get; }

    /// <summary>A trailer's axle only.</summary>
    public FactDeclaration? EqualAxles { get; }

    /// <summary>A trailer's axle only.</summary>
    public FactDeclaration? Spacing { get; }

    /// <summary>A trailer's axle only.</summary>
    public FactDeclaration? BehindCoupling { get; }

    /// <summary>The facts of the axle block that this is.</summary>
    public static AxleFacts Of(BlockDeclaration block) => ReferenceEquals(block, Vehicle.Block) ? Vehicle : Trailer;
}
