using RigLang.Analysis.Checks.Expectations;
using System.Collections.Immutable;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>The checks of a trip.</summary>
public static class TripChecks
{
    public static ImmutableArray<Check> All { get; } =
    [
        new ReserveNotMet(), new ReserveInDoubt(), new RunsEmpty(), new LegOutOfRange(), new ChargerAboveVehicle(), new ChargeToBelowArrival(), new ArrivesLate(), new DrivingLimitExceeded(),
        new UntilPast(), new StopOutOfPlace(), new HillsMissing(), new DistanceDisagrees(), new WayToldTwice(), new TrackUnreadable(), new TrackOdd(), new WishAboveLimit(),
        new SpeedAbovePlate(), new RefillDoesNotFit(), new StartLevelMissing(), new CurrenciesMixed(), new PowerRunsOut(), new CannotStartOnClimb(), new ClockUnclear(), new WindWithoutDirection(),
        new ChargePointAboveFull(), new ChargesWhileClosed(), new OutsideDrivingHours(), new WishAboveComfort(), new ArrivesWithLess(),
        new LevelAboveTank(), new SectionOdd(), new FigureBelowZero(), new TripExpectationMissed(),
    ];
}
