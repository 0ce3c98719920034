using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.PartsLists;

/// <summary>A part that a record has already, with its values in the same words as a list that was read.</summary>
/// <param name="Part">The part.</param>
/// <param name="Path">The file that says so.</param>
internal sealed record KnownPart(Part Part, string Path)
{
    /// <summary>The value of a key, or null when the record does not say it.</summary>
    public string? Of(string key)
    {
        var values = Part.Values;
        return key switch
        {
            "role" => values.Role?.Value,
            "capacitance" => In(values.Capacitance),
            "resistance" => In(values.Resistance),
            "inductance" => In(values.Inductance),
            "tolerance" => values.Tolerance?.Value.ToString(),
            "rated_voltage" => In(values.RatedVoltage),
            "working_voltage" => In(values.WorkingVoltage),
            "temperature" => In(values.Temperature),
            "power" => In(values.Power),
            "current" => In(values.Current),
            "speed" => values.Speed?.Value,
            "breaking" => values.Breaking?.Value,
            "frequency" => In(values.Frequency),
            "loss_factor_limit" => In(values.LossFactorLimit),
            "esr_limit" => In(values.EsrLimit),
            "esr_low" => In(values.EsrLow),
            "esr_frequency" => In(values.EsrFrequency),
            "leakage_limit" => In(values.LeakageLimit),
            "low" => In(values.Low),
            "high" => In(values.High),
            "life" => In(values.Life),
            "ripple_current" => In(values.RippleCurrent),
            "material" => values.Material?.Value,
            "cells" => values.Cells?.Text,
            "polarity" => values.Polarity?.Value,
            "safety_class" => values.SafetyClass?.Value,
            "form" => values.Form?.Value,
            "size" => values.Size?.Value,
            "lead_pitch" => In(values.LeadPitch),
            "diameter" => In(values.Diameter),
            "height" => In(values.Height),
            "maker" => values.Maker?.Value,
            "series" => values.Series?.Value,
            "type" => values.Type?.Value,
            "date_code" => values.DateCode?.Value,
            "note" => values.Note?.Value,
            _ => null,
        };
    }

    private static string? In(Written<Quantity>? quantity) => quantity is null ? null : QuantityText.Format(quantity.Value);
}
