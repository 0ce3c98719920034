using System.Globalization;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>How many keys a whole recap takes: thirty capacitors are measured out of the circuit, pulled, fitted anew and measured in their
/// places.</summary>
public sealed class RecapKeysTests
{
    private const int Capacitors = 30;
    private const string Board = "boards/SP-0099.md";
    private const string Day = "2026-11-25";

    // What the guide says, and no more than that.
    private const int Most = 819;

    // Digits, points and spaces as meters give them, no figure twice in a row.
    private static readonly string[] AsFound = [.. Enumerable.Range(0, Capacitors).Select(part => Figures(31.2m + (0.3m * part), 1.61m))];
    private static readonly string[] AsLeft = [.. Enumerable.Range(0, Capacitors).Select(part => Figures(46.2m + (0.1m * part), 0.81m))];

    [Fact]
    public void A_recap_of_thirty_capacitors_takes_no_more_keys_than_the_guide_says()
    {
        using var copy = CollectionCopy.Make();
        copy.Write(
            Board,
            "---\nboard: SP-0099\ntitle: Thirty in a row\nparts:\n" + string.Concat(Enumerable.Range(1, Capacitors).Select(Part)) + "---\n"
        );
        var lot = Run.Of([
            "lot",
            "L-900",
            "aluminium electrolytic",
            "47uF",
            "20%",
            "63V",
            "105C",
            "date_code=2610",
            "--quantity",
            "30",
            .. At(copy, Day),
        ]);
        Assert.Equal(0, lot.Exit);

        var keys = 0;
        keys += Session(copy, "bench SP-0099 --by RK --instrument bridge-1 --lifted", [AsFound[0] + " 120Hz", .. AsFound[1..]]);
        keys += Session(copy, "work SP-0099 replaced C1-C30 --lot L-900 --polarity schematic --by RK", []);
        keys += Session(copy, "bench SP-0099 --by RK --instrument bridge-1 --in-circuit", [AsLeft[0] + " 120Hz", .. AsLeft[1..]]);

        Assert.Equal(Most, keys);
        var record = copy.Read(Board);
        Assert.Equal(Capacitors, Times(record, ", circuit: out, frequency: 120 Hz, capacitance: "));
        Assert.Equal(Capacitors, Times(record, ", did: replaced, lot: L-900, polarity: schematic }"));
        Assert.Equal(Capacitors, Times(record, ", circuit: in, frequency: 120 Hz, capacitance: "));
        Assert.Equal(0, Run.Of("check", copy.Root, "--as-of", Day).Exit);
        Assert.Contains(
            string.Create(CultureInfo.InvariantCulture, $"{Most} keys"),
            File.ReadAllText(ProjectFolder.At("records/README.md")),
            StringComparison.Ordinal
        );
    }

    // A line of the shell, and the lines of the session that it begins, each with its Enter.
    private static int Session(CollectionCopy copy, string command, string[] lines)
    {
        var typed = string.Concat(lines.Select(line => line + "\n"));
        var run = Run.Typing(typed, [.. command.Split(' '), .. At(copy, Day)]);
        Assert.True(run is { Exit: 0, Error: "" }, run.Out + run.Error);
        return $"ohmstead {command}\n".Length + typed.Length;
    }

    private static string[] At(CollectionCopy copy, string day) => ["--in", copy.Root, "--as-of", day];

    private static string Part(int number) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"  - {{ ref: C{number}, kind: aluminium electrolytic, capacitance: 47 µF, tolerance: ±20 %, rated_voltage: 63 V, "
                + $"polarity: polarised }}\n"
        );

    private static string Figures(decimal capacitance, decimal esr) => string.Create(CultureInfo.InvariantCulture, $"{capacitance} {esr}");

    private static int Times(string text, string part) =>
        (text.Length - text.Replace(part, string.Empty, StringComparison.Ordinal).Length) / part.Length;
}
