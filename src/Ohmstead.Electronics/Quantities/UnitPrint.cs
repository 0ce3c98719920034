namespace Ohmstead.Electronics.Quantities;

/// <summary>How a unit that old print and SI read differently is meant: mF is a thousandth of a farad in SI, a millionth on old
/// parts.</summary>
public enum UnitPrint
{
    /// <summary>It was not said. A unit with two meanings is then a fault, never a guess.</summary>
    Unstated,

    /// <summary>As parts were marked before about 1980: mF and MF mean microfarad (common practice).</summary>
    Old,

    /// <summary>As SI has it: m is milli and M is mega.</summary>
    International,
}
