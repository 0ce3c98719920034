namespace Ohmstead.Electronics.Parts;

/// <summary>The least insulation between mains and what can be touched. The requirements differ by seven: whoever says pass says by which.</summary>
/// <remarks>Never a permission: see <see cref="Hazards.SafetyNotice.Defer"/>. A flash test is no test of equipment in use, it may harm sound insulation.</remarks>
/// <param name="Requirement">Whose requirement it is.</param>
/// <param name="LeastOhms">The least resistance in ohm.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record MainsInsulation(string Requirement, decimal LeastOhms, Source Source)
{
    private static readonly Source InService = Source.Published("IEE Wiring Matters, autumn 2005, page 16; PASS and PAT testing guides, UK", "insulation, in service");

    internal static readonly Source Standard = Source.FromMemory("IEC 60335-1, IEC 60065", "insulation resistance");

    /// <summary>How it is measured, and what makes sound equipment fail.</summary>
    public const string Conditions = "500 V d.c. for 5 s, line and neutral joined, to earth or the case; a mains filter or a surge part fails it without fault, and electronics are tested at 250 V d.c. or by touch current instead";

    /// <summary>The requirements known here, the laxest first.</summary>
    public static IReadOnlyList<MainsInsulation> All { get; } =
    [
        new("class I in service", 1_000_000m, InService),
        new("class II in service", 2_000_000m, InService),
        new("basic insulation, IEC 60335-1 and 60065", 2_000_000m, Standard),
        new("reinforced insulation, IEC 60065", 4_000_000m, Standard),
        new("reinforced insulation, IEC 60335-1", 7_000_000m, Standard),
    ];

    /// <summary>True when a resistance is enough; exactly on the limit is.</summary>
    public bool Holds(decimal ohms) => ohms >= LeastOhms;
}
