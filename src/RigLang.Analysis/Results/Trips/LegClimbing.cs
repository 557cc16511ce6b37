using RigLang.Analysis.Results.Power;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Trips;

/// <summary>What a leg's hills ask of the drive, and what it can give there.</summary>
public static class LegClimbing
{
    private const string Balance = PowerResults.Balance + "; in the wind and air there, on the leg's surface";

    public static ResultSet<LegSubject> Set { get; } = new(ResultScope.Leg);

    public static ResultDeclaration<LegSubject> Grade { get; } = Set.Add(
        "leg-grade", QuantityKinds.Slope, "Steepest climb", "of its sections, or of the stretches of its smoothed track; not shown where nothing climbs",
        "largest grade", "taut string within ± 4 m of the track's heights",
        (read, leg) => Steepest(read, leg, 0) is { } piece ? piece.Grade : read.HasMissing ? double.NaN : read.NotApplicable());

    public static ResultDeclaration<LegSubject> GradeSpeed { get; } = Set.Add(
        "leg-grade-speed", QuantityKinds.Speed, "Holds on that climb", "the highest speed that the drive holds on the leg's steepest climb, if that lasts; 200 km/h is the most that is looked at",
        "the highest speed at which the force at the wheels covers rolling, air and leg-grade", Balance,
        (read, leg) =>
        {
            var start = read.Get(Driving.StartAltitude, leg);
            if (Steepest(read, leg, start) is not { } piece)
            {
                return read.HasMissing ? double.NaN : read.NotApplicable();
            }

            var weather = Weather.Of(read, leg.Leg, LegFacts.Journey, start);
            var density = weather.DensityAt(piece.Altitude);
            var share = PullingDrives.ShareIn(read, leg.Trip.Rig, density);
            return read.Get(PullingDrives.Lasting, leg.Trip.Rig) is { } drive
                ? Gradeability.HighestSpeed(read.Get(Driving.Load, leg), drive.Times(share), piece.Grade, density, PowerResults.Highest, weather.On(piece.Course))
                : double.NaN;
        });

    public static ResultDeclaration<LegSubject> MostPower { get; } = Set.Add(
        "leg-wheel-power", QuantityKinds.Power, "Most power wished", "at the wheels, to hold the wished speed everywhere; where the drive hasn't it, the rig gets slower",
        "largest of road load × speed over the stretches", "rolling, air and grade (textbook road load)",
        (read, leg) =>
        {
            if (!Driving.WayOf(leg).IsOrdered)
            {
                // Hills told as sums are reckoned as 4 % steep: good for their energy, no measure of their power.
                read.Need(leg.Leg, LegFacts.Journey.Section);
                return double.NaN;
            }

            var wished = read.Get(Driving.Wished, leg);
            var load = read.Get(Driving.Load, leg);
            return wished.IsDefaultOrEmpty ? double.NaN : wished.Max(stretch => load.Power(stretch.Speed, stretch.Density, stretch.Wind, stretch.Grade));
        });

    /// <summary>The steepest stretch that climbs; null where none does, or the hills' places aren't known.</summary>
    private static WayPiece? Steepest(Reader read, LegSubject leg, double start)
    {
        var way = Driving.WayOf(leg);
        if (!way.IsOrdered)
        {
            read.Need(leg.Leg, LegFacts.Journey.Section);
            return null;
        }

        WayPiece? steepest = null;
        foreach (var piece in way.Pieces(read, start))
        {
            if (piece.Grade > (steepest?.Grade ?? 0))
            {
                steepest = piece;
            }
        }

        return steepest;
    }
}
