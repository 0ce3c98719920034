namespace Ohmstead.Electronics.Life;

/// <summary>The fuller life formulas of makers. Each holds for its maker's parts; they disagree, and the bare rule is the safe
/// default.</summary>
public static class MakersLifeForms
{
    /// <summary>Ambient temperature with ripple as a difference of core rises.</summary>
    public static Source RippleFormSource { get; } =
        Source.Published("Rubycon, life of aluminium electrolytic capacitors, technical note", "105 degrees and lower");

    /// <summary>Temperature, ripple and voltage as three factors.</summary>
    public static Source ThreeFactorFormSource { get; } =
        Source.Published("Albertsen, Electrolytic Capacitor Lifetime Estimation, Jianghai Europe", "read in a quotation");

    /// <summary>Core temperature with a linear voltage multiplier.</summary>
    public static Source CoreFormSource { get; } =
        Source.FromMemory("Cornell Dubilier, Aluminum Electrolytic Capacitor Application Guide", "life");

    /// <summary>Linear voltage factor.</summary>
    public static Source LinearVoltageFormSource { get; } = Source.FromMemory("Illinois Capacitor, life calculators", null);

    /// <summary>Case temperature.</summary>
    public static Source CaseFormSource { get; } = Source.Published("Kendeil, Useful Life (kendeil.com)", null);

    /// <summary>Lb 2^((Tmax - Ta)/10) 2^(d0/(10 - d0/4) - d/(10 - d/4)), d = d0 (I/I0)² the core's rise. Refused when d reaches 40
    /// K.</summary>
    public static Outcome<LifeEstimate> RippleForm(
        double ratedHours,
        double ratedCelsius,
        double ambientCelsius,
        double ratedRiseKelvin,
        double rippleShare
    )
    {
        double rise = ratedRiseKelvin * rippleShare * rippleShare;
        return Checked(
                ratedHours,
                ratedCelsius,
                ambientCelsius,
                Domain.Within("rated rise", ratedRiseKelvin, 0.0, 39),
                Domain.NotNegative("ripple share", rippleShare),
                Domain.Within("rise of the core", rise, 0.0, 39)
            )
            .Compute(() =>
            {
                double exponent = (ratedRiseKelvin / (10 - (0.25 * ratedRiseKelvin))) - (rise / (10 - (0.25 * rise)));
                double hours = ratedHours * TenKelvinRule.Factor(ratedCelsius, ambientCelsius) * Math.Pow(2, exponent);
                var working = new LazyText(() =>
                    $"{Temperature(ratedHours, ratedCelsius, ambientCelsius)} x 2^{Figures.Text(exponent, 4)} for a core rise of "
                    + $"{Figures.Text(rise, 4)} K = {Figures.Text(hours)} h"
                );
                return Estimate(hours, "ripple form", working, RippleFormSource, ratedCelsius, ambientCelsius);
            });
    }

    /// <summary>L0 K_T K_R K_V: ten-kelvin factor, Ki^(A dT0/10) with A = 1 - (Ia/Ir)², and (Ua/Ur)^-2.5 held below 0.6.</summary>
    /// <remarks>Ki is 2, but 4 when the ripple is over its rating on 105 degree parts.</remarks>
    public static Outcome<LifeEstimate> ThreeFactorForm(
        double ratedHours,
        double ratedCelsius,
        double ambientCelsius,
        double ratedRiseKelvin,
        double rippleShare,
        double voltageShare
    ) =>
        Checked(
                ratedHours,
                ratedCelsius,
                ambientCelsius,
                Domain.Within("rated rise", ratedRiseKelvin, 0.0, 39),
                Domain.Within("ripple share", rippleShare, 0.0, 5),
                Domain.Within("voltage share", voltageShare, 0.0, 1)
            )
            .Compute(() =>
            {
                double kelvinFactor = TenKelvinRule.Factor(ratedCelsius, ambientCelsius);
                double rippleFactor = RippleFactor(ratedCelsius, ratedRiseKelvin, rippleShare);
                double voltageFactor = Math.Pow(Math.Max(voltageShare, 0.6), -2.5);
                double hours = ratedHours * kelvinFactor * rippleFactor * voltageFactor;
                var working = new LazyText(() =>
                    $"{Figures.Text(ratedHours)} h x {Figures.Text(kelvinFactor, 4)} x {Figures.Text(rippleFactor)} x "
                    + $"{Figures.Text(voltageFactor)} = {Figures.Text(hours)} h"
                );
                return Estimate(hours, "three-factor form", working, ThreeFactorFormSource, ratedCelsius, ambientCelsius);
            });

