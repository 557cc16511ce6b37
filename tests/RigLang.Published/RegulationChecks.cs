using RigLang.Mechanics;
using static RigLang.Published.Provenance;

namespace RigLang.Published;

/// <summary>The texts of the law, rule by rule, where they have a number.</summary>
internal static class RegulationChecks
{
    private const string German = "StVZO, StVO and the 9th exemption regulation, federal law texts in the state of 2022-03-26";
    private const string Licence = "directive 2006/126/EC as FeV 6(1) and 6a carry it, state of 2022-03-26";
    private const string Us = "49 CFR 571.110";

    public static IEnumerable<PublishedCheck> All =>
    [
        new("towed mass by law", German + ", StVZO 42(1)", Read, "off-road vehicle 2000 kg gross", "largest braked trailer, kg", 3000, 0.5, () => GermanTowing.LargestBraked(2000, true)),
        new("nose load by law", German + ", StVZO 44(3)", Read, "trailer 20 000 kg", "least nose load, kg", 500, 0.01, () => GermanTowing.LeastNose(20_000)),
        new("nose load by law", German + ", StVZO 44(3)", Read, "trailer 20 000 kg", "largest nose load, kg", 2000, 0.01, () => GermanTowing.LargestNose(20_000)),
        new("nose load by law", German + ", StVZO 44(2)", Read, "nose load above which a jockey wheel is needed", "kg", 50, 0.01, () => GermanTowing.JockeyWheelAbove),
        new("100 km/h rule", German, Read, "kerb 1650 kg, other trailer with dampers (1.1)", "largest gross trailer mass, kg", 1815, 0.5,
            () => GermanTowing.LargestAtHundred(SpeedRuleTrailer.Other, false, 1650, 2200, 2500)),
        new("100 km/h rule", German, Read, "the same with a car of 1700 kg gross", "largest gross trailer mass, kg", 1700, 0.5,
            () => GermanTowing.LargestAtHundred(SpeedRuleTrailer.Other, false, 1650, 1700, 2500)),
        new("speed by law", German + ", StVO 3(3), 18(5)", Read, "with a trailer, outside towns and on motorways", "km/h", 80, 0.01, () => GermanTowing.Speed * 3.6),
        new("speed by law", German + ", 9th exemption", Read, "with a trailer under the exemption", "km/h", 100, 0.01, () => GermanTowing.SpeedWithExemption * 3.6),
        new("parking brake", German + ", StVZO 41(9)", Read, "laden trailer held on", "grade", 0.18, 1e-9, () => RigBraking.TrailerParkingGrade),
        new("speed by law", German + ", 9th exemption section 3", Read, "least speed symbol of the trailer's tyres, L", "km/h", 120, 0.01, () => SpeedSymbols.Speed(SpeedSymbol.L) * 3.6),
        Heaviest(LicenceCategory.B, 3500, 750), Heaviest(LicenceCategory.B, 2000, 1500), Heaviest(LicenceCategory.B96, 2450, 1800), Heaviest(LicenceCategory.B96, 3500, 750),
        Heaviest(LicenceCategory.BE, 2500, 3500),
        new("placard arithmetic", Us + " S3", Read, "one occupant", "kg", 68, 0.5, () => UsRatings.Occupant),
        Occupants(2, 2), Occupants(4, 2), Occupants(10, 3), Occupants(11, 5), Occupants(15, 5), Occupants(16, 7), Occupants(22, 7),
        new("placard arithmetic", Us + " S9.1 with the placard of S4.3.3", Read, "two axles rated 1299 kg, gross 2441 kg", "axle ratings over gross rating, kg", 157, 0.5,
            () => UsRatings.MotorHomeSurplus(2 * 1299, 2441)),
        new("placard arithmetic", Us + " S4.2.2.1", Read, "two tyres of 700 kg, axle rated 1299 kg", "tyres over axle rating, kg", 101, 0.5, () => UsRatings.TyreSurplus(700, 2, false, 1299)),
        new("placard arithmetic", Us + " S4.2.1.2", Read, "share of a tyre's rating that the normal load may use", "–", 0.94, 0.005, () => TyreLoad.NormalLoadShare),
        // A (C) number of the reference by the formula of the rule, which was read.
        Adhesion(0.5, true, 0.4680), Adhesion(0.5, false, 0.5727), Adhesion(0.8, true, 0.6832), Adhesion(0.8, false, 1.1721),
        .. LabelRows(LabelledTyre.Car, "ABCDEFG", [5.9, 7.1, 8.4, 9.8, 9.8, 11.3, 12.9]), .. LabelRows(LabelledTyre.Van, "ABCDEFG", [4.9, 6.1, 7.4, 8.6, 8.6, 9.9, 11.2]),
    ];

    private static PublishedCheck Occupants(int seats, double occupants) =>
        new("placard arithmetic", Us + " Table I", Read, $"{seats} seats", "occupants of the normal load", occupants, 0.1, () => UsRatings.NormalOccupants(seats));

    private static PublishedCheck Heaviest(LicenceCategory licence, double car, double trailer) => new("licence", Licence, Read,
        $"category {licence}, car {car} kg gross", "heaviest trailer by gross mass, kg", trailer, 0.01, () =>
        {
            double low = 0, high = 5000;
            while (high - low > 1e-4)
            {
                double middle = (low + high) / 2;
                (low, high) = EuropeanLicence.Needed(car, middle) <= licence ? (middle, high) : (low, middle);
            }

            return low;
        });

    private static PublishedCheck Adhesion(double rate, bool isFront, double use) => new("grip used when braking", "49 CFR 571.135 S7.4.4(g), the formula; values computed by hand from it", Read,
        $"axles 10 500 and 7500 N, mass centre 0.6 m high, wheelbase 2.7 m, front share 0.65, z {rate}", $"f of the {(isFront ? "front" : "rear")} axle, –", use, 0.00006, () =>
        {
            AdhesionUse found = AdhesionUse.At(new AxleLoads(10_500, 7500), 2.7, 0.6, 0.65, rate);
            return isFront ? found.Front : found.Rear;
        });

    private static IEnumerable<PublishedCheck> LabelRows(LabelledTyre tyre, string letters, double[] limits) => letters.Zip(limits).Select(pair => new PublishedCheck(
        "rolling coefficient", "Regulation (EC) 1222/2009, table A4/1", Read, $"label class {pair.First}, {(tyre == LabelledTyre.Car ? "C1 car" : "C2 van")} tyre", "limit, kg/t", pair.Second, 0.05,
        () => TyreLabel.RollingLimit(tyre, pair.First) * 1000));
}
