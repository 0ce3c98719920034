using Ohmstead.Electronics;

namespace Ohmstead.Assessment.Reckoning;

/// <summary>One rule of the electronics library that can be worked out at the bench from figures given by hand.</summary>
/// <param name="Name">Its name, in small letters with hyphens.</param>
/// <param name="Computes">What it computes, in a few words.</param>
/// <param name="Inputs">What it is computed from.</param>
/// <param name="Example">Inputs that work, as a person would write them.</param>
/// <param name="Work">Works it out.</param>
public sealed record ReckonRule(string Name, string Computes, IReadOnlyList<ReckonInput> Inputs, string Example, Func<GivenInputs, Outcome<Reckoned>> Work)
{
    /// <summary>The formula in the symbols of the trade, or null where a table answers.</summary>
    public string? Formula { get; init; }

    /// <summary>Within what bounds the answer means something, or null when it always does.</summary>
    public string? Validity { get; init; }

    /// <summary>The answer to inputs as written (name=value), or the reason why there is none.</summary>
    public Outcome<Reckoned> Of(IReadOnlyList<string> words) =>
        ReckonReader.Read(this, words).Then(Work).Is(out var answer, out var reason) ? answer : Outcome<Reckoned>.Refused(reason);

    /// <summary>The answer to its own example.</summary>
    public Outcome<Reckoned> OfExample() => Of(Example.Split(' '));
}
