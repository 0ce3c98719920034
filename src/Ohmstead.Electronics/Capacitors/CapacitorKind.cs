namespace Ohmstead.Electronics.Capacitors;

/// <summary>What a capacitor is made of, as far as it decides what may replace it.</summary>
public enum CapacitorKind
{
    /// <summary>Aluminium electrolytic with liquid electrolyte.</summary>
    AluminiumWet,

    /// <summary>Aluminium or tantalum with conductive polymer.</summary>
    Polymer,

    /// <summary>Tantalum with manganese dioxide.</summary>
    TantalumSolid,

    /// <summary>Tantalum with liquid electrolyte.</summary>
    TantalumWet,

    /// <summary>Polyester film.</summary>
    Polyester,

    /// <summary>Polypropylene film.</summary>
    Polypropylene,

    /// <summary>Polystyrene film.</summary>
    Polystyrene,

    /// <summary>Polycarbonate film.</summary>
    Polycarbonate,

    /// <summary>Paper in wax or oil.</summary>
    Paper,

    /// <summary>Metallised paper.</summary>
    MetallisedPaper,

    /// <summary>Ceramic class 1, such as C0G.</summary>
    CeramicClass1,

    /// <summary>Ceramic class 2, such as X7R or Z5U.</summary>
    CeramicClass2,

    /// <summary>Silver mica.</summary>
    Mica,

    /// <summary>A suppression capacitor whose dielectric is not told: its class and ratings are what counts.</summary>
    Suppression,
}

/// <summary>What follows from what a capacitor is made of.</summary>
public static class CapacitorKindFacts
{
    /// <summary>Whether its dielectric is an oxide.</summary>
    public static bool IsElectrolytic(this CapacitorKind kind) =>
        kind is CapacitorKind.AluminiumWet or CapacitorKind.Polymer or CapacitorKind.TantalumSolid or CapacitorKind.TantalumWet;

    /// <summary>Whether it is wound of plastic film.</summary>
    public static bool IsFilm(this CapacitorKind kind) =>
        kind is CapacitorKind.Polyester or CapacitorKind.Polypropylene or CapacitorKind.Polystyrene or CapacitorKind.Polycarbonate;

    /// <summary>Whether it is wound of paper.</summary>
    public static bool IsPaper(this CapacitorKind kind) => kind is CapacitorKind.Paper or CapacitorKind.MetallisedPaper;

    // The kinds that hold their value closely with temperature and time.
    internal static bool IsStable(this CapacitorKind kind) =>
        kind
            is CapacitorKind.CeramicClass1
                or CapacitorKind.Mica
                or CapacitorKind.Polystyrene
                or CapacitorKind.Polypropylene
                or CapacitorKind.Polycarbonate;

    internal static string Words(this CapacitorKind kind) =>
        kind switch
        {
            CapacitorKind.AluminiumWet => "aluminium electrolytic",
            CapacitorKind.Polymer => "polymer",
            CapacitorKind.TantalumSolid => "solid tantalum",
            CapacitorKind.TantalumWet => "wet tantalum",
            CapacitorKind.Polyester => "polyester",
            CapacitorKind.Polypropylene => "polypropylene",
            CapacitorKind.Polystyrene => "polystyrene",
            CapacitorKind.Polycarbonate => "polycarbonate",
            CapacitorKind.Paper => "paper",
            CapacitorKind.MetallisedPaper => "metallised paper",
            CapacitorKind.CeramicClass1 => "class 1 ceramic",
            CapacitorKind.CeramicClass2 => "class 2 ceramic",
            CapacitorKind.Mica => "mica",
            _ => "suppression capacitor",
        };
}
