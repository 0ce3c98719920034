using System.Collections.Immutable;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Parts;

namespace Ohmstead.Records.Model;

/// <summary>
/// The table of the kinds of part, one row each. Vocabulary, schemas, completion, parts lists, limits, fit and checks read it. The
/// walk-through of the project's README says where a new kind is wired.
/// </summary>
/// <remarks>
/// Class letters by ASME Y14.44 and IEC 81346-2, from memory; BR, IC, RN and SW are common practice. A letter that means several kinds of
/// the vocabulary, or different things by the two standards and on old boards (T, V, D, P, X, M), decides nothing. Materials, ways round
/// and what a voltage means are common knowledge of the trade.
/// </remarks>
public static partial class PartKinds
{
    /// <summary>All kinds with their names, in the order of the vocabulary.</summary>
    public static WordList<PartKind> All => Table.Words;

    // A class of its own, so that every row of every file is there before the list is made.
    private static class Table
    {
        private static readonly ImmutableArray<PartKind> Rows =
        [
            AluminiumElectrolytic,
            BipolarElectrolytic,
            PolymerElectrolytic,
            Tantalum,
            WetTantalum,
            PolyesterFilm,
            PolypropyleneFilm,
            PolystyreneFilm,
            PolycarbonateFilm,
            Paper,
            MetallisedPaper,
            CeramicClass1,
            CeramicClass2,
            Mica,
            SuppressionCapacitor,
            TrimmerCapacitor,
            CarbonCompositionResistor,
            CarbonFilmResistor,
            MetalFilmResistor,
            WireWoundResistor,
            ResistorNetwork,
            Potentiometer,
            Thermistor,
            Inductor,
            Transformer,
            Diode,
            ZenerDiode,
            BridgeRectifier,
            SeleniumRectifier,
            GermaniumTransistor,
            Transistor,
            Regulator,
            IntegratedCircuit,
            Memory,
            Valve,
            Crystal,
            Fuse,
            Relay,
            Switch,
            Lamp,
            Display,
            Cell,
            Motor,
            Connector,
            Other,
        ];

        internal static WordList<PartKind> Words { get; } = new([.. Rows.Select(kind => (kind, kind.Name))]);
    }

    private static Designation Means(string letters, int rank = 0) => new(letters, rank, IsCertain: true);

    private static Designation May(string letters, int rank = 0) => new(letters, rank, IsCertain: false);

    private static AcceptLimit Accept(string part) =>
        AcceptLimit.Find(part)
        ?? throw new InvalidOperationException($"Nothing is known of what is accepted of a {part}: add a row to AcceptLimit.");
}
