using Ohmstead.Synthetic.Text;

namespace Ohmstead.Synthetic.Parts;

/// <summary>Invents readings of parts.</summary>
public static class PartReadings
{
    // Loss factor of an electrolytic by its condition, in thousandths, for ESR = loss factor / (2 pi f C) at 120 Hz.
    private const decimal AngularFrequency = 754m;

    /// <summary>ESR in circuit, as a quick tester gives it.</summary>
    public static FlowLine InCircuit(SyntheticPart part, string? state, bool isWorn, SeededRandom random) =>
        new FlowLine()
            .Add("part", part.Ref)
            .Add("state", state)
            .Add("circuit", "in")
            .Add("frequency", "100 kHz")
            .Add("esr", Figures.Of(Esr(part.Nominal, isWorn ? random.Thousandths(500, 900) : random.Thousandths(20, 45)), "Ω"));

    /// <summary>A part out of circuit as found, or null when parts of its group are not measured.</summary>
    /// <param name="part">The part.</param>
    /// <param name="condition">What condition it is in.</param>
    /// <param name="random">The numbers.</param>
    public static FlowLine? AsFound(SyntheticPart part, PartCondition condition, SeededRandom random)
    {
        var line = new FlowLine().Add("part", part.Ref).Add("circuit", "out");
        return part.Group switch
        {
            PartGroup.Electrolytic => Electrolytic(line, part, condition, random),
            PartGroup.Film => Capacitor(line, part.Nominal * random.Thousandths(960, 1040), random.Thousandths(2, 6) * part.LossScale),
            PartGroup.Ceramic => Capacitor(line, part.Nominal * random.Thousandths(900, 1250), random.Thousandths(8, 16)),
            PartGroup.Resistor => Resistor(line, part.Nominal, condition, random),
            PartGroup.Inductor => line.Add("frequency", "1 kHz")
                .Add("inductance", Figures.Of(part.Nominal * random.Thousandths(960, 1040), "H")),
            PartGroup.Diode => line.Add("forward_voltage", Figures.Of(random.Thousandths(580, 690), "V")),
            PartGroup.Transistor => line.Add("instrument", "tracer-1").Add("gain", Figures.Number(random.Between(80, 320))),
            _ => null,
        };
    }

    /// <summary>A new part from the drawer, before it is fitted.</summary>
    public static FlowLine New(SyntheticPart part, string lot, SeededRandom random) =>
        Leakage(
            new FlowLine()
                .Add("part", part.Ref)
                .Add("lot", lot)
                .Add("state", "new")
                .Add("frequency", "120 Hz")
                .Add("capacitance", Figures.Of(part.Nominal * random.Thousandths(920, 1080), "F"))
                .Add("esr", Figures.Of(Esr(part.Nominal, random.Thousandths(40, 80)), "Ω")),
            part,
            random
        );

    /// <summary>A part after it has been formed again.</summary>
    public static FlowLine Formed(SyntheticPart part, SeededRandom random) =>
        Leakage(
            new FlowLine()
                .Add("part", part.Ref)
                .Add("state", "as left")
                .Add("circuit", "out")
                .Add("frequency", "120 Hz")
                .Add("capacitance", Figures.Of(part.Nominal * random.Thousandths(1020, 1250), "F")),
            part,
            random
        );

    private static FlowLine Electrolytic(FlowLine line, SyntheticPart part, PartCondition condition, SeededRandom random)
    {
        var (factor, loss) = condition switch
        {
            PartCondition.Worn => (random.Thousandths(350, 780), random.Thousandths(500, 900)),
            PartCondition.OnItsLimit => (random.Thousandths(898, 902), random.Thousandths(60, 110)),
            _ => (random.Thousandths(960, 1280), random.Thousandths(50, 110)),
        };
        return line.Add("frequency", "120 Hz")
            .Add("capacitance", Figures.Of(part.Nominal * factor, "F", 4))
            .Add("esr", Figures.Of(Esr(part.Nominal, loss), "Ω"))
            .Add("verdict", condition == PartCondition.Worn && random.Chance(20) ? "out" : null);
    }

    private static FlowLine Capacitor(FlowLine line, decimal capacitance, decimal loss) =>
        line.Add("frequency", "1 kHz").Add("capacitance", Figures.Of(capacitance, "F")).Add("loss_factor", Figures.Number(loss));

    private static FlowLine Resistor(FlowLine line, decimal nominal, PartCondition condition, SeededRandom random)
    {
        var factor = condition switch
        {
            PartCondition.Worn => random.Thousandths(1120, 1300),
            PartCondition.OnItsLimit => random.Thousandths(1049, 1051),
            _ => random.Thousandths(985, 1030),
        };
        return line.Add("resistance", Figures.Of(nominal * factor, "Ω", 4));
    }

    // Well inside the usual limit of 0.01 CV.
    private static FlowLine Leakage(FlowLine line, SyntheticPart part, SeededRandom random)
    {
        var volts = ElectrolyticTemplate.All[part.Template].Volts;
        var leakage = 0.01m * part.Nominal * volts * random.Thousandths(150, 500);
        return line.Add("leakage", Figures.Of(leakage, "A")).Add("after", "2 min").Add("at_voltage", $"{volts} V");
    }

    private static decimal Esr(decimal farads, decimal loss) => loss / (AngularFrequency * farads);
}
