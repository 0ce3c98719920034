using System.Collections.Frozen;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;

namespace Ohmstead.PartsLists;

/// <summary>A part that a record has already, with its values in the same words as a list that was read.</summary>
/// <param name="Part">The part.</param>
/// <param name="Path">The file that says so.</param>
internal sealed record KnownPart(Part Part, string Path)
{
    private static readonly FrozenDictionary<string, Func<PartValues, string?>> ByKey = new (Key Key, Func<PartValues, string?> Of)[]
    {
        (PartShape.Role, part => part.Role?.Text),
        (PartShape.Capacitance, part => In(part.Capacitance)),
        (PartShape.Resistance, part => In(part.Resistance)),
        (PartShape.Inductance, part => In(part.Inductance)),
        (PartShape.Tolerance, part => part.Tolerance?.Value.ToString()),
        (PartShape.RatedVoltage, part => In(part.RatedVoltage)),
        (PartShape.WorkingVoltage, part => In(part.WorkingVoltage)),
        (PartShape.Temperature, part => In(part.Temperature)),
        (PartShape.Power, part => In(part.Power)),
        (PartShape.Current, part => In(part.Current)),
        (PartShape.Speed, part => part.Speed?.Text),
        (PartShape.Breaking, part => part.Breaking?.Text),
        (PartShape.Standard, part => part.Standard?.Text),
        (PartShape.Frequency, part => In(part.Frequency)),
        (PartShape.LossFactorLimit, part => In(part.LossFactorLimit)),
        (PartShape.EsrLimit, part => In(part.EsrLimit)),
        (PartShape.EsrLow, part => In(part.EsrLow)),
        (PartShape.EsrFrequency, part => In(part.EsrFrequency)),
        (PartShape.LeakageLimit, part => In(part.LeakageLimit)),
        (PartShape.Low, part => In(part.Low)),
        (PartShape.High, part => In(part.High)),
        (PartShape.Life, part => In(part.Life)),
        (PartShape.RippleCurrent, part => In(part.RippleCurrent)),
        (PartShape.Material, part => part.Material?.Text),
        (PartShape.Cells, part => part.Cells?.Text),
        (PartShape.Polarity, part => part.Polarity?.Text),
        (PartShape.SafetyClass, part => part.SafetyClass?.Text),
        (PartShape.Form, part => part.Form?.Text),
        (PartShape.Size, part => part.Size?.Text),
        (PartShape.LeadPitch, part => In(part.LeadPitch)),
        (PartShape.Diameter, part => In(part.Diameter)),
        (PartShape.Height, part => In(part.Height)),
        (PartShape.Maker, part => part.Maker?.Value),
        (PartShape.Series, part => part.Series?.Value),
        (PartShape.Type, part => part.Type?.Value),
        (PartShape.DateCode, part => part.DateCode?.Value),
        (PartShape.Note, part => part.Note?.Value),
    }.ToFrozenDictionary(row => row.Key.Name, row => row.Of, StringComparer.Ordinal);

    /// <summary>The value of a key, or null when the record does not say it.</summary>
    public string? Get(string key) => ByKey.GetValueOrDefault(key)?.Invoke(Part.Values);

    private static string? In(Written<Quantity>? quantity) => quantity is null ? null : QuantityText.Format(quantity.Value);
}
