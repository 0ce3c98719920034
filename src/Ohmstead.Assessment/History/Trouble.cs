using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.History;

/// <summary>What sort of trouble a finding speaks of, which decides what work can close it.</summary>
internal enum Trouble
{
    /// <summary>Metal that a hand can touch carries a voltage.</summary>
    LiveMetal,

    /// <summary>A part that is spent or broken as a thing: crazed, bulged, burst, leaking, burnt. No work on it makes it whole.</summary>
    SpentPart,

    /// <summary>A joint or a wire.</summary>
    Joint,

    /// <summary>Copper beside a part: a lifted pad, a broken track. Another part does not mend it.</summary>
    Track,

    /// <summary>Something on the board that does not belong there.</summary>
    Dirt,

    /// <summary>What moves or touches: a wiper, a switch, a relay, a socket.</summary>
    Contact,

    /// <summary>Anything else, and what is told in words that the program does not know.</summary>
    Other,
}

/// <summary>
/// Reads the sort of trouble out of the words of a finding. The words are those of the bench, in English; a finding in other words is
/// <see cref="Trouble.Other"/>.
/// Common practice.
/// </summary>
internal static class Troubles
{
    // All in capitals, as the words are that they are looked for in.
    internal static readonly string[] Metal = ["CHASSIS", "CASE", "METALWORK", "CABINET", "FRAME", "PANEL", "EARTH", "TOUCH"];
    internal static readonly string[] Live = ["LIVE", "SHOCK", "TINGL", "VOLTS ON", "VOLTAGE ON"];

    // What is no part of the list is spent by these all the same.
    private static readonly string[] SpentAnywhere = ["CRAZ", "BULG", "SWOLLEN", "VENTED", "BURST", "PERISH", "EXPLODED"];
    private static readonly string[] Spent =
    [
        "CRAZ",
        "BULG",
        "SWOLLEN",
        "VENTED",
        "BURST",
        "LEAK",
        "BURNT",
        "BURNED",
        "CHARRED",
        "SHORTED",
        "BLOWN",
        "EXPLODED",
        "GONE WHITE",
        "AIR INSIDE",
    ];

    // A body that is broken is, a broken joint or track is mended; what crackles is only heard.
    private static readonly string[] Broken =
    [
        "CRACKED",
        "CRACKS",
        "CRACK ",
        "SPLIT",
        "SHATTER",
        "HOLE",
        "DOMED",
        "MELTED",
        "CHIP",
        "BROKEN",
        "DRIED OUT",
    ];
    private const string Heard = "CRACKL";

    // What leaks by the meter is no leak that wets a hand: readings judge it.
    internal const string Measured = "LEAKAGE";
    internal const string Wet = "ELECTROLYTE";
    private static readonly string[] Staying =
    [
        "JOINT",
        "PAD",
        "TRACK",
        "TRACE",
        "SOCKET",
        "CONNECTOR",
        "PLUG",
        "HOLDER",
        "TERMINAL",
        "BOARD",
    ];
    internal static readonly string[] Copper = ["PAD", "TRACK", "TRACE", "COPPER"];
    internal static readonly string[] Joints = ["JOINT", "SOLDER", "UNSOLDER", "DESOLDER", "WIRE", "LEAD OFF", "LEG OFF", "CONNECTION"];

    // What touches is cleaned or set. What moves is told by how it feels and sounds, where something that moves sits.
    private static readonly string[] Touching = ["CONTACT", "SOCKET", "WIPER", "SLIDER"];
    private static readonly string[] Held = ["SOCKET"];
    private static readonly string[] Moving = ["CRACKL", "SCRATCH", "ROUGH", "NOISY", "STIFF", "STICK", "STUCK"];
    private static readonly string[] Foreign =
    [
        "CRUST",
        "DIRT",
        "DUST",
        "FLUX",
        "CORRO",
        "OXID",
        "GREEN",
        "TARNISH",
        "RESIDUE",
        "SALT",
        "GREASE",
        "MOULD",
        "MOLD",
        "VERDIGRIS",
        "SOOT",
        "ELECTROLYTE",
        "SPILL",
    ];

