using System.Collections.Frozen;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Records.Binding;

/// <summary>Which known key or word was meant by one that people use in its place. Nothing is read by these: they are told.</summary>
/// <remarks>The words are those of the trade and of its tables, as they are used in English; common practice.</remarks>
internal static class FamiliarWords
{
    // For each word the keys that it can mean; the first that the mapping knows is told. Folded as names are compared.
    private static readonly FrozenDictionary<string, string[]> KeysMeant = Table(
        ("capacitance", "cap c cx capacity"),
        ("resistance", "res r rx ohms"),
        ("inductance", "ind l lx"),
        ("frequency", "freq f hz test_frequency"),
        ("loss_factor loss_factor_limit", "d df tan_d tand tan_delta tandelta dissipation dissipation_factor power_factor"),
        ("leakage leakage_limit", "leak leakage_current ileak"),
        ("esr esr_limit", "series_resistance equivalent_series_resistance"),
        ("temperature", "temp t tmax max_temp ambient"),
        ("rated_voltage voltage", "v volt volts wv wvdc voltage_rating voltage rated_v"),
        ("current", "amps amperes i"),
        ("power", "watts wattage w"),
        ("tolerance", "tol"),
        ("quantity", "qty count pieces pcs amount number"),
        ("maker", "manufacturer brand mfr mfg make vendor"),
        ("from", "supplier source vendor donor origin whence"),
        ("title board", "name description"),
        ("what", "description seen observation"),
        ("made", "year date year_made built manufactured"),
        ("date", "day on when dated"),
        ("received arrived", "date arrival"),
        ("placed", "date ordered"),
        ("since", "date"),
        ("serial", "sn s_n serial_no serial_number serialnumber"),
        ("revision", "rev version issue"),
        ("note", "comment comments remark remarks notes text info memo"),
        ("by", "who person initials operator name author"),
        ("did", "action what done work operation step"),
        ("because", "reason why note"),
        ("decision", "verdict decided action do"),
        ("complaint", "fault symptom problem defect"),
        ("file", "picture photo image path src name"),
        ("shows", "caption title description what alt"),
        ("ref", "part designator refdes reference id name position"),
        ("part", "ref component designator refdes reference"),
        ("at part", "place position location where"),
        ("point", "test test_point tp rail name"),
        ("lot", "batch bag stock"),
        ("id", "name instrument"),
        ("kind", "type part_type category"),
        ("hazard", "danger kind risk"),
        ("severity", "level priority importance"),
        ("circuit", "in_circuit in_out"),
        ("instrument", "meter device tool"),
        ("polarity", "orientation way_round"),
        ("date_code", "datecode dc code"),
        ("lead_pitch", "pitch spacing lead_spacing rm"),
        ("working_voltage", "actual_voltage"),
        ("bench", "visits visit log history sessions"),
        ("readings", "measurements measured values"),
        ("found", "findings inspection seen"),
        ("proof", "tests test proofs results"),
        ("photos", "pictures images photographs"),
        ("parts", "components bom"),
        ("points", "test_points testpoints rails"),
        ("lots", "stock bags"),
        ("until", "to end due"),
        ("valid", "interval for until")
    );

    private static readonly FrozenSet<string> UnitsAlone = new[]
    {
        "VALUE",
        "VAL",
        "READING",
        "READ",
        "MEASURED",
        "RATING",
        "MARKING",
    }.ToFrozenSet(StringComparer.Ordinal);

    private static readonly FrozenSet<string> NothingSaid = new[]
    {
        "n/a",
        "na",
        "n.a.",
        "tbd",
        "tba",
        "todo",
        "?",
        "??",
        "???",
        "-",
        "--",
        "–",
        "—",
        "−",
        "unknown",
        "not known",
        "nil",
        "nothing",
        "blank",
        "empty",
        "missing",
        "not measured",
        "nm",
        "ditto",
        "dto",
        "\"",
        "''",
        "〃",
        "″",
        "x",
        "...",
        "…",
    }.ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    private static readonly FrozenSet<string> SayMore = new[] { "X2", "Y2", "NP0", "C0G", "X7R", "Z5U", "Y5V", "NPN", "PNP" }.ToFrozenSet(
        StringComparer.Ordinal
    );

