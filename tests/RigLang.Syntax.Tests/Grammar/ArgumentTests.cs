using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Tests.Grammar;

public class ArgumentTests
{
    [Theory]
    [InlineData("wheelbase 2.94 m", "[2.94|m]")]
    [InlineData("wheelbase 2.88m", "[2.88|m]")]
    [InlineData("wheelbase 2.94 furlongs", "[2.94|furlongs]")] // what a unit is, is asked later
    [InlineData("gross-rating 10_400 lb", "[10_400|lb]")]
    [InlineData("drag-coefficient 0.30", "[0.30|]")]
    [InlineData("links 5", "[5|]")]
    [InlineData("gear 1 4.50", "[1|]  [4.50|]")]
    [InlineData("charge-point 60 % 92 kW", "[60|%]  [92|kW]")]
    [InlineData("torque-point 1600 rpm 850 lbf·ft", "[1600|rpm]  [850|lbf·ft]")]
    [InlineData("coast 10 s 30.2 m/s", "[10|s]  [30.2|m/s]")]
    [InlineData("ball 2-5/16 in", "[2-5/16|in]")]
    [InlineData("ball 5/16in", "[5/16|in]")]
    [InlineData("section 3 km at 1:16 speed 60 km/h", "[3|km]  at  [1:16|]  speed  [60|km/h]")]
    [InlineData("section 11 km at -7.4 % speed 50 km/h", "[11|km]  at  [-7.4|%]  speed  [50|km/h]")]
    [InlineData("section 11 km at \u22127.4 %", "[11|km]  at  [\u22127.4|%]")] // the minus sign of typography
    public void Numbers_and_quantities(string line, string shape) => Clean(line, shape);

    [Theory]
    [InlineData("length 33 ft 4 in", "[33|ft 4|in]")]
    [InlineData("length 33ft4in", "[33|ft 4|in]")]
    [InlineData("length 5ft2in", "[5|ft 2|in]")] // not square feet
    [InlineData("length 5ft3.5in", "[5|ft 3.5|in]")]
    [InlineData("length 5ft3-1/2in", "[5|ft 3-1/2|in]")]
    [InlineData("pause 2 h 30 min", "[2|h 30|min]")]
    [InlineData("pause 1 h 20 min 30 s", "[1|h 20|min 30|s]")]
    [InlineData("mass 3 lb 4 oz", "[3|lb 4|oz]")]
    [InlineData("length 33 ft 4 in ± 1 in", "[33|ft 4|in ± 1|in]")]
    public void Compounds_are_one_quantity(string line, string shape) => Clean(line, shape);

    [Theory]
    [InlineData("drag-area 0.92 m2", "[0.92|m2]")]
    [InlineData("drag-area 0.92 m^2", "[0.92|m^2]")]
    [InlineData("drag-area 0.92m²", "[0.92|m²]")]
    [InlineData("yaw-inertia 4400 kg*m2", "[4400|kg*m2]")]
    [InlineData("yaw-damping 900 N·m·s/rad", "[900|N·m·s/rad]")]
    [InlineData("road-load-square 0.0148 lbf/mph²", "[0.0148|lbf/mph²]")]
    [InlineData("consumption 5.4 L/100km", "[5.4|L/100km]")]
    [InlineData("consumption 5.4L/100km", "[5.4|L/100km]")]
    [InlineData("air 14 °C", "[14|°C]")]
    [InlineData("air 16degC", "[16|degC]")]
    [InlineData("price 0.62 AUD/kWh", "[0.62|AUD/kWh]")]
    [InlineData("tank fuel 36 us-gal diesel", "fuel  [36|us-gal]  diesel")]
    [InlineData("wind 12 km/h from 225°", "[12|km/h]  from  [225|°]")]
    public void Units_are_one_word(string line, string shape) => Clean(line, shape);

    [Theory]
    [InlineData("at")]
    [InlineData("behind")]
    [InlineData("ahead")]
    [InlineData("of")]
    [InlineData("high")]
    [InlineData("left")]
    [InlineData("right")]
    [InlineData("on")]
    [InlineData("from")]
    [InlineData("for")]
    [InlineData("within")]
    [InlineData("speed")]
    [InlineData("because")]
    [InlineData("like")]
    [InlineData("least")]
    [InlineData("most")]
    public void A_joining_word_is_never_a_unit(string word) => Clean($"expect damping 5 {word}", $"damping  [5|]  {word}");