    /// <summary>The sort of trouble.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="part">The part that it was seen at, or null when its place is none.</param>
    internal static Trouble Find(Observation finding, Part? part)
    {
        var words = finding.What.Value.ToUpperInvariant();
        if (
            Speaks(words, Metal)
            && (Speaks(words, Live) || (finding.Severity.Value == ObservedSeverity.Safety && TellsVolts(finding.What.Value)))
        )
        {
            return Trouble.LiveMetal;
        }

        if (Speaks(words, SpentAnywhere) || (part is not null && IsSpent(words, part.Values.Kind.Value)))
        {
            return Trouble.SpentPart;
        }

        return Speaks(words, Copper)
            ? part is null
                ? Trouble.Joint
                : Trouble.Track
            : Speaks(words, Joints)
                ? Trouble.Joint
                : Speaks(words, Foreign)
                    ? Trouble.Dirt
                    : IsOfContacts(words, part)
                        ? Trouble.Contact
                        // What can hurt at metal, in words that are not known, is taken for the worst of it.
                        : finding.Severity.Value == ObservedSeverity.Safety && Speaks(finding.At.Value.ToUpperInvariant(), Metal)
                            ? Trouble.LiveMetal
                            : Trouble.Other;
    }

    // A noisy transistor is none: only what moves is rough or stiff.
    private static bool IsOfContacts(string words, Part? part) =>
        !Speaks(words.Replace(Heard, string.Empty, StringComparison.Ordinal), Broken)
        && (Speaks(words, Touching) || ((part is null || part.Values.Kind.Value.HasContacts) && Speaks(words, Moving)));

    /// <summary>Whether what a finding was seen at is a place that stays when a part goes: a joint, a track, a socket, a connector by its
    /// words or its letter.</summary>
    internal static bool NamesAPlace(string at)
    {
        var letters = 0;
        while (letters < at.Length && char.IsAsciiLetter(at[letters]))
        {
            letters++;
        }

        return Speaks(at.ToUpperInvariant(), Staying)
            || (
                letters < at.Length
                && char.IsAsciiDigit(at[letters])
                && at[..letters].ToUpperInvariant() is "J" or "P" or "PL" or "SK" or "XS" or "TP"
            );
    }

    // Whether what stands before a word in the same clause takes it back.
    private static bool IsDenied(ReadOnlySpan<char> before)
    {
        before = before[(before.LastIndexOfAny(",;.:") + 1)..];
        foreach (var range in before.SplitAny(' ', '-', '('))
        {
            if (
                before[range] is "NO" or "NOT" or "NEVER" or "WITHOUT" or "NONE" or "NOTHING" or "NOR"
                || before[range].EndsWith("N'T")
                || before[range].EndsWith("N’T")
            )
            {
                return true;
            }
        }

        return false;
    }

    // Crust on a cell is the cell's own, as electrolyte is at an electrolytic: wiping it off leaves the part that made it.
    private static bool IsSpent(string words, PartKind kind) =>
        Speaks(words.Replace(Measured, string.Empty, StringComparison.Ordinal), Spent)
        || (
            Speaks(words.Replace(Heard, string.Empty, StringComparison.Ordinal), Broken)
            && !Speaks(words, Copper)
            && !Speaks(words, Joints)
            && !Speaks(words, Held)
        )
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
    internal static bool Speaks(string words, string[] of, bool unlessDenied = false)
    {
        foreach (var word in of)
        {
            for (
                var at = words.IndexOf(word, StringComparison.Ordinal);
                at >= 0;
                at = words.IndexOf(word, at + 1, StringComparison.Ordinal)
            )
            {
                if ((at == 0 || !char.IsLetter(words[at - 1])) && !(unlessDenied && IsDenied(words.AsSpan(0, at))))
                {
                    return true;
                }
            }
        }

        return false;
    }
}
