using System.Text.RegularExpressions;

namespace Ohmstead.Machine.Tests.Workflows;

/// <summary>The few expressions our workflows use: names of contexts, texts, whether two are equal or not, whether all hold. Any other
/// fails the test that meets it.</summary>
/// <param name="known">What each name stands for.</param>
internal sealed partial class Expressions(IReadOnlyDictionary<string, string> known)
{
    /// <summary>A text with every expression in it put in.</summary>
    public string Fill(string text) => Marked.Replace(text, match => Value(match.Groups[1].Value.Trim()));

    /// <summary>A condition, which needs no marks around it. None is true.</summary>
    public bool Holds(string? condition) =>
        condition is null || Value(Marked.Replace(condition, match => match.Groups[1].Value).Trim()) == "true";

    private string Value(string expression)
    {
        if (expression.Split(" && ") is { Length: > 1 } all)
        {
            return all.All(one => Value(one) == "true") ? "true" : "false";
        }

        // The host compares texts without regard to case.
        if (expression.Split(" == ") is [var left, var right])
        {
            return string.Equals(Value(left), Value(right), StringComparison.OrdinalIgnoreCase) ? "true" : "false";
        }

        if (expression.Split(" != ") is [var one, var other])
        {
            return string.Equals(Value(one), Value(other), StringComparison.OrdinalIgnoreCase) ? "false" : "true";
        }

        return expression == "always()" ? "true"
            : Quoted.Match(expression) is { Success: true } text ? text.Groups[1].Value
            : known.TryGetValue(expression, out var value) ? value
            // What a step did not say is nothing.
            : Output.IsMatch(expression) ? string.Empty
            : throw new InvalidOperationException($"no test knows the expression '{expression}'");
    }

    [GeneratedRegex(@"\$\{\{(.*?)\}\}")]
    private static partial Regex Marked { get; }

    [GeneratedRegex("^'([^']*)'$")]
    private static partial Regex Quoted { get; }

    [GeneratedRegex(@"^steps\.[a-z-]+\.outputs\.[a-z_-]+$")]
    private static partial Regex Output { get; }
}
