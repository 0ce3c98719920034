using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Records.Binding;

/// <summary>Reads parts.</summary>
public static class PartBinding
{
    /// <summary>A part in its place, or null when its reference or kind could not be read.</summary>
    public static Part? Part(Fields fields, string? fromDesign) =>
        fields.Id(PartShape.Ref.Name) is { } reference && Values(fields, isLot: false) is { } values
            ? new Part(reference, values, fields.Spot, fromDesign)
            : null;

    /// <summary>What a part is, or null when its kind could not be read.</summary>
    public static PartValues? Values(Fields fields, bool isLot) =>
        fields.Word(PartShape.Kind.Name, Vocabulary.PartKinds) is { } kind ? Values(fields, kind, isLot) : null;

    /// <summary>Reads the values of a part whose kind is not written, so that what cannot be read is told; they are of nothing.</summary>
    internal static PartValues ReadLoose(Fields fields) => Values(fields, new(PartKinds.Fuse, string.Empty, fields.Spot), isLot: true);

    private static PartValues Values(Fields fields, Written<PartKind> kind, bool isLot)
    {
        var dimension = kind.Value.MarkedIn;
        var capacitance = fields.Quantity("capacitance");
        var resistance = fields.Quantity("resistance");
        var inductance = fields.Quantity("inductance");
        var frequency = fields.Quantity("frequency");
        var rated = fields.Quantity("rated_voltage");
        var (nominal, marked) = dimension switch
        {
            Dimension.Capacitance => (capacitance, "capacitance"),
            Dimension.Resistance => (resistance, "resistance"),
            Dimension.Inductance => (inductance, "inductance"),
            Dimension.Frequency => (frequency, "frequency"),
            Dimension.Voltage => (rated, "rated_voltage"),
            _ => (null, null),
        };

        // Some letters mean nothing without the value they belong to: one that cannot be read has been reported already.
        var isNominalRead = nominal is not null || marked is null || !fields.Holds(marked);
        return new PartValues(kind)
        {
            Capacitance = capacitance,
            Resistance = resistance,
            Inductance = inductance,
            Frequency = frequency,
            Tolerance = isNominalRead ? fields.Tolerance("tolerance", dimension, nominal?.Value) : null,
            RatedVoltage = rated,
            Temperature = fields.Quantity("temperature"),
            Power = fields.Quantity("power"),
            Current = fields.Quantity("current"),
            Speed = fields.Word("speed", Vocabulary.FuseSpeeds),
            Breaking = fields.Word("breaking", Vocabulary.FuseBreakings),
            Standard = fields.Word("standard", Vocabulary.FuseStandards),
            LossFactorLimit = fields.Quantity("loss_factor_limit"),
            EsrLimit = fields.Quantity("esr_limit"),
            EsrFrequency = fields.Quantity("esr_frequency"),
            LeakageLimit = fields.Quantity("leakage_limit"),
            Life = fields.Quantity("life"),
            RippleCurrent = fields.Quantity("ripple_current"),
            Material = fields.Word("material", Vocabulary.Materials),
            Cells = fields.Count("cells"),
            Polarity = fields.Word("polarity", Vocabulary.Polarities),
            SafetyClass = fields.Word("safety_class", Vocabulary.SafetyClasses),
            Form = fields.Word("form", Vocabulary.Forms),
            Size = fields.Word("size", Vocabulary.FuseSizes),
            LeadPitch = fields.Quantity("lead_pitch"),
            Diameter = fields.Quantity("diameter"),
            Height = fields.Quantity("height"),
            Maker = fields.Text("maker"),
            Series = fields.Text("series"),
            Type = fields.Text("type"),
            DateCode = fields.Text("date_code"),
            Note = fields.Text("note"),
            Role = isLot ? null : fields.Word("role", Vocabulary.Roles),
            WorkingVoltage = isLot ? null : fields.Quantity("working_voltage"),
            EsrLow = isLot ? null : fields.Quantity("esr_low"),
            Low = isLot ? null : fields.Quantity("low", dimension),
            High = isLot ? null : fields.Quantity("high", dimension),
        };
    }
}
