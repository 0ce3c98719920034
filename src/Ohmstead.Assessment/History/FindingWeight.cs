using System.Buffers;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.History;

/// <summary>
/// How much a finding matters: as it was written, but for what is never little. Metal that is live, a crazed part that people rely on not
/// to be hurt, a bridged fuse, an earth that is off and a mains lead to be seen into can hurt; a part that leaks, bulges or burnt is spent;
/// what smokes, sparks or blows a fuse, what sits the wrong way round and what solder bridges is no small thing. What the words deny ('no
/// crazing') is not said. Common practice.
/// </summary>
internal static class FindingWeight
{
    // All in capitals, as the words are that they are looked for in.
    private static readonly string[] SpentLittle =
    [
        "BULG",
        "SWOLLEN",
        "VENTED",
        "BURST",
        "EXPLODED",
        "BLOWN OFF",
        "BURNT",
        "BURNED",
        "CHARRED",
    ];
    private static readonly string[] Alarming =
    [
        "SMOK",
        "SPARK",
        "ARCING",
        "ARCED",
        "ARC MARK",
        "FLASHOVER",
        "FLASHED OVER",
        "FLAME",
        "BURNING",
        "ON FIRE",
        "HISS",
        "A POP",
        "POPPED",
        "A BANG",
        "TOO HOT",
        "RED HOT",
        "OVERHEAT",
        "BLEW",
        "BLOWS",
        "TRIPS",
        "TRIPPED",
    ];
    private static readonly string[] Miswired = ["BACKWARDS", "FITTED REVERSED", "WRONG WAY ROUND", "SOLDER BRIDGE", "BRIDGED BY SOLDER"];
    private static readonly string[] Insulation = ["INSULATION"];
    private static readonly string[] Crumbling = ["BRITTLE", "CRUMBL", "CRACKED", "PERISH", "MISSING", "GONE"];
    private static readonly string[] Hot = ["HOT"];
    private static readonly string[] SpentAlways = [.. SpentLittle, "CRAZ"];
    private static readonly string[] Cracked = ["CRACKED", "CRACKS", "CRACK ", "SPLIT", "SHATTER"];
    private static readonly string[] PictureTube = ["PICTURE TUBE", "CATHODE RAY", "CATHODE-RAY", "CRT"];
    private static readonly string[] Glass = ["GLASS", "NECK", "FACEPLATE", "ENVELOPE", "BULB"];
    private static readonly string[] Chipped = [.. Cracked, "CHIP", "GOUGE", "BROKEN", "DEEP SCRATCH", "HIT", "STRUCK"];
    private static readonly string[] Suppressing = ["SUPPRESS", "X1", "X2", "Y1", "Y2"];
    private static readonly string[] Leaking = ["LEAK", "SEEP", "OOZ", "WEEP"];
    private static readonly string[] Crust = ["CRUST"];
    private static readonly string[] OfACell = ["OF THE CELL", "OF A CELL", "FROM THE CELL", "BATTERY", "ELECTROLYTE"];
    private static readonly string[] Wet = [Troubles.Wet, "FISH"];
    private static readonly string[] Reaching =
    [
        Troubles.Wet,
        "AS FAR AS",
        "ONTO",
        "ON THE BOARD",
        "OVER THE",
        "UNDER",
        "ACROSS",
        "AROUND",
        "REACHED",
        "SPREAD",
        "TRACK",
        "COPPER",
    ];
    private static readonly string[] Mains = ["MAINS", "LINE CORD", "POWER CORD", "POWER LEAD", "STRAIN RELIEF"];
    private static readonly string[] SeenInto =
    [
        "FRAY",
        "PERISH",
        "BARE",
        "EXPOSED",
        "TORN",
        "CHAFED",
        "CUT",
        "BRITTLE",
        "CRUMBL",
        "MELTED",
        "MISSING",
    ];
    private static readonly string[] Bridged =
    [
        "BRIDG",
        "WIRE ACROSS",
        "WIRE IN PLACE",
        "REPLACED WITH WIRE",
        "REPLACED BY WIRE",
        "LINK ACROSS",
        "NAIL",
        "FOIL",
        "SHORTED OUT",
    ];
    private static readonly string[] FuseWord = ["FUSE"];
    private static readonly string[] Earth = ["EARTH"];
    private static readonly string[] Off = ["OFF", "MISSING", "BROKEN", "LOOSE", "DISCONNECTED", "NOT CONNECTED", "CUT"];
    private static readonly SearchValues<string> NeverLittle = SearchValues.Create(
        [
            .. SpentAlways,
            .. Alarming,
            .. Miswired,
            .. Insulation,
            .. Hot,
            .. Chipped,
            .. Troubles.Live,
            .. Leaking,
            .. Crust,
            .. Wet,
            .. SeenInto,
            .. Bridged,
            .. Earth,
        ],
        StringComparison.OrdinalIgnoreCase
    );

    /// <summary>How much a finding matters.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="part">The part that it was seen at, or null when its place is none.</param>
    /// <param name="tubes">Where the board has picture tubes.</param>
    internal static ObservedSeverity Weigh(Observation finding, Part? part, PictureTubes tubes) =>
        Weigh(finding.At.Value, finding.What.Value, finding.Severity.Value, part, tubes);

