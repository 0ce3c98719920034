using Ohmstead.Records.Findings;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Records.Binding;

/// <summary>Keys and words that people use for more than one thing: which is meant the reader alone can say, so the choice is told and
/// none is offered as the right one.</summary>
internal static class DoubtfulWords
{
    // The word, the known one without which the choice is none, and the choice.
    private static readonly (string Written, string Known, string Next)[] Words =
    [
        ("drawing", "schematic", "schematic if it was the circuit diagram, print if it was the marking on the board"),
        ("smoothing", "reservoir", "reservoir if it is the first one after the rectifier, else leave role out"),
        (
            "photo",
            "photograph before removal",
            "photograph before removal if it was taken before the part came out; one that was taken later shows nothing of it"
        ),
        (
            "photograph",
            "photograph before removal",
            "photograph before removal if it was taken before the part came out; one that was taken later shows nothing of it"
        ),
        (
            "picture",
            "photograph before removal",
            "photograph before removal if it was taken before the part came out; one that was taken later shows nothing of it"
        ),
        (
            "high voltage",
            "mains",
            "mains if it comes from the mains, charged capacitor if it stays after switching off, picture tube if it is the tube's"
        ),
        ("borrowed", "lent", "lent if it went from here to somebody; a board that came here on loan has its owner in owner"),
    ];

    private static readonly string[] Volts = ["VOLTAGE", "VOLT", "VOLTS", "V"];

    /// <summary>What to write for a key that can be two of the shape; null for any other key.</summary>
    internal static string? Key(string written, Shape shape) =>
        Volts.Contains(Nearest.Fold(written)) && shape.PlaceOf("rated_voltage") >= 0 && shape.PlaceOf("working_voltage") >= 0
            ? "write rated_voltage: if it is printed on the part, working_voltage: if the part sees it in its place"
            : null;

    /// <summary>What to write for a word that can be two of a closed list; null for any other word.</summary>
    internal static string? Word(string written, Key key) =>
        Words.FirstOrDefault(row =>
            Nearest.Fold(row.Written) == Nearest.Fold(written) && key.Words.Contains(row.Known, StringComparer.Ordinal)
        )
            is { Next: { } next }
            ? $"write {key.Name}: {next}"
            : null;
}
