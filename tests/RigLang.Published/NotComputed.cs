namespace RigLang.Published;

/// <summary>What was read in the sources and has a number, but no model that gives it; told on the page so that nobody looks for it in vain.</summary>
internal static class NotComputed
{
    public static IReadOnlyList<(string Source, string Says, string Why)> All { get; } =
    [
        ("49 CFR 571.3(b)", "what the axle, gross and combined ratings are", "definitions: the facts of the language carry them"),
        ("49 CFR 571.110 S4.3, S9.3.4(e)", "full propane counts as unloaded weight, water and the tongue of a towed trailer as cargo", "the user lists both under `aboard` or in a load"),
        ("StVZO 41(9)", "trailers of two or more axles brake with 5.0 m/s² at least", "the trailer's brake ratio is a fact, not a result"),
        ("StVZO 41(10)", "overrun brakes up to 3.50 t", "42(1) ends the towed mass of cars there already"),
        ("9th exemption regulation, section 3", "tyres younger than 6 years", "a limit of law, looked at by a check with tests of its own"),
        ("49 CFR 393.52(d)", "service stops of 20, 25 and 40 ft, emergency stops of 54, 66 and 90 ft from 20 mi/h", "by the table's note (c) they contain the time to apply the brakes, and can't be computed from the deceleration"),
        ("40 CFR 1066.310", "56.7 kg for each tyre of a heavy vehicle", "light vehicles only: their turning parts are a share of the mass"),
        ("engineeringtoolbox.com, rolling friction", "0.2 to 0.4 in loose sand", "no surface of the language: nobody tows there at speed"),
        ("EU Joint Research Centre defaults", "friction 0.65 wet, 0.55 in heavy rain, 0.50 in puddles, 0.10 on ice", "`assume friction` of a practice takes them; 0.85 dry is the estimate"),
        ("EU Joint Research Centre defaults", "174, 184 and 161 g of CO2 for each MJ of engine work", "straight lines of low load; engine maps take their place, which bend as full load does"),
        ("US EPA, petrol cars at 20 °F", "−12 % on city trips", "secondary account; cold engines are not modelled"),
        ("published vehicle models", "0.97 for a battery's round trip", "inside drive efficiency and regeneration"),
        ("US EPA certification data 2022", "drag areas of the whole file: saloons 0.62 to 1.05 m²", "computed from the file, which is not in this repository"),
        ("a secondary account of tunnel tests of the 1970s", "a tow vehicle's own drag falls by 43 % with a tall trailer behind", "weak; combinations are estimated as a whole"),
        ("49 CFR 575, docket NHTSA-2000-8298", "the static stability factor is the measure of rollover", "words; the factor is computed, see [stability](physics/stability.md)"),
    ];
}
