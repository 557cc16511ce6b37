using RigLang.Mechanics;

namespace RigLang.Published;

public sealed class RegulationTests
{
    /// <summary>Directive 2006/126/EC as FeV 6(1) and 6a carry it (read, state of 2022-03-26).</summary>
    [Theory]
    [InlineData(3500, 750, LicenceCategory.B)]
    [InlineData(2000, 1500, LicenceCategory.B)]
    [InlineData(2000, 1501, LicenceCategory.B96)]
    [InlineData(2450, 1800, LicenceCategory.B96)]
    [InlineData(2451, 1800, LicenceCategory.BE)]
    [InlineData(3500, 3500, LicenceCategory.BE)]
    [InlineData(3500, 3501, LicenceCategory.Larger)]
    [InlineData(3501, 500, LicenceCategory.Larger)]
    [InlineData(double.NaN, 500, LicenceCategory.NotKnown)]
    public void The_licence_follows_from_the_gross_masses(double vehicle, double trailer, LicenceCategory needed) =>
        EuropeanLicence.Needed(vehicle, trailer).Should().Be(needed);

    /// <summary>SAE J684 classes (values from memory).</summary>
    [Theory]
    [InlineData(907, 1)]
    [InlineData(908, 2)]
    [InlineData(1588, 3)]
    [InlineData(1587.5, 2)]
    [InlineData(2268, 4)]
    [InlineData(4535.9, 4)]
    public void A_light_trailers_class_follows_from_its_gross_mass(double mass, int number) => LightTrailerClass.For(mass)!.Number.Should().Be(number);

    [Fact]
    public void A_trailer_beyond_the_light_classes_has_none() => LightTrailerClass.For(4600).Should().BeNull();

    [Fact]
    public void A_50_mm_ball_does_not_fit_a_2_inch_coupling() => CouplingBall.Fits(0.050, 2 * 0.0254).Should().BeFalse();
}