    /// <summary>The ripple factor of the three-factor form.</summary>
    public static double RippleFactor(double ratedCelsius, double ratedRiseKelvin, double rippleShare)
    {
        double baseFactor = rippleShare > 1 && ratedCelsius >= 105 ? 4 : 2;
        return Math.Pow(baseFactor, (1 - (rippleShare * rippleShare)) * ratedRiseKelvin / 10);
    }

    /// <summary>Lb Mv 2^((Tm - Tc)/10) on core temperatures, Mv = 4.3 - 3.3 Va/Vr.</summary>
    public static Outcome<LifeEstimate> CoreForm(double ratedHours, double ratedCoreCelsius, double coreCelsius, double voltageShare) =>
        Checked(ratedHours, ratedCoreCelsius, coreCelsius, Domain.Within("voltage share", voltageShare, 0.0, 1))
            .Compute(() =>
            {
                double voltageFactor = 4.3 - (3.3 * voltageShare);
                double hours = ratedHours * voltageFactor * TenKelvinRule.Factor(ratedCoreCelsius, coreCelsius);
                var working = new LazyText(() =>
                    $"{Temperature(ratedHours, ratedCoreCelsius, coreCelsius)} x {Figures.Text(voltageFactor, 4)} = {Figures.Text(hours)} h"
                );
                return Estimate(hours, "core form", working, CoreFormSource, ratedCoreCelsius, coreCelsius);
            });

    /// <summary>L1 (Vr/Vo) 2^((Tm - Ta)/10).</summary>
    public static Outcome<LifeEstimate> LinearVoltageForm(
        double ratedHours,
        double ratedCelsius,
        double ambientCelsius,
        double voltageShare
    ) =>
        Checked(ratedHours, ratedCelsius, ambientCelsius, Domain.Within("voltage share", voltageShare, 0.1, 1))
            .Compute(() =>
            {
                double hours = ratedHours / voltageShare * TenKelvinRule.Factor(ratedCelsius, ambientCelsius);
                var working = new LazyText(() =>
                    $"{Temperature(ratedHours, ratedCelsius, ambientCelsius)} / {Figures.Text(voltageShare)} = {Figures.Text(hours)} h"
                );
                return Estimate(hours, "linear voltage form", working, LinearVoltageFormSource, ratedCelsius, ambientCelsius);
            });

    /// <summary>Lop 2^((Tmax + 10 - Tc)/10), Tc the case's temperature.</summary>
    public static Outcome<LifeEstimate> CaseForm(double ratedHours, double ratedCelsius, double caseCelsius) =>
        Checked(ratedHours, ratedCelsius, caseCelsius)
            .Compute(() =>
            {
                double hours = ratedHours * TenKelvinRule.Factor(ratedCelsius + 10, caseCelsius);
                return Estimate(
                    hours,
                    "case form",
                    new(() => $"{Temperature(ratedHours, ratedCelsius + 10, caseCelsius)} = {Figures.Text(hours)} h"),
                    CaseFormSource,
                    ratedCelsius,
                    caseCelsius
                );
            });

    /// <summary>A voltage factor of the general form (Vr/V)^n. Makers' n runs from 1 to 5 and beyond; 0 takes no credit.</summary>
    public static Outcome<double> VoltageFactor(double voltageShare, double exponent) =>
        Domain
            .Require(Domain.Within("voltage share", voltageShare, 0.1, 1), Domain.Within("exponent", exponent, 0, 12))
            .Compute(() => Math.Pow(1 / voltageShare, exponent));

    private static LifeEstimate Estimate(
        double hours,
        string model,
        LazyText working,
        Source source,
        double ratedCelsius,
        double celsius
    ) => new(hours, model, working, source) { Remarks = [.. TenKelvinRule.Remarks(ratedCelsius, celsius)] };

    private static string Temperature(double hours, double rated, double celsius) =>
        $"{Figures.Text(hours)} h x 2^(({Figures.Text(rated)} - {Figures.Text(celsius)}) / 10)";

    private static Domain Checked(double ratedHours, double ratedCelsius, double celsius, params ReadOnlySpan<string?> others) =>
        Domain.Require([
            Domain.Positive("rated life", ratedHours),
            Domain.Within("rated temperature", ratedCelsius, 20, 150),
            Domain.Within("temperature", celsius, -60, 200),
            .. others,
        ]);
}