    [Theory]
    [InlineData("item children 75 lb + 60 lb at 101 in behind front-axle high 42 in", "children  [75|lb 60|lb]  at  [101|in]  behind  front-axle  high  [42|in]")]
    [InlineData("item gas 2 x 11 kg + 4 kg ± 1 kg", "gas  [2 x 11|kg 4|kg ± 1|kg]")]
    [InlineData("item gas 2 × 11 kg", "gas  [2 x 11|kg]")]
    [InlineData("item gas 20 kg - 3 kg", "gas  [20|kg - 3|kg]")]
    [InlineData("item gas 20 kg \u2212 2 x 3 kg", "gas  [20|kg - 2 x 3|kg]")]
    [InlineData("drag-area 2.55 m² ± 8 %", "[2.55|m² ± 8|%]")]
    [InlineData("drag-area 2.55 m² +- 8%", "[2.55|m² ± 8|%]")]
    [InlineData("drag-area 2.55m²±8%", "[2.55|m² ± 8|%]")]
    public void Sums_and_half_widths(string line, string shape) => Clean(line, shape);

    [Theory]
    [InlineData("limit tongue-ratio 7 % .. 10 %", "tongue-ratio  ([7|%] .. [10|%])")]
    [InlineData("limit tongue-ratio 7%..10%", "tongue-ratio  ([7|%] .. [10|%])")]
    [InlineData("limit rating-use < 95 %", "rating-use  (Less [95|%])")]
    [InlineData("limit rating-use <= 95 %", "rating-use  (AtMost [95|%])")]
    [InlineData("limit rating-use ≤95 %", "rating-use  (AtMost [95|%])")]
    [InlineData("expect damping>0.10 at 90 km/h", "damping  (Greater [0.10|])  at  [90|km/h]")]
    [InlineData("expect damping at 90 km/h >= 0.10", "damping  at  [90|km/h]  (AtLeast [0.10|])")]
    [InlineData("expect damping ≥ 0.10", "damping  (AtLeast [0.10|])")]
    [InlineData("expect front-axle-load  = 1180 kg ± 15 kg", "front-axle-load  (Equal [1180|kg ± 15|kg])")]
    public void Ranges_and_bounds(string line, string shape) => Clean(line, shape);

    [Theory]
    [InlineData("yaw-inertia ?", "(? None  at - = - within -)")]
    [InlineData("speed ? for energy-left = 30 % within 60 km/h .. 95 km/h", "(? Value energy-left at - = [30|%] within ([60|km/h] .. [95|km/h]))")]
    [InlineData("speed ? for damping at 90 km/h = 0.1", "(? Value damping at [90|km/h] = [0.1|] within -)")]
    [InlineData("speed ? least total-time", "(? Least total-time at - = - within -)")]
    [InlineData("restoration ? most damping within 0 % .. 100 %", "(? Most damping at - = - within ([0|%] .. [100|%]))")]
    public void Questions(string line, string shape) => Clean(line, shape);

    [Theory]
    [InlineData("depart 2026-10-03 08:15 +10:00", "(date 2026-10-03 clock 08:15 offset +10:00 week )")]
    [InlineData("until 2026-10-04 08:30", "(date 2026-10-04 clock 08:30 offset  week )")]
    [InlineData("date 2026-09-05", "(date 2026-09-05 clock  offset  week )")]
    [InlineData("local-time +09:30", "(date  clock  offset +09:30 week )")]
    [InlineData("local-time -03:00", "(date  clock  offset -03:00 week )")]
    [InlineData("tyres-made 2024-W18", "(date  clock  offset  week 2024-W18)")]
    public void Moments(string line, string shape) => Clean(line, shape);

    [Theory]
    [InlineData("allow RL301 because \"yes # no\"", "RL301  because  \"yes # no\"")]
    [InlineData("allow no-sway-device because \"Rented\"", "no-sway-device  because  \"Rented\"")]
    [InlineData("without item bicycles", "item  bicycles")]
    [InlineData("licence b96", "b96")]
    [InlineData("leg yard-again \"Yard\"", "yard-again  \"Yard\"")]
    [InlineData("scale front left 598 kg", "front  left  [598|kg]")]
    [InlineData("item x 5 kg", "x  [5|kg]")] // x counts only behind a number
    [InlineData("item 車輪 5 kg", "車輪  [5|kg]")]
    [InlineData("note \"\"", "\"\"")]
    public void Words_and_texts(string line, string shape) => Clean(line, shape);

