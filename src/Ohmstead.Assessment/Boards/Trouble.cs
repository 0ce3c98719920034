using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>What sort of trouble a finding speaks of, which decides what work can close it.</summary>
internal enum Trouble
{
    /// <summary>Metal that a hand can touch carries a voltage.</summary>
    LiveMetal,

    /// <summary>A part that is spent or broken as a thing: crazed, bulged, burst, leaking, burnt. No work on it makes it whole.</summary>
    SpentPart,

    /// <summary>Copper, a joint or a wire.</summary>
    Joint,

    /// <summary>Something on the board that does not belong there.</summary>
    Dirt,

    /// <summary>Anything else.</summary>
    Other,
}

/// <summary>
/// Reads the sort of trouble out of the words of a finding. The words are those of the bench, in English; a finding in other words is <see cref="Trouble.Other"/>.
/// Common practice.
/// </summary>
internal static class Troubles
{
    // All in capitals, as the words are that they are looked for in.
    private static readonly string[] Metal = ["CHASSIS", "CASE", "METALWORK", "CABINET", "FRAME", "PANEL", "EARTH", "TOUCH"];
    private static readonly string[] Live = ["LIVE", "SHOCK", "TINGL", "VOLTS ON", "VOLTAGE ON"];
    // What is no part of the list is spent by these all the same.
    private static readonly string[] SpentAnywhere = ["CRAZ", "BULG", "SWOLLEN", "VENTED", "BURST", "PERISH", "EXPLODED"];
    private static readonly string[] Spent =
        ["CRAZ", "BULG", "SWOLLEN", "VENTED", "BURST", "LEAK", "BURNT", "BURNED", "CHARRED", "SHORTED", "BLOWN", "EXPLODED", "GONE WHITE", "AIR INSIDE"];

    // A body that is broken is, a broken joint or track is mended; what crackles is only heard.
    private static readonly string[] Broken = ["CRACKED", "CRACKS", "CRACK ", "SPLIT", "SHATTER", "HOLE", "DOMED", "MELTED", "CHIP", "BROKEN", "DRIED OUT"];
    private const string Heard = "CRACKL";

    // What leaks by the meter is no leak that wets a hand: readings judge it.
    private const string Measured = "LEAKAGE";
    private const string Wet = "ELECTROLYTE";
    private static readonly string[] Copper =
        ["PAD", "JOINT", "TRACK", "TRACE", "COPPER", "SOLDER", "UNSOLDER", "DESOLDER", "WIRE", "LEAD OFF", "LEG OFF", "CONNECTION"];
    private static readonly string[] Foreign =
        ["CRUST", "DIRT", "DUST", "FLUX", "CORRO", "OXID", "GREEN", "TARNISH", "RESIDUE", "SALT", "GREASE", "MOULD", "MOLD", "VERDIGRIS", "SOOT", "ELECTROLYTE", "SPILL"];

    /// <summary>The sort of trouble.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="part">The part that it was seen at, or null when its place is none.</param>
    internal static Trouble Of(Observation finding, Part? part)
    {
        var words = finding.What.Value.ToUpperInvariant();
        if (Speaks(words, Metal) && (Speaks(words, Live) || (finding.Severity.Value == ObservedSeverity.Safety && TellsVolts(finding.What.Value))))
        {
            return Trouble.LiveMetal;
        }

        if (Speaks(words, SpentAnywhere) || (part is not null && IsSpent(words, part.Values.Kind.Value)))
        {
            return Trouble.SpentPart;
        }

        return Speaks(words, Copper) ? Trouble.Joint : Speaks(words, Foreign) ? Trouble.Dirt : Trouble.Other;
    }

    // Crust on a cell is the cell's own, as electrolyte is at an electrolytic: wiping it off leaves the part that made it.
    private static bool IsSpent(string words, PartKind kind) =>
        Speaks(words.Replace(Measured, string.Empty, StringComparison.Ordinal), Spent)
        || (Speaks(words.Replace(Heard, string.Empty, StringComparison.Ordinal), Broken) && !Speaks(words, Copper))
        || (kind == PartKinds.Cell && Speaks(words, Foreign))
        || (kind.IsElectrolytic && words.Contains(Wet, StringComparison.Ordinal));

    // A figure in volts: '230 V', '110V AC'.
    private static bool TellsVolts(string words)
    {
        for (var at = 1; at < words.Length; at++)
        {
            var figure = words[at - 1] == ' ' && at > 1 ? at - 2 : at - 1;
            if (words[at] == 'V' && char.IsAsciiDigit(words[figure]) && (at + 1 == words.Length || !char.IsLetterOrDigit(words[at + 1])))
            {
                return true;
            }
        }

        return false;
    }

    // A word counts where it begins: 'live' is not said by 'olive'.
    private static bool Speaks(string words, string[] of)
    {
        foreach (var word in of)
        {
            for (var at = words.IndexOf(word, StringComparison.Ordinal); at >= 0; at = words.IndexOf(word, at + 1, StringComparison.Ordinal))
            {
                if (at == 0 || !char.IsLetter(words[at - 1]))
                {
                    return true;
                }
            }
        }

        return false;
    }
}
