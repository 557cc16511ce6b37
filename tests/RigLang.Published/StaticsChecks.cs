using RigLang.Mechanics;
using static RigLang.Published.Provenance;

namespace RigLang.Published;

internal static class StaticsChecks
{
    public static IEnumerable<PublishedCheck> All =>
    [
        new("mass centre", "OpenStax, University Physics vol. 1, section 12.1, example 'Center of Gravity of a Car'", Read,
            "wheelbase 2.5 m, 52 % of the weight on the front wheels", "mass centre ahead of the rear axle, m", 1.3, 0.05,
            () => 2.5 - VehicleStatics.MassCentre(new AxleLoads(0.52, 0.48), 2.5)),
        new("hitch pull", "OpenStax, College Physics 2e, chapter 4, problem-solving exercise with car and boat trailer", Read,
            "car 1100 kg, trailer 700 kg, 1900 N at the wheels, 0.550 m/s²", "resistance of both, N", 910, 0.5,
            () => 1900 - new RoadLoad(1100 + 700, new Rolling(0), 0, 0).AccelerationForce(0.550)),
        new("hitch pull", "OpenStax, College Physics 2e, chapter 4, problem-solving exercise with car and boat trailer", Read,
            "as above, 80 % of the resistance on the trailer", "pull at the ball, N", 1113, 1,
            () => Pull.AtBall(700, 0.550, 0.8 * 910)),
    ];
}