    [Theory]
    [InlineData("gross-rating 4,032 lb", "!4,032 lb!")]
    [InlineData("height 5' 6\" # high", "!5' 6\"!")]
    [InlineData("motor-torque 560 N m", "!560 N m!")]
    [InlineData("speed 90 km / h", "!90 km / h!")]
    [InlineData("mass 1e3 kg at axle", "!1e3 kg!  at  axle")]
    [InlineData("limit tongue-ratio 7-10 % high", "tongue-ratio  !7-10 %!  high")]
    [InlineData("limit tongue-ratio 7 to 10 % high", "tongue-ratio  !7 to 10 %!  high")]
    [InlineData("limit tongue-ratio 7 % to 10 %", "tongue-ratio  !7 % to 10 %!")]
    [InlineData("limit tongue-ratio between 7 % and 10 % high", "tongue-ratio  !between 7 % and 10 %!  high")]
    [InlineData("limit tongue-ratio 7 % \u2013 10 %", "tongue-ratio  !7 % \u2013 10 %!")]
    [InlineData("limit tongue-ratio 7 % ... 10 %", "tongue-ratio  !7 % ... 10 %!")]
    [InlineData("limit tongue-ratio 7...10 %", "tongue-ratio  !7...10 %!")]
    [InlineData("mass (5 kg + 3 kg) high", "!(5 kg + 3 kg)!  high")]
    [InlineData("mass (5 + 3) kg", "!(5 + 3) kg!")]
    [InlineData("body (mpv) # c", "!(mpv)!")]
    [InlineData("mass 5 kg )", "[5|kg]  !)!")]
    [InlineData("mass 5 kg +", "[5|kg]  !+!")]
    [InlineData("mass 5 @@ § high", "[5|]  !@@ §!  high")]
    public void What_cannot_be_read_is_one_stray_piece_and_the_rest_still_counts(string line, string shape)
    {
        Shape.Of(line).Should().Be(shape);
        Fixture.Line(line).Findings.Should().ContainSingle();
    }

    [Theory]
    [InlineData("Item Driver 84 kg At 1.42 m behind Front_Axle", "driver  [84|kg]  at  [1.42|m]  behind  front-axle")]
    [InlineData("item né\u200Be 5 kg", "née  [5|kg]")]
    public void A_misspelt_name_is_reported_and_read_as_it_should_be(string line, string shape)
    {
        Shape.Of(line).Should().Be(shape);
        Fixture.Fact(line).Keyword.Text.Should().Be("item");
        Fixture.Line(line).Findings.Should().NotBeEmpty();
    }

    [Theory]
    [InlineData("12 kg")]
    [InlineData("\"text\" 5")]
    [InlineData("± , ( 4,032")]
    [InlineData("@@ wheelbase")]
    public void A_line_without_a_keyword_is_kept_reported_once_and_belongs_to_nothing(string line)
    {
        var file = FileSyntax.Parse("vehicle van\n    mass 5 kg\n    " + line);
        file.Lines[2].Statement.Should().BeOfType<StrayLineSyntax>();
        file.Declarations[0].Nodes.Should().ContainSingle();
        file.Findings().Should().ContainSingle().Which.Finding.Check.Slug.Should().Be("line-without-keyword");
    }

    [Theory]
    [InlineData("item children 75lb+60lb", "children  [75|lb 60|lb]")]
    [InlineData("item children 75 lb -60 lb", "children  [75|lb - 60|lb]")]
    [InlineData("item gas 2x9kg", "gas  [2 x 9|kg]")]
    [InlineData("item gas 2 x9 kg", "gas  [2 x 9|kg]")]
    [InlineData("start home\"Home\"", "home  \"Home\"")]
    [InlineData("torque-point 5kg6in", "[5|kg]  [6|in]")]
    public void A_missing_blank_is_reported_and_read(string line, string shape)
    {
        Shape.Of(line).Should().Be(shape);
        Fixture.Line(line).Findings.Should().OnlyContain(finding => finding.Check.Slug == "missing-blank").And.ContainSingle();
    }

    [Theory]
    [InlineData("wheelbase 2.94 m # measured", "# measured")]
    [InlineData("wheelbase 2.94 m #measured", "#measured")]
    [InlineData("note \"# no\" # yes", "# yes")]
    [InlineData("note \"# no\"", null)]
    [InlineData("# only", "# only")]
    public void Comments_begin_at_a_blank_outside_text(string line, string? comment)
    {
        var read = Fixture.Line(line);
        (read.Comment is { } span ? read.TextOf(span) : null).Should().Be(comment);
    }

    [Theory]
    [InlineData("7 to 10 %", "7 % .. 10 %")]
    [InlineData("7 % to 10 %", "7 % .. 10 %")]
    [InlineData("between 7 and 10 kg", "7 kg .. 10 kg")]
    [InlineData("900 g \u2013 1 kg", "900 g .. 1 kg")]
    [InlineData("7...10", "7 .. 10")]
    public void A_range_in_words_is_written_with_dots(string typed, string written) =>
        Fixture.Line($"limit x {typed}").Findings.Should().ContainSingle().Which.Fixes.Should().ContainSingle().Which.NewText.Should().Be(written);

    private static void Clean(string line, string shape)
    {
        Shape.Of(line).Should().Be(shape);
        Fixture.Line(line).Findings.Should().BeEmpty();
    }
}
