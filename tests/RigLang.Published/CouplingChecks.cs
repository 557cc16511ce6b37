using RigLang.Mechanics;
using static RigLang.Published.Provenance;

namespace RigLang.Published;

internal static class CouplingChecks
{
    private const string German = "StVZO, StVO and the 9th exemption regulation, federal law texts in the state of 2022-03-26";
    private const string Us = "49 CFR 571.110";

    public static IEnumerable<PublishedCheck> All =>
    [
        new("towed mass by law", German + ", StVZO 42(1)", Read, "car 2400 kg gross, not off-road", "largest braked trailer, kg", 2400, 0.5, () => GermanTowing.LargestBraked(2400, false)),
        new("towed mass by law", German + ", StVZO 42(1)", Read, "off-road vehicle 2400 kg gross", "largest braked trailer, kg", 3500, 0.5, () => GermanTowing.LargestBraked(2400, true)),
        new("towed mass by law", German + ", StVZO 42(2)", Read, "kerb mass 1170 kg", "largest unbraked trailer, kg", 622.5, 0.5, () => GermanTowing.LargestUnbraked(1170)),
        new("towed mass by law", German + ", StVZO 42(2)", Read, "kerb mass 1650 kg", "largest unbraked trailer, kg", 750, 0.5, () => GermanTowing.LargestUnbraked(1650)),
        new("nose load by law", German + ", StVZO 44(3)", Read, "trailer 500 kg", "least nose load, kg", 20, 0.01, () => GermanTowing.LeastNose(500)),
        new("nose load by law", German + ", StVZO 44(3)", Read, "trailer 1400 kg", "least nose load, kg", 25, 0.01, () => GermanTowing.LeastNose(1400)),
        new("nose load by law", German + ", StVZO 44(3)", Read, "trailer 4000 kg", "least nose load, kg", 160, 0.01, () => GermanTowing.LeastNose(4000)),
        new("nose load by law", German + ", StVZO 44(3)", Read, "trailer 4000 kg", "largest nose load, kg", 600, 0.01, () => GermanTowing.LargestNose(4000)),
        new("100 km/h rule", German, Read, "kerb 1650 kg, caravan with dampers, no stabiliser (0.8)", "largest gross trailer mass, kg", 1320, 0.5,
            () => GermanTowing.LargestAtHundred(SpeedRuleTrailer.Caravan, false, 1650, 2200, 1800)),
        new("100 km/h rule", German, Read, "kerb 1650 kg, caravan with dampers and stabiliser (1.0)", "largest gross trailer mass, kg", 1650, 0.5,
            () => GermanTowing.LargestAtHundred(SpeedRuleTrailer.Caravan, true, 1650, 2200, 1800)),
        new("100 km/h rule", German, Read, "kerb 1650 kg, trailer without dampers (0.3)", "largest gross trailer mass, kg", 495, 0.5,
            () => GermanTowing.LargestAtHundred(SpeedRuleTrailer.WithoutDampers, false, 1650, 2200, 1800)),
        new("100 km/h rule", German, Read, "kerb 1650 kg, other trailer with stabiliser (1.2), towing rating 1800 kg", "largest gross trailer mass, kg", 1800, 0.5,
            () => GermanTowing.LargestAtHundred(SpeedRuleTrailer.Other, true, 1650, 2200, 1800)),
        new("placard arithmetic", Us + " S9.2", Read, "axle ratings 2 x 1000 kg, tongue 200 to 300 kg, gross 2200 kg", "axle ratings and least tongue together, kg", 2200, 0.1,
            () => 2200 + UsRatings.RecreationTrailerSurplus(2000, 200, 2200)),
        new("placard arithmetic", Us + " S10.1", Read, "gross rating 2441 kg", "late added weight, kg", 36.6, 0.05, () => UsRatings.LateWeightLimit(2441)),
        new("placard arithmetic", Us + " S10.1", Read, "gross rating 5000 kg", "late added weight, kg", 45.4, 0.05, () => UsRatings.LateWeightLimit(5000)),
        new("placard arithmetic", Us + " Table I", Read, "5 seats", "occupants of the normal load", 3, 0.1, () => UsRatings.NormalOccupants(5)),
        new("placard arithmetic", Us + " Table I", Read, "12 seats", "occupants of the normal load", 5, 0.1, () => UsRatings.NormalOccupants(12)),
        new("placard arithmetic", Us + " S4.2.2.2", Read, "2 passenger-car tyres of load index 98 (750 kg) on a trailer axle", "tyre capacity of the axle, kg", 1363.6, 0.05,
            () => TyreLoad.Axle(LoadIndex.Mass(98), 2, true)),
    ];
}
