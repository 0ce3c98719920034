using System.Collections.Immutable;
using Ohmstead.Assessment.History;
using Ohmstead.Records.Model;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tables;

/// <summary>How the readings of a visit were taken. What is so of all is told once, above the table; a row tells its own.</summary>
internal readonly struct HowTaken
{
    // In the order in which they are told.
    private static readonly ImmutableArray<(string Before, Func<Reading, string?> Words, string After)> All =
    [
        (string.Empty, static reading => reading.StateWord, string.Empty),
        (string.Empty, static reading => reading.Circuit is { Value: var circuit } ? Words(circuit) : null, string.Empty),
        (string.Empty, static reading => reading.Frequency?.Text, string.Empty),
        (string.Empty, static reading => reading.Temperature?.Text, string.Empty),
        ("with ", static reading => reading.Instrument?.Value, string.Empty),
        ("at ", static reading => reading.AtVoltage?.Text, string.Empty),
        ("under ", static reading => reading.Bias?.Text, " of bias"),
        ("after ", static reading => reading.After?.Text, string.Empty),
        (string.Empty, static reading => reading.Method?.Value, string.Empty),
    ];

    private readonly Reading first;

    // One bit for each of the words: set where they are the same for all.
    private readonly int common;

    private HowTaken(Reading first, int common) => (this.first, this.common) = (first, common);

    /// <summary>Looks at the readings of a visit, at least one. One alone tells everything in its row.</summary>
    public static HowTaken From(ImmutableArray<AssessedReading> readings)
    {
        var same = 0;
        for (var at = 0; readings.Length > 1 && at < All.Length; at++)
        {
            if (All[at].Words(readings[0].Reading) is { Length: > 0 } words && IsSaidOfAll(readings, at, words))
            {
                same |= 1 << at;
            }
        }

        return new(readings[0].Reading, same);
    }

    /// <summary>Writes what is so of all of them; nothing where there is nothing.</summary>
    public void WriteCommon(HtmlWriter html)
    {
        if (common != 0)
        {
            html.Open(Tag.P, ClassName.Fine).Text($"All readings: {Told(first, isCommon: true)}.");
        }
    }

    /// <summary>Whether something is so of one reading beyond that.</summary>
    public bool HasOwn(Reading reading)
    {
        for (var at = 0; at < All.Length; at++)
        {
            if (!IsCommon(at) && All[at].Words(reading) is { Length: > 0 })
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>What is so of one reading beyond that; empty where there is nothing.</summary>
    public string Own(Reading reading) => Told(reading, isCommon: false);

    private string Told(Reading reading, bool isCommon)
    {
        List<string>? told = null;
        for (var at = 0; at < All.Length; at++)
        {
            var (before, words, after) = All[at];
            if (IsCommon(at) == isCommon && words(reading) is { Length: > 0 } said)
            {
                (told ??= []).Add($"{before}{said}{after}");
            }
        }

        return told is null ? string.Empty : string.Join(", ", told);
    }

    private static bool IsSaidOfAll(ImmutableArray<AssessedReading> readings, int at, string words)
    {
        foreach (var reading in readings)
        {
            if (All[at].Words(reading.Reading) != words)
            {
                return false;
            }
        }

        return true;
    }

    private bool IsCommon(int at) => (common & (1 << at)) != 0;

    private static string Words(Circuit circuit) =>
        circuit switch
        {
            Circuit.In => "in circuit",
            Circuit.Out => "out of circuit",
        };
}
