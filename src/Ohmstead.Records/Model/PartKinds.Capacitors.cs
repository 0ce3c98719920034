using System.Collections.Immutable;
using Ohmstead.Electronics.Capacitors;

namespace Ohmstead.Records.Model;

/// <content>Capacitors.</content>
public static partial class PartKinds
{
    private static readonly ImmutableArray<Designation> C = [May("C")];

    /// <summary>Aluminium with a liquid electrolyte.</summary>
    public static PartKind AluminiumElectrolytic { get; } =
        Capacitor("aluminium electrolytic", CapacitorKind.AluminiumWet, hasRightWayRound: true);

    /// <summary>Aluminium with a liquid electrolyte and oxide on both foils.</summary>
    public static PartKind BipolarElectrolytic { get; } =
        new("bipolar electrolytic", PartFamily.Capacitor)
        {
            Letters = C,
            Capacitor = CapacitorKind.AluminiumWet,
            IsBipolar = true,
        };

    /// <summary>Aluminium or tantalum with a conductive polymer.</summary>
    public static PartKind PolymerElectrolytic { get; } = Capacitor("polymer electrolytic", CapacitorKind.Polymer, hasRightWayRound: true);

    /// <summary>Tantalum with manganese dioxide.</summary>
    public static PartKind Tantalum { get; } =
        new("tantalum", PartFamily.Capacitor)
        {
            Letters = C,
            Capacitor = CapacitorKind.TantalumSolid,
            HasRightWayRound = true,
            HasTellingName = true,
        };

    /// <summary>Tantalum with a liquid electrolyte.</summary>
    public static PartKind WetTantalum { get; } = Capacitor("wet tantalum", CapacitorKind.TantalumWet, hasRightWayRound: true);

    /// <summary>Polyester film.</summary>
    public static PartKind PolyesterFilm { get; } = Capacitor("polyester film", CapacitorKind.Polyester, DielectricFigures.Polyester);

    /// <summary>Polypropylene film.</summary>
    public static PartKind PolypropyleneFilm { get; } =
        Capacitor("polypropylene film", CapacitorKind.Polypropylene, DielectricFigures.Polypropylene);

    /// <summary>Polystyrene film.</summary>
    public static PartKind PolystyreneFilm { get; } =
        Capacitor("polystyrene film", CapacitorKind.Polystyrene, DielectricFigures.Polystyrene);

    /// <summary>Polycarbonate film.</summary>
    public static PartKind PolycarbonateFilm { get; } =
        Capacitor("polycarbonate film", CapacitorKind.Polycarbonate, DielectricFigures.Polycarbonate);

    /// <summary>Paper in wax or oil.</summary>
    public static PartKind Paper { get; } = Capacitor("paper", CapacitorKind.Paper, DielectricFigures.PaperInWaxOrOil);

    /// <summary>Metallised paper.</summary>
    public static PartKind MetallisedPaper { get; } =
        Capacitor("metallised paper", CapacitorKind.MetallisedPaper, DielectricFigures.MetallisedPaper);

    /// <summary>Class 1 ceramic, such as C0G.</summary>
    public static PartKind CeramicClass1 { get; } =
        new("ceramic class 1", PartFamily.Capacitor)
        {
            Letters = C,
            Capacitor = CapacitorKind.CeramicClass1,
            Dielectric = DielectricFigures.CeramicClass1,
            Materials = [PartMaterial.C0G],
        };

    /// <summary>Class 2 ceramic, such as X7R.</summary>
    public static PartKind CeramicClass2 { get; } =
        new("ceramic class 2", PartFamily.Capacitor)
        {
            Letters = C,
            Capacitor = CapacitorKind.CeramicClass2,
            Materials = [PartMaterial.X7R, PartMaterial.Z5U, PartMaterial.Y5V],
        };

    /// <summary>Silver mica.</summary>
    public static PartKind Mica { get; } =
        new("mica", PartFamily.Capacitor)
        {
            Letters = C,
            Capacitor = CapacitorKind.Mica,
            Dielectric = DielectricFigures.SilverMica,
            HasTellingName = true,
        };

    /// <summary>A capacitor across the mains or to the chassis, whatever it is wound of.</summary>
    public static PartKind SuppressionCapacitor { get; } =
        new("suppression capacitor", PartFamily.Capacitor)
        {
            Letters = C,
            Capacitor = CapacitorKind.Suppression,
            IsSafety = true,
        };

    /// <summary>A capacitor that is set.</summary>
    public static PartKind TrimmerCapacitor { get; } = new("trimmer capacitor", PartFamily.Capacitor) { Letters = C, HasContacts = true };

    private static PartKind Capacitor(
        string name,
        CapacitorKind kind,
        DielectricFigures? dielectric = null,
        bool hasRightWayRound = false
    ) =>
        new(name, PartFamily.Capacitor)
        {
            Letters = C,
            Capacitor = kind,
            Dielectric = dielectric,
            HasRightWayRound = hasRightWayRound,
        };
}
