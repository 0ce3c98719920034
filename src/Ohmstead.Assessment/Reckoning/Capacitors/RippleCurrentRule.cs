using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Capacitors;

/// <summary>Ripple currents of several frequencies against one rating.</summary>
internal static class RippleCurrentRule
{
    private static readonly ReckonInput Parts = ReckonInput.List("parts", "each current with its frequency multiplier: I/F");

    internal static ReckonRule Rule { get; } =
        new(
            "ripple-current",
            "the current at the rated frequency that heats as much as several ripple currents together",
            [Parts],
            "parts=1A/1.0,0.8A/1.4",
            given =>
                Read(given.List(Parts)).Is(out var parts, out var reason)
                    ? Answers.All(Answers.Line("equivalent ripple current", RippleCurrent.Equivalent(parts), Dimension.Current))
                    : Outcome<Reckoned>.Refused(reason)
        )
        {
            Formula = "I = sqrt(sum (Ii / Fi)²)",
            Validity = "currents r.m.s.; calculate ripple-multiplier tells usual multipliers",
        };

    private static Outcome<IReadOnlyList<RippleComponent>> Read(IReadOnlyList<string> entries)
    {
        var parts = new List<RippleComponent>(entries.Count);
        foreach (var entry in entries)
        {
            var at = entry.IndexOf('/', StringComparison.Ordinal);
            if (
                at < 0
                || !Answers.Parsed(entry[..at], Dimension.Current).Is(out var amperes, out _)
                || !Answers.Parsed(entry[(at + 1)..], Dimension.Number).Is(out var factor, out _)
            )
            {
                return Outcome<IReadOnlyList<RippleComponent>>.Refused(
                    $"'{entry}' is no current with its multiplier, expected such as 0.8A/1.4"
                );
            }

            parts.Add(new RippleComponent((double)amperes.Value, (double)factor.Value));
        }

        return Outcome<IReadOnlyList<RippleComponent>>.From(parts);
    }
}
