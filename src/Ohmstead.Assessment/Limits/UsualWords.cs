using Ohmstead.Electronics;
using Ohmstead.Electronics.Parts;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>What is usually accepted of a part in words, for a reading that no figure is known for.</summary>
public static class UsualWords
{
    /// <summary>The words, with their source, or null when nothing is known.</summary>
    public static LazyText? Of(IMarkedPart part) => PartFor(part.Kind.Value) is { } name && AcceptLimit.Find(name) is { } known
        ? new(() => $"usually accepted, {known.Measure}: {known.Accept} ({known.Source.Text})" + (name == "fuse" ? $"; {FuseFigures.Meaning}" : string.Empty))
        : null;

    private static string? PartFor(string kind) => kind switch
    {
        "transformer" => "mains transformer",
        "diode" => "silicon diode",
        "zener diode" => "Zener diode",
        "transistor" or "germanium transistor" => "bipolar transistor",
        "carbon composition resistor" or "carbon film resistor" or "metal film resistor" or "wire-wound resistor" or "potentiometer" or "inductor" or "fuse"
            or "crystal" or "regulator" or "relay" or "motor" or "cell" or "memory" or "integrated circuit" or "valve" => kind,
        _ => null,
    };
}
