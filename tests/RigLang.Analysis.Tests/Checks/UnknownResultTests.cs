namespace RigLang.Analysis.Tests.Checks;

public class UnknownResultTests
{
    [Theory]
    [InlineData("expect fuel-left > 40 %", "`fuel-left` is of the kind volume, for instance 20 L; so nothing is tested here")]
    [InlineData("expect energy-lefd > 40 %", "No result is called `energy-lefd`, so nothing is tested here. Did you mean `energy-left`?")]
    [InlineData("expect happiness > 40 %", "No result is called `happiness`, so nothing is tested here.")]
    [InlineData("expect arrival < 2 kg", "`arrival` is of the kind time, for instance 20 min; so nothing is tested here")]
    [InlineData("expect energy-left 10 % .. 5 kg", "`energy-left` is of the kind ratio, for instance 20 %; so nothing is tested here")]
    [InlineData("expect energy-left 60 % .. 40 %", "`60 % .. 40 %` runs from high to low, so nothing can lie in it. Write `40 % .. 60 %`.")]
    [InlineData("expect damping > 0.10 at 90 kg", "Behind `at` stands a speed, for instance 20 km/h; so nothing is tested here.")]
    public void A_test_that_nobody_can_carry_out_is_an_error(string line, string message) =>
        Study.Findings($"trip p\n    leg a\n        {line}\n").Single(finding => finding.Check.Slug == "unknown-result").Message.Should().StartWith(message);

    [Theory]
    [InlineData("expect energy-left > 18 %")]
    [InlineData("expect total-cost < 60 AUD")]
    [InlineData("expect arrival < 3 h 20 min")]
    [InlineData("expect fuel-left 10 L .. 5 us-gal")]
    public void One_that_can_is_not(string line) => Study.Slugs($"trip p\n    leg a\n        {line}\n").Should().NotContain("unknown-result");
}
