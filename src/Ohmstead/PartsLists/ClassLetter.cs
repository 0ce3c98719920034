using Ohmstead.Records.Shapes;

namespace Ohmstead.PartsLists;

/// <summary>What the class letters of a reference designator say about the kind of a part, as far as they are certain.</summary>
/// <remarks>
/// Class letters by ASME Y14.44 and IEC 81346-2, from memory; BR, IC, RN and SW are common practice. A letter that means several kinds of the
/// vocabulary, or different things by the two standards and on old boards (T, V, D, P, X, M), decides nothing.
/// </remarks>
internal static class ClassLetter
{
    /// <summary>The one kind that the letters mean, or null.</summary>
    public static string? Kind(string letters) => letters switch
    {
        "BR" => "bridge rectifier",
        "BT" => "cell",
        "F" => "fuse",
        "IC" or "U" => "integrated circuit",
        "J" => "connector",
        "K" => "relay",
        "L" => "inductor",
        "Q" => "transistor",
        "RN" => "resistor network",
        "RT" => "thermistor",
        "S" or "SW" => "switch",
        "Y" => "crystal",
        _ => null,
    };

    /// <summary>The kinds that the letters can mean; all kinds where nothing is known of them.</summary>
    public static IReadOnlyList<string> Candidates(string letters) => Known(letters) is { Count: > 0 } known ? known : Vocabulary.PartKinds;

    /// <summary>The kinds that the letters can mean; none where nothing is known of them.</summary>
    public static IReadOnlyList<string> Known(string letters) => letters switch
    {
        "C" => Between("aluminium electrolytic", "trimmer capacitor"),
        "R" => Between("carbon composition resistor", "resistor network"),
        "P" or "RV" or "VR" => ["potentiometer", "connector", "regulator", "zener diode"],
        "D" or "CR" => ["diode", "zener diode", "bridge rectifier", "selenium rectifier"],
        "DS" or "LA" => ["lamp", "display"],
        "T" or "TR" => ["transformer", "transistor", "germanium transistor"],
        "V" => ["valve", "transistor", "diode"],
        "X" => ["crystal", "connector", "valve"],
        "L" => ["inductor", "transformer"],
        "Q" => ["transistor", "germanium transistor"],
        "U" or "IC" => ["integrated circuit", "memory", "regulator"],
        _ => Kind(letters) is { } kind ? [kind] : [],
    };

    private static IReadOnlyList<string> Between(string first, string last) =>
        [.. Vocabulary.PartKinds.SkipWhile(kind => kind != first).TakeWhile(kind => kind != last), last];
}
