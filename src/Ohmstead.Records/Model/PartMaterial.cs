using Ohmstead.Electronics;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Parts;

namespace Ohmstead.Records.Model;

/// <summary>
/// What a part is made of where its kind does not say it: the junction of a semiconductor, the dielectric of a ceramic, the chemistry of a
/// cell. One row with all that follows from it; there is one object of each.
/// </summary>
public sealed class PartMaterial
{
    private PartMaterial(string name)
    {
        Name = name;
    }

    /// <summary>Silicon.</summary>
    public static PartMaterial Silicon { get; } = new("silicon") { Junction = JunctionDrop.Silicon };

    /// <summary>Germanium.</summary>
    public static PartMaterial Germanium { get; } = new("germanium") { Junction = JunctionDrop.Germanium };

    /// <summary>A metal on silicon.</summary>
    public static PartMaterial Schottky { get; } = new("Schottky") { Junction = JunctionDrop.Schottky };

    /// <summary>Class 1 ceramic that does not move.</summary>
    public static PartMaterial C0G { get; } = new("C0G") { Ageing = CeramicAgeing.C0G };

    /// <summary>Class 2 ceramic of the steadier sort.</summary>
    public static PartMaterial X7R { get; } = new("X7R") { Ceramic = DielectricFigures.CeramicX7R, Ageing = CeramicAgeing.X7R };

    /// <summary>Class 2 ceramic that moves much.</summary>
    public static PartMaterial Z5U { get; } = new("Z5U") { Ceramic = DielectricFigures.CeramicZ5U, Ageing = CeramicAgeing.Z5U };

    /// <summary>Class 2 ceramic that moves most.</summary>
    public static PartMaterial Y5V { get; } = new("Y5V") { Ceramic = DielectricFigures.CeramicZ5U, Ageing = CeramicAgeing.Y5V };

    /// <summary>Lithium with manganese dioxide.</summary>
    public static PartMaterial Lithium { get; } = Cells(CellChemistry.Lithium);

    /// <summary>Nickel-cadmium.</summary>
    public static PartMaterial NickelCadmium { get; } = Cells(CellChemistry.NickelCadmium);

    /// <summary>Nickel-metal hydride.</summary>
    public static PartMaterial NickelMetalHydride { get; } = Cells(CellChemistry.NickelMetalHydride);

    /// <summary>Alkaline.</summary>
    public static PartMaterial Alkaline { get; } = Cells(CellChemistry.Alkaline);

    /// <summary>Zinc-carbon.</summary>
    public static PartMaterial ZincCarbon { get; } = Cells(CellChemistry.ZincCarbon);

    /// <summary>Silver oxide.</summary>
    public static PartMaterial SilverOxide { get; } = Cells(CellChemistry.SilverOxide);

    /// <summary>Lead and acid.</summary>
    public static PartMaterial LeadAcid { get; } = Cells(CellChemistry.LeadAcid);

    /// <summary>All of them, in the order in which people are told the words.</summary>
    public static WordList<PartMaterial> All { get; } =
        new([
            .. new[]
            {
                Silicon,
                Germanium,
                Schottky,
                C0G,
                X7R,
                Z5U,
                Y5V,
                Lithium,
                NickelCadmium,
                NickelMetalHydride,
                Alkaline,
                ZincCarbon,
                SilverOxide,
                LeadAcid,
            }.Select(material => (material, material.Name)),
        ]);

    /// <summary>Its word in records.</summary>
    public string Name { get; }

    /// <summary>The junction that it makes, or null.</summary>
    public JunctionDrop? Junction { get; private init; }

    /// <summary>The figures of a ceramic of class 2, or null.</summary>
    public DielectricFigures? Ceramic { get; private init; }

    /// <summary>How a ceramic ages, or null.</summary>
    public AgeingRate? Ageing { get; private init; }

    /// <summary>The chemistry of a cell, or null.</summary>
    public CellChemistry? Cell { get; private init; }

    /// <summary>Its name.</summary>
    public override string ToString() => Name;

    private static PartMaterial Cells(CellChemistry chemistry) => new(chemistry.Name) { Cell = chemistry };
}
