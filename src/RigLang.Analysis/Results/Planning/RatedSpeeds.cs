using System.Collections.Immutable;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Binding;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Planning;

/// <summary>Speeds that the trailer's plate and the tyres are made for.</summary>
internal static class RatedSpeeds
{
    public static Computation<RigStudy, ImmutableArray<SpeedCap>> Of { get; } = new("speeds of plate and tyres", (read, rig) =>
    {
        var caps = ImmutableArray.CreateBuilder<SpeedCap>();
        if (rig.HasTrailer && read.QuantityIfKnown(rig.Trailer, TrailerFacts.SpeedRating) is { } plate)
        {
            caps.Add(new SpeedCap(plate, CapReason.Plate, "the trailer's plate"));
        }

        foreach (var axle in rig.HasTrailer ? rig.Axles : rig.VehicleAxles)
        {
            if (read.LineIfWritten(axle.Axle, axle.Facts.Tyres)?.Value is TyreValue { Service.SpeedSymbol: { } symbol } && Enum.TryParse<SpeedSymbol>(symbol, out var speed))
            {
                caps.Add(new SpeedCap(SpeedSymbols.Speed(speed), CapReason.Tyre, $"the tyres' symbol {symbol} on {axle.Title}"));
            }
        }

        return caps.ToImmutable();
    });
}
