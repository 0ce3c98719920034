using Ohmstead.Assessment.Boards;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Bench;

/// <summary>How parts of one kind are read with one instrument.</summary>
/// <param name="Frequency">The test frequency, or null where none was said.</param>
/// <param name="Circuit">in or out, or null where it was not said.</param>
internal readonly record struct Setting(string? Frequency, string? Circuit);

/// <summary>What was said last of each instrument and kind of part, so that it need not be said again: the knob of one meter says
/// nothing of
/// another, nor a film capacitor of an electrolytic.</summary>
/// <param name="circuit">What counts for circuit where nothing was said.</param>
internal sealed class BenchMemory(string? circuit)
{
    private readonly Dictionary<(string? Instrument, PartKind Kind), Setting> settings = [];

    /// <summary>Whether what is measured of a kind hangs on a test frequency.</summary>
    public static bool HasFrequency(PartKind kind) => kind.Family is PartFamily.Capacitor or PartFamily.Inductor;

    /// <summary>Takes over what the readings of a day say; what is said of the circuit for this session goes before.</summary>
    public void Begin(BoardAssessment board, DateOnly day)
    {
        foreach (var place in board.Places)
        {
            foreach (var read in place.Readings.Where(reading => reading.Visit.Date.Value == day))
            {
                Keep(
                    read.Reading.Instrument?.Value ?? read.Visit.Instrument?.Value,
                    place.Values.Kind.Value,
                    read.Reading.Frequency is { } frequency ? QuantityText.Format(frequency.Value) : null,
                    circuit ?? read.Reading.Circuit?.Text
                );
            }
        }
    }

    /// <summary>What holds for a kind and an instrument.</summary>
    public Setting For(string? instrument, PartKind kind)
    {
        var isKnown = settings.TryGetValue((instrument, kind), out var known);
        return new(HasFrequency(kind) ? known.Frequency : null, isKnown ? known.Circuit : circuit);
    }

    /// <summary>Remembers what an entry said; what it did not say stays.</summary>
    public void Keep(string? instrument, PartKind kind, string? frequency, string? said)
    {
        var before = For(instrument, kind);
        settings[(instrument, kind)] = new(frequency ?? before.Frequency, said ?? before.Circuit);
    }

    /// <summary>Sets the circuit, to null where nothing is to be said of it.</summary>
    public void SetCircuit(string? instrument, PartKind kind, string? said) =>
        settings[(instrument, kind)] = For(instrument, kind) with { Circuit = said };
}
