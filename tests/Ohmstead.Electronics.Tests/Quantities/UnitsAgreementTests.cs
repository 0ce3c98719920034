using System.Globalization;
using CsCheck;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Tests.Quantities;

/// <summary>Prefixes and conversions against a general-purpose units library.</summary>
public class UnitsAgreementTests
{
    private static readonly (string Unit, Dimension Dimension, Func<double, double> Expected)[] Units =
    [
        ("pF", Dimension.Capacitance, x => UnitsNet.ElectricCapacitance.FromPicofarads(x).Farads),
        ("nF", Dimension.Capacitance, x => UnitsNet.ElectricCapacitance.FromNanofarads(x).Farads),
        ("µF", Dimension.Capacitance, x => UnitsNet.ElectricCapacitance.FromMicrofarads(x).Farads),
        ("mΩ", Dimension.Resistance, x => UnitsNet.ElectricResistance.FromMilliohms(x).Ohms),
        ("kΩ", Dimension.Resistance, x => UnitsNet.ElectricResistance.FromKiloohms(x).Ohms),
        ("MΩ", Dimension.Resistance, x => UnitsNet.ElectricResistance.FromMegaohms(x).Ohms),
        ("nH", Dimension.Inductance, x => UnitsNet.ElectricInductance.FromNanohenries(x).Henries),
        ("mH", Dimension.Inductance, x => UnitsNet.ElectricInductance.FromMillihenries(x).Henries),
        ("mV", Dimension.Voltage, x => UnitsNet.ElectricPotential.FromMillivolts(x).Volts),
        ("kV", Dimension.Voltage, x => UnitsNet.ElectricPotential.FromKilovolts(x).Volts),
        ("µA", Dimension.Current, x => UnitsNet.ElectricCurrent.FromMicroamperes(x).Amperes),
        ("pA", Dimension.Current, x => UnitsNet.ElectricCurrent.FromPicoamperes(x).Amperes),
        ("mW", Dimension.Power, x => (double)UnitsNet.Power.FromMilliwatts(x).Watts),
        ("mJ", Dimension.Energy, x => UnitsNet.Energy.FromMillijoules(x).Joules),
        ("Wh", Dimension.Energy, x => UnitsNet.Energy.FromWattHours(x).Joules),
        ("mAh", Dimension.Charge, x => UnitsNet.ElectricCharge.FromMilliampereHours(x).Coulombs),
        ("kHz", Dimension.Frequency, x => UnitsNet.Frequency.FromKilohertz(x).Hertz),
        ("min", Dimension.Duration, x => UnitsNet.Duration.FromMinutes(x).Seconds),
        ("h", Dimension.Duration, x => UnitsNet.Duration.FromHours(x).Seconds),
        ("d", Dimension.Duration, x => UnitsNet.Duration.FromDays(x).Seconds),
        ("weeks", Dimension.Duration, x => UnitsNet.Duration.FromWeeks(x).Seconds),
        ("in", Dimension.Length, x => UnitsNet.Length.FromInches(x).Meters),
        ("mil", Dimension.Length, x => UnitsNet.Length.FromMils(x).Meters),
        ("cm", Dimension.Length, x => UnitsNet.Length.FromCentimeters(x).Meters),
        ("%", Dimension.Ratio, x => UnitsNet.Ratio.FromPercent(x).DecimalFractions),
        ("ppm", Dimension.Ratio, x => UnitsNet.Ratio.FromPartsPerMillion(x).DecimalFractions),
        ("°C", Dimension.Temperature, x => UnitsNet.Temperature.FromDegreesCelsius(x).DegreesCelsius),
    ];

    [Fact]
    public void Every_unit_converts_as_a_general_units_library_has_it() =>
        Gen.Select(Gen.Int[1, 999_999], Gen.Int[0, Units.Length - 1])
            .Sample(
                (thousandths, place) =>
                {
                    var unit = Units[place];
                    var number = thousandths / 1000m;
                    var read = QuantityText.Parse($"{number.ToString(CultureInfo.InvariantCulture)} {unit.Unit}", unit.Dimension).Value;
                    var expected = unit.Expected((double)number);
                    // That library's ampere-hour is rounded to twelve digits; 3600 C is exact.
                    return Math.Abs((double)read.Value - expected) <= 1e-11 * expected;
                }
            );
}