    // For each word the words of closed lists that it can mean.
    private static readonly FrozenDictionary<string, string[]> WordsMeant = Table(
        ("pass", "ok okay good passed yes works working ✓ ✔"),
        ("fail", "bad failed no broken dead not_ok nok ✗ ✘"),
        ("yes", "true y on 1 x"),
        ("no", "false n off 0"),
        ("keep", "ok good fine"),
        ("replace", "bad change swap renew"),
        ("out", "out_of_circuit off removed desoldered lifted out_circuit outside"),
        ("in", "in_circuit on_board fitted soldered inside"),
        ("as_found", "before old found original"),
        ("as_left", "after left final"),
        ("new", "fresh incoming"),
        ("again", "repeat second retest"),
        ("replaced", "changed swapped renewed recapped exchanged new substituted"),
        ("cleaned", "clean wiped"),
        ("re-soldered", "reflowed resoldered soldered"),
        ("re-formed", "reforming formed"),
        ("repaired", "fixed mended"),
        ("adjusted", "calibrated trimmed aligned"),
        ("minor", "low small slight cosmetic"),
        ("major", "high big severe serious"),
        ("safety", "critical danger dangerous"),
        ("aluminium_electrolytic", "elko elyt alu_elko"),
        ("polyester_film", "mylar mkt"),
        ("polypropylene_film", "mkp"),
        ("polystyrene_film", "styroflex ks"),
        ("ceramic_class_1", "np0 c0g"),
        ("ceramic_class_2", "x7r z5u y5v"),
        ("suppression_capacitor", "x_capacitor y_capacitor x2 y2 x_cap y_cap safety_capacitor"),
        ("carbon_composition_resistor", "carbon_comp"),
        ("wire-wound_resistor", "wirewound ww"),
        ("transistor", "bjt npn pnp"),
        ("integrated_circuit", "ic chip"),
        ("schematic", "diagram circuit_diagram manual"),
        ("measured_in_circuit", "measured measurement meter"),
        ("print", "silkscreen silk_screen board marking"),
        ("continuity_to_ground_plane", "ground continuity ground_plane"),
        ("reservoir", "main_filter bulk"),
        ("decoupling", "bypass"),
        ("coupling", "dc_block"),
        ("mains", "mains_voltage line_voltage ac_line primary"),
        ("polarised", "yes polar"),
        ("bipolar", "non-polar nonpolar non-polarised unpolarised np bp"),
        ("none", "no unpolarised non-polarised"),
        ("moved", "relocated placed shelved"),
        ("lent", "loaned on_loan"),
        ("came_back", "returned back"),
        ("given_away", "donated gifted"),
        ("broken_up", "scrapped parted_out"),
        ("undecided", "maybe unsure unclear"),
        ("radial", "standing upright"),
        ("axial", "lying")
    );

    /// <summary>The key of a shape that was meant by one it does not have: by its spelling, else by its meaning; null when none
    /// was.</summary>
    internal static string? Key(string written, Shape shape) =>
        Nearest.To(written, shape.Keys.Select(key => key.Name)) ?? Meant(KeysMeant, written, shape.Keys.Select(key => key.Name));

    /// <summary>The key of a shape that a value without a key of its own fits, <c>value: 101 nF</c>; null when none does.</summary>
    internal static string? KeyOf(string written, string text, Shape shape) =>
        UnitsAlone.Contains(Nearest.Fold(written))
            ? shape
                .Keys.FirstOrDefault(key =>
                    key.Kind is ValueKind.Quantity or ValueKind.Indication
                    && key.Dimension is not (Dimension.Number or Dimension.Ratio)
                    && QuantityText.Parse(text, key.Dimension).Fault is null
                )
                ?.Name
            : null;

    /// <summary>Whether a text says that there is nothing to say: n/a, tbd, a question mark, a dash.</summary>
    internal static bool IsNothing(string text) => NothingSaid.Contains(text.Trim());

    /// <summary>Whether a word says more than the one of a closed list that it is told for: a class, a dielectric, a polarity.</summary>
    internal static bool SaysMore(string written) => SayMore.Contains(Nearest.Fold(written));

    /// <summary>The word of a closed list that was meant by one it does not have, or null.</summary>
    internal static string? Word(string written, IReadOnlyList<string> words) =>
        Nearest.To(written, words) ?? Meant(WordsMeant, written, words);

    /// <summary>The words of a closed list of which a text is a part: a resistor is one of several kinds.</summary>
    internal static IReadOnlyList<string> Holding(string written, IReadOnlyList<string> words) =>
        written.Length < 3 ? [] : [.. words.Where(word => word.Split(' ', '-').Contains(written, StringComparer.OrdinalIgnoreCase))];

    private static string? Meant(FrozenDictionary<string, string[]> table, string written, IEnumerable<string> known)
    {
        if (!table.TryGetValue(Nearest.Fold(written), out var meant))
        {
            return null;
        }

        var names = known.ToDictionary(Nearest.Fold, name => name, StringComparer.Ordinal);
        foreach (var one in meant)
        {
            if (names.TryGetValue(one, out var name))
            {
                return name;
            }
        }

        return null;
    }

    private static FrozenDictionary<string, string[]> Table(params (string Meant, string Written)[] rows) =>
        rows.SelectMany(row => row.Written.Split(' ').SelectMany(word => row.Meant.Split(' ').Select(meant => (word, meant))))
            .GroupBy(pair => Nearest.Fold(pair.word), pair => Nearest.Fold(pair.meant), StringComparer.Ordinal)
            .ToFrozenDictionary(group => group.Key, group => group.Distinct(StringComparer.Ordinal).ToArray(), StringComparer.Ordinal);
}
