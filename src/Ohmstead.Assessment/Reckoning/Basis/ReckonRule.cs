using Ohmstead.Electronics;
using Ohmstead.Electronics.Hazards;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Basis;

/// <summary>One rule of the electronics library that can be worked out at the bench from figures given by hand.</summary>
/// <param name="Name">Its name, in small letters with hyphens.</param>
/// <param name="Computes">What it computes, in a few words.</param>
/// <param name="Inputs">What it is computed from.</param>
/// <param name="Example">Inputs that work, as a person would write them.</param>
/// <param name="Work">Works it out.</param>
public sealed record ReckonRule(
    string Name,
    string Computes,
    IReadOnlyList<ReckonInput> Inputs,
    string Example,
    Func<GivenInputs, Outcome<Reckoned>> Work
)
{
    /// <summary>The formula in the symbols of the trade, or null where a table answers.</summary>
    public string? Formula { get; init; }

    /// <summary>Within what bounds the answer means something, or null when it always does.</summary>
    public string? Validity { get; init; }

    /// <summary>The hazard of the catalogue whose cautions stand beside figures above touch voltage.</summary>
    public string Hazard { get; init; } = "stored-energy";

    /// <summary>The answer to inputs as written (name=value), or the reason why there is none.</summary>
    public Outcome<Reckoned> Answer(IReadOnlyList<string> words)
    {
        // Through Then, which makes a refusal of figures that nothing can be computed of.
        if (
            !ReckonReader.Read(this, words).Is(out var given, out var reason)
            || !Outcome<GivenInputs>.From(given).Then(Work).Is(out var worked, out reason)
            || !worked.Is(out var answer, out reason)
        )
        {
            return Outcome<Reckoned>.Refused(reason);
        }

        return answer.Cautions.Count == 0 && IsAboveTouch(given, answer)
            ? Outcome<Reckoned>.From(answer).WithCautions(Hazard)
            : Outcome<Reckoned>.From(answer);
    }

    // No rule may forget it: whatever a person wrote or is told in volt above what may hurt is cautioned against.
    private bool IsAboveTouch(GivenInputs given, Reckoned answer) =>
        Inputs.Any(input =>
            input is { Kind: InputKind.Quantity, Dimension: Dimension.Voltage } && Math.Abs(given[input]) > LimitInStandard.TouchVolts
        ) || answer.Lines.Any(line => line.Unit == VoltUnit && line.Number is { } number && Math.Abs(number) > LimitInStandard.TouchVolts);

    private static string VoltUnit => ((ShownAs)Dimension.Voltage).Unit;

    /// <summary>The answer to its own example.</summary>
    public Outcome<Reckoned> OfExample() => Answer(Example.Split(' '));
}
