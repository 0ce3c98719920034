using System.Globalization;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Reckoning.Basis;

/// <summary>Reads what was written for a rule, name=value for name=value. What is wrong or missing comes back as one line that names
/// it.</summary>
internal static class ReckonReader
{
    private const int LongestCount = 7;

    internal static Outcome<GivenInputs> Read(ReckonRule rule, IReadOnlyList<string> words)
    {
        var entries = new Dictionary<string, GivenInputs.Entry>(StringComparer.Ordinal);
        foreach (var word in words)
        {
            var at = word.IndexOf('=', StringComparison.Ordinal);
            if (at <= 0 || at == word.Length - 1)
            {
                return Refuse(Nameless(rule, word));
            }

            var (name, text) = (word[..at], word[(at + 1)..].Trim());
            if (rule.Inputs.FirstOrDefault(input => input.Name == name) is not { } input)
            {
                var near = Nearest.To(name, rule.Inputs.Select(known => known.Name));
                return Refuse(
                    Nearest.Told(
                        $"{rule.Name} has no input '{name}'",
                        near,
                        $", it has {string.Join(", ", rule.Inputs.Select(known => known.Name))}"
                    )
                );
            }

            if (!Value(input, text).Is(out var entry, out var reason))
            {
                return Refuse($"{name}: {reason}");
            }

            if (input.Kind is InputKind.Quantity or InputKind.Kelvin or InputKind.Count && input.Against(entry.Number) is { } outside)
            {
                return Refuse($"{name}: {outside}");
            }

            if (!entries.TryAdd(name, entry))
            {
                return Refuse($"{name} is given twice");
            }
        }

        string[] missing =
        [
            .. rule
                .Inputs.Where(input => input.IsNeeded && !entries.ContainsKey(input.Name))
                .Select(input => $"{input.Name} ({input.Form})"),
        ];
        if (missing.Length > 0)
        {
            return Refuse($"{rule.Name} needs {string.Join(" and ", missing)}");
        }

        foreach (var input in rule.Inputs.Where(input => input.Usual is not null && !entries.ContainsKey(input.Name)))
        {
            entries[input.Name] = Value(input, input.Usual!).Value;
        }

        return Outcome<GivenInputs>.From(GivenInputs.From(entries));
    }

    private static Outcome<GivenInputs.Entry> Value(ReckonInput input, string text) =>
        input.Kind switch
        {
            InputKind.Quantity => Quantity(text, input.Dimension),
            InputKind.Kelvin => Quantity(text.EndsWith('K') ? text[..^1].TrimEnd() : text, Dimension.Number),
            InputKind.Count => text.Length <= LongestCount
            && int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var count)
                ? Entry(new(text, count))
                : Fail($"'{text}' is no whole number, expected such as 12"),
            InputKind.Word => Word(input, text),
            InputKind.Date => DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
                ? Entry(new(text, Day: day))
                : Fail($"'{text}' is no day, expected such as 2026-03-14"),
            _ => Entry(new(text)),
        };

    private static Outcome<GivenInputs.Entry> Quantity(string text, Dimension dimension) =>
        QuantityText.Parse(text, dimension).Is(out var quantity, out var fault)
            ? Entry(new(dimension is Dimension.Ratio or Dimension.Number ? text : QuantityText.Format(quantity), quantity.Value))
            : Fail(fault.NextStep is { } next ? $"{fault.Message}; write {next}" : fault.Message);

    private static Outcome<GivenInputs.Entry> Word(ReckonInput input, string text)
    {
        if (input.Words.FirstOrDefault(word => string.Equals(word, text, StringComparison.OrdinalIgnoreCase)) is { } known)
        {
            return Entry(new(known));
        }

        return Fail($"'{text}' is not known, expected {string.Join(", ", input.Words)}");
    }

    // 391uF alone: the first input that can mean it is named.
    private static string Nameless(ReckonRule rule, string word)
    {
        var meant = word.Contains('=', StringComparison.Ordinal)
            ? null
            : rule.Inputs.FirstOrDefault(input =>
                input.Kind is InputKind.Quantity
                && input.Dimension is not Dimension.Number and not Dimension.Ratio
                && Value(input, word).Is(out _, out _)
            );
        return meant is null ? $"'{word}' is no input, expected name=value" : $"'{word}' has no name, expected such as {meant.Name}={word}";
    }

    private static Outcome<GivenInputs.Entry> Entry(GivenInputs.Entry entry) => Outcome<GivenInputs.Entry>.From(entry);

    private static Outcome<GivenInputs.Entry> Fail(string reason) => Outcome<GivenInputs.Entry>.Refused(reason);

    private static Outcome<GivenInputs> Refuse(string reason) => Outcome<GivenInputs>.Refused(reason);
}
