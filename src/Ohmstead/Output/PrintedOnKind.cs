using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Markings;
using Ohmstead.Records.Model;

namespace Ohmstead.Output;

/// <summary>Which prints may stand on a part of a kind.</summary>
internal static class PrintedOnKind
{
    /// <summary>The parts that carry the same prints.</summary>
    public static PrintedOn For(PartKind kind) =>
        kind.Family switch
        {
            PartFamily.Resistor => PrintedOn.Resistor,
            PartFamily.Inductor => PrintedOn.Inductor,
            PartFamily.Fuse => PrintedOn.Fuse,
            PartFamily.Capacitor => kind.Capacitor switch
            {
                CapacitorKind.Suppression => PrintedOn.Suppression,
                CapacitorKind.TantalumSolid or CapacitorKind.TantalumWet => PrintedOn.Tantalum,
                CapacitorKind.CeramicClass1 or CapacitorKind.CeramicClass2 or CapacitorKind.Mica => PrintedOn.Ceramic,
                CapacitorKind.AluminiumWet or CapacitorKind.Polymer => PrintedOn.Electrolytic,
                _ => PrintedOn.Film,
            },
            _ => PrintedOn.Other,
        };
}
