using FsCheck.Xunit;
using static RigLang.Mechanics.Tests.Numbers;

namespace RigLang.Mechanics.Tests;

/// <summary>The statics and their inverse: what a rig weighs must give the rig back, and a slip of the pen must be found where it was made.</summary>
public sealed class WeighbridgePropertyTests
{
    private const double Wheelbase = 3.0;

    [Property]
    public void Any_rig_comes_back_from_its_passes(int tongue, int couple, int overhang, int axle)
    {
        var (readings, e, lt) = Passes(tongue, couple, overhang, axle);
        WeighbridgeFit fit = WeighbridgeFit.Of(readings, Wheelbase, e, lt);

        fit.Tongue.Should().BeApproximately(Tongue(tongue) * Constants.Gravity, 1e-5);
        fit.Couple.Should().BeApproximately(Between(couple, 0, 3000), 1e-4);
        fit.Fit.Spread.Should().BeLessThan(1e-6);
        WeighbridgeFit.OutOfLine(readings, Wheelbase, e, lt).Index.Should().BeNull("all agree");
    }

    [Property]
    public void Of_three_passes_and_the_tongue_a_slip_is_found_where_it_was_made_or_nobody_is_blamed(int tongue, int couple, int overhang, int axle, int where, bool isMore)
    {
        var (readings, e, lt) = Passes(tongue, couple, overhang, axle);
        int slip = (int)(Math.Abs((long)where) % readings.Length);
        double amount = isMore ? 3000 : -3000;
        readings[slip] = readings[slip] with { Load = readings[slip].Load + amount };
        var (index, excess) = WeighbridgeFit.OutOfLine(readings, Wheelbase, e, lt);

        if (index is not null)
        {
            index.Should().Be(slip);
            excess.Should().BeApproximately(amount, 1);
        }
    }

    [Property]
    public void The_order_of_the_readings_does_not_matter(int tongue, int couple, int overhang, int axle)
    {
        var (readings, e, lt) = Passes(tongue, couple, overhang, axle);
        readings[2] = readings[2] with { Load = readings[2].Load + 40 };
        WeighbridgeFit here = WeighbridgeFit.Of(readings, Wheelbase, e, lt);
        Array.Reverse(readings);
        WeighbridgeFit there = WeighbridgeFit.Of(readings, Wheelbase, e, lt);

        there.Tongue.Should().BeApproximately(here.Tongue, 1e-6);
        there.Fit.Residuals.Reverse().Zip(here.Fit.Residuals).Should().OnlyContain(pair => Math.Abs(pair.First - pair.Second) < 1e-6);
    }

    [Property]
    public void The_same_passes_again_leave_the_answer_and_lessen_its_doubt(int tongue, int couple, int overhang, int axle)
    {
        var (readings, e, lt) = Passes(tongue, couple, overhang, axle);
        WeighbridgeFit once = WeighbridgeFit.Of(readings, Wheelbase, e, lt), twice = WeighbridgeFit.Of([.. readings, .. readings], Wheelbase, e, lt);

        twice.Tongue.Should().BeApproximately(once.Tongue, 1e-5);
        twice.Fit.Errors[3].Should().BeApproximately(once.Fit.Errors[3] / Math.Sqrt(2), 1e-6);
    }

    [Property]
    public void Two_weighings_give_the_trailer_and_its_load_comes_off_again(int mass, int centre, int axle, int item, int place)
    {
        double m = Between(mass, 200, 3000), lt = Between(axle, 2, 7), x = Between(centre, 1.5, 6.5), load = Between(item, 0, 150), at = Between(place, 0, 7);
        PointMass[] both = [new(m, x), new(load, at)];
        TrailerLoad loaded = TrailerStatics.FromItems(both, lt);
        TrailerLoad weighed = TrailerWeighing.FromTwo(loaded.Mass * Constants.Gravity, loaded.AxleLoad, lt);
        if (double.IsNaN(weighed.Mass))
        {
            loaded.AxleLoad.Should().BeLessThan(0, "only a platform that would have to pull has no reading");
            return;
        }

        weighed.TongueMass.Should().BeApproximately(loaded.TongueMass, 1e-9);
        TrailerLoad empty = TrailerWeighing.Without(weighed, [both[1]]);
        empty.Mass.Should().BeApproximately(m, 1e-9);
        empty.MassCentre.Should().BeApproximately(x, 1e-9);
    }

    [Fact]
    public void A_jockey_wheel_behind_the_coupling_carries_more_than_the_coupling_would()
    {
        // 1000 kg, 100 kg at the coupling; a wheel 1 m behind it, 4 m ahead of the axle, carries 125 kg.
        TrailerLoad trailer = TrailerWeighing.FromTwo(1000 * Constants.Gravity, 875 * Constants.Gravity, 5, 1);

        trailer.TongueMass.Should().BeApproximately(100, 1e-9);
        trailer.MassCentre.Should().BeApproximately(4.5, 1e-9);
    }

    [Fact]
    public void A_mass_centre_is_as_certain_as_weight_and_tongue_together()
    {
        WeighbridgeFit fit = WeighbridgeFit.Of(
            [new(WeighingState.Apart, WeighedParts.TrailerAxles, 9000, 60), new(WeighingState.Apart, WeighedParts.Tongue, 1000, 20)], Wheelbase, 1.2, 5);

        // x = l R/(R + W): dx = l (W dR − R dW)/(R + W)², the two readings apart from each other.
        double byHand = 5 * Math.Sqrt(Math.Pow(1000 * 60, 2) + Math.Pow(9000 * 20, 2)) / 1e8;
        fit.MassCentreError(5).Should().BeApproximately(byHand, 1e-9);
    }

    private static double Tongue(int tongue) => Between(tongue, -50, 400);

    private static (ScaleReading[] Readings, double Overhang, double Axle) Passes(int tongue, int couple, int overhang, int axle)
    {
        double e = Between(overhang, 0.6, 1.8), lt = Between(axle, 2.5, 7);
        TowGeometry vehicle = new(new AxleLoads(12000, 11000), Wheelbase, e);
        TrailerLoad trailer = new(2000, Tongue(tongue), lt);
        CoupledLoads slack = Hitch.Couple(vehicle, trailer), set = Hitch.Couple(vehicle, trailer, Between(couple, 0, 3000));
        ScaleReading Read(WeighingState state, WeighedParts parts, double load) => new(state, parts, load, 30);
        return (
            [
                Read(WeighingState.Apart, WeighedParts.Front, 12000), Read(WeighingState.Apart, WeighedParts.Rear, 11000),
                Read(WeighingState.Slack, WeighedParts.Front, slack.Front), Read(WeighingState.Slack, WeighedParts.Rear, slack.Rear), Read(WeighingState.Slack, WeighedParts.TrailerAxles, slack.TrailerAxles),
                Read(WeighingState.Set, WeighedParts.Front, set.Front), Read(WeighingState.Set, WeighedParts.Rear, set.Rear), Read(WeighingState.Set, WeighedParts.TrailerAxles, set.TrailerAxles),
                Read(WeighingState.Apart, WeighedParts.TrailerAxles, trailer.AxleLoad), Read(WeighingState.Apart, WeighedParts.Tongue, trailer.TongueMass * Constants.Gravity),
            ], e, lt);
    }
}
