namespace Ohmstead.Records.Model;

/// <summary>What can hurt.</summary>
public enum HazardKind
{
    /// <summary>Mains parts or a live chassis.</summary>
    Mains,

    /// <summary>A capacitor that keeps its charge.</summary>
    ChargedCapacitor,

    /// <summary>A cathode-ray tube.</summary>
    PictureTube,

    /// <summary>A cell that leaks.</summary>
    LeakingCell,

    /// <summary>A lithium cell.</summary>
    LithiumCell,

    /// <summary>A part filled with oil.</summary>
    OilFilledPart,

    /// <summary>Asbestos.</summary>
    Asbestos,

    /// <summary>A selenium rectifier.</summary>
    SeleniumRectifier,

    /// <summary>Beryllia ceramic.</summary>
    Beryllia,

    /// <summary>Mercury.</summary>
    Mercury,

    /// <summary>Radium paint.</summary>
    Radium,

    /// <summary>Parts hot enough to burn.</summary>
    HotParts,

    /// <summary>A mains suppressor whose case is crazed.</summary>
    CrazedSuppressor,

    /// <summary>Lead solder and rosin fume.</summary>
    LeadAndFlux,

    /// <summary>The primary side of a switching supply.</summary>
    SwitchingSupply,

    /// <summary>A pack of rechargeable cells.</summary>
    CellPack,

    /// <summary>Electrolyte on the board.</summary>
    LeakedElectrolyte,
}
