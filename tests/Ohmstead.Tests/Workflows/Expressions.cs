using System.Text.RegularExpressions;

namespace Ohmstead.Tests.Workflows;

/// <summary>The few expressions our workflows use: names of contexts, texts, and whether two are equal. Any other fails the test that meets
/// it.</summary>
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
        if (expression.Split(" == ") is [var left, var right])
        {
            // The host compares texts without regard to case.
            return string.Equals(Value(left), Value(right), StringComparison.OrdinalIgnoreCase) ? "true" : "false";
        }

        return Quoted.Match(expression) is { Success: true } text ? text.Groups[1].Value
            : known.TryGetValue(expression, out var value) ? value
            : throw new InvalidOperationException($"no test knows the expression '{expression}'");
    }

    [GeneratedRegex(@"\$\{\{(.*?)\}\}")]
    private static partial Regex Marked { get; }

    [GeneratedRegex("^'([^']*)'$")]
    private static partial Regex Quoted { get; }
}