    /// <summary>How much words matter, wherever they were written.</summary>
    /// <param name="at">What they are about.</param>
    /// <param name="what">The words.</param>
    /// <param name="written">How much they were said to matter.</param>
    /// <param name="part">The part, or null when it is none.</param>
    /// <param name="tubes">Where the board has picture tubes.</param>
    internal static ObservedSeverity Weigh(string at, string what, ObservedSeverity written, Part? part, PictureTubes tubes)
    {
        // Nearly all findings speak of nothing of the kind.
        if (
            written == ObservedSeverity.Safety
            || !(what.AsSpan().ContainsAny(NeverLittle) || at.Contains(Earth[0], StringComparison.OrdinalIgnoreCase))
        )
        {
            return written;
        }

        var (words, place) = (what.ToUpperInvariant(), at.ToUpperInvariant());
        return CanHurt(words, place, part?.Values) || MayBreakInwards(words, at, part, tubes) ? ObservedSeverity.Safety
            : written is ObservedSeverity.Minor or ObservedSeverity.Note && IsNeverLittle(words, part?.Values.Kind.Value)
                ? ObservedSeverity.Major
            : written;
    }

    private static bool CanHurt(string words, string place, PartValues? values)
    {
        if (Troubles.Speaks(words, Troubles.Metal) && Says(words, Troubles.Live))
        {
            return true;
        }

        if ((Troubles.Speaks(words, Mains) || Troubles.Speaks(place, Mains)) && Says(words, SeenInto))
        {
            return true;
        }

        if ((Troubles.Speaks(words, Earth) || Troubles.Speaks(place, Earth)) && Says(words, Off))
        {
            return true;
        }

        if (
            (values is null ? IsAFuse(place) || Troubles.Speaks(words, FuseWord) : values.Kind.Value == PartKinds.Fuse)
            && Says(words, Bridged)
        )
        {
            return true;
        }

        return (values is null ? Troubles.Speaks(words, Suppressing) : PartKind.IsSafetyRelevant(values))
            && (
                Says(words, SpentAlways)
                || (Says(words, Cracked) && !Troubles.Speaks(words, Troubles.Copper) && !Troubles.Speaks(words, Troubles.Joints))
            );
    }

    /// <summary>Whether words tell of glass that may break inwards and be thrown: that of a picture tube, chipped or cracked. Where nobody
    /// says what sort of display it is, or where on the board the tube sits, broken glass counts as that.</summary>
    internal static bool MayBreakInwards(string words, string at, Part? part, PictureTubes tubes)
    {
        var said = words.ToUpperInvariant();
        if (!Says(said, Chipped))
        {
            return false;
        }

        var mayBeOne = part is null ? tubes.IsAny : part.Values.Kind.Value == PartKinds.Display;
        return tubes.SitsAt(at)
            || Troubles.Speaks(said, PictureTube)
            || Troubles.Speaks(at.ToUpperInvariant(), PictureTube)
            || (mayBeOne && Troubles.Speaks(said, Glass));
    }

    /// <summary>Whether a place that no list has is a fuse by its name: F and a number, or the word.</summary>
    internal static bool IsAFuse(string at) =>
        (at.Length > 1 && at[0] == 'F' && at.AsSpan(1).IndexOfAnyExceptInRange('0', '9') < 0)
        || at.Equals(PartKinds.Fuse.Name, StringComparison.OrdinalIgnoreCase);

    private static bool IsNeverLittle(string words, PartKind? kind)
    {
        // Paint may craze; a film part that leaks is judged by its readings.
        if (Says(words, SpentLittle) || Says(words, Alarming) || Says(words, Miswired))
        {
            return true;
        }

        // A dropper is meant to be hot, a capacitor never.
        if ((Says(words, Insulation) && Says(words, Crumbling)) || (kind?.Family == PartFamily.Capacitor && Says(words, Hot)))
        {
            return true;
        }

        return LeaksBy(words, kind);
    }

    /// <summary>Whether words tell that what was in a cell or an electrolytic has reached the board.</summary>
    /// <param name="what">The words.</param>
    /// <param name="kind">The kind of part that they are about, or null when it is none of the list.</param>
    internal static bool TellsOfASpill(string what, PartKind? kind)
    {
        var words = what.ToUpperInvariant();
        // Crust of a cell that is seen at another part has reached it.
        return LeaksBy(words, kind) && (Says(words, Reaching) || (kind != PartKinds.Cell && Says(words, OfACell) && Says(words, Crust)));
    }

    /// <summary>Whether words tell that a cell or an electrolytic leaks, whether or not it has reached the board.</summary>
    /// <param name="what">The words.</param>
    /// <param name="kind">The kind of part that they are about, or null when it is none of the list.</param>
    internal static bool TellsOfALeak(string what, PartKind? kind) => LeaksBy(what.ToUpperInvariant(), kind);

    private static bool LeaksBy(string words, PartKind? kind)
    {
        var holdsLiquid = kind is null || kind.IsElectrolytic || kind == PartKinds.Cell;
        return (holdsLiquid && Says(words.Replace(Troubles.Measured, string.Empty, StringComparison.Ordinal), Leaking))
            || ((kind == PartKinds.Cell || Says(words, OfACell)) && Says(words, Crust))
            || (kind is { IsElectrolytic: true } && Says(words, Wet));
    }

    private static bool Says(string words, string[] of) => Troubles.Speaks(words, of, unlessDenied: true);
}
