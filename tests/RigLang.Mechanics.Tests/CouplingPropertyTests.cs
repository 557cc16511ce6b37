using FsCheck.Xunit;
using static RigLang.Mechanics.Tests.Numbers;

namespace RigLang.Mechanics.Tests;

/// <summary>Coupling values and the arithmetic of rules: what must hold of any masses.</summary>
public sealed class CouplingPropertyTests
{
    [Property]
    public void D_is_symmetric_scales_and_stays_below_the_weight_of_the_lighter(int vehicle, int trailer, int scale)
    {
        double t = Between(vehicle, 800, 3500), r = Between(trailer, 200, 3500), factor = Between(scale, 0.5, 3), d = CouplingValues.D(t, r);
        d.Should().BeApproximately(CouplingValues.D(r, t), 1e-9);
        CouplingValues.D(factor * t, factor * r).Should().BeApproximately(factor * d, 1e-6 * d * factor);
        d.Should().BeLessThan(Constants.CouplingGravity * Math.Min(t, r));
        CouplingValues.D(t, r * 1.1).Should().BeGreaterThan(d);
    }

    [Property]
    public void The_largest_trailer_of_a_plate_has_that_D(int vehicle, int trailer)
    {
        double t = Between(vehicle, 800, 3500), r = Between(trailer, 200, 3500);
        CouplingValues.LargestTrailer(t, CouplingValues.D(t, r)).Should().BeApproximately(r, 1e-6 * r);
    }

    [Property]
    public void V_never_falls_below_that_of_equal_lengths_and_steel_asks_for_more_than_air(int axle, int loading, int drawbar)
    {
        double c = Between(axle, 3500, 10_000), x = Between(loading, 2, 9), l = Between(drawbar, 2, 9);
        double air = CouplingValues.V(c, x, l, RearSuspension.Air), other = CouplingValues.V(c, x, l, RearSuspension.Other);
        air.Should().BeGreaterThanOrEqualTo(1.8 * c - 1e-6);
        other.Should().BeApproximately(air * 2.4 / 1.8, 1e-6 * other);
        CouplingValues.V(c, x * 1.2, l, RearSuspension.Air).Should().BeGreaterThanOrEqualTo(air);
    }

    [Property]
    public void More_vehicle_never_allows_less_trailer(int vehicle, int more, bool offRoad, bool stabilised)
    {
        double m = Between(vehicle, 700, 4000), heavier = m + Between(more, 0, 500);
        GermanTowing.LargestBraked(heavier, offRoad).Should().BeGreaterThanOrEqualTo(GermanTowing.LargestBraked(m, offRoad));
        GermanTowing.LargestUnbraked(heavier).Should().BeGreaterThanOrEqualTo(GermanTowing.LargestUnbraked(m));
        GermanTowing.LargestAtHundred(SpeedRuleTrailer.Other, stabilised, heavier, heavier, heavier)
            .Should().BeGreaterThanOrEqualTo(GermanTowing.LargestAtHundred(SpeedRuleTrailer.Other, stabilised, m, m, m));
        GermanTowing.LargestBraked(m, true).Should().BeGreaterThanOrEqualTo(GermanTowing.LargestBraked(m, false));
    }

    [Property]
    public void Least_and_largest_nose_load_leave_room_between_them(int trailer)
    {
        double mass = Between(trailer, 3501, 20_000);
        GermanTowing.LeastNose(mass).Should().BeLessThan(GermanTowing.LargestNose(mass));
    }

    [Property]
    public void A_heavier_trailer_never_asks_for_a_lesser_licence(int vehicle, int trailer, int more)
    {
        double car = Between(vehicle, 500, 3600), mass = Between(trailer, 0, 3600);
        EuropeanLicence.Needed(car, mass + Between(more, 0, 800)).Should().BeOneOf(Enum.GetValues<LicenceCategory>().Where(one => one >= EuropeanLicence.Needed(car, mass)));
    }

    [Property]
    public void A_surplus_on_the_placard_moves_with_what_is_added(int axles, int tongue, int gross)
    {
        double a = Between(axles, 500, 5000), t = Between(tongue, 20, 500), g = Between(gross, 500, 5500);
        (UsRatings.RecreationTrailerSurplus(a + 50, t, g) - UsRatings.RecreationTrailerSurplus(a, t, g)).Should().BeApproximately(50, 1e-9);
        (UsRatings.RecreationTrailerSurplus(a, t, g) - UsRatings.MotorHomeSurplus(a, g)).Should().BeApproximately(t, 1e-9);
    }
}
