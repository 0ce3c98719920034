using Ohmstead.Assessment.Reckoning;
using Ohmstead.Assessment.Reckoning.Basis;

namespace Ohmstead.Assessment.Tests.Reckoning;

/// <summary>Works out a rule as a person at the bench would write it.</summary>
internal static class Bench
{
    /// <summary>The line of an answer that begins with these words.</summary>
    internal static ReckonedLine Line(string rule, string inputs, string what)
    {
        var outcome = Assert.IsType<ReckonRule>(ReckonCatalogue.Find(rule)).Answer(inputs.Split(' '));
        Assert.Null(outcome.Refusal);
        return outcome.Value.Lines.First(line => line.What.StartsWith(what, StringComparison.Ordinal));
    }

    /// <summary>All lines of an answer.</summary>
    internal static IReadOnlyList<ReckonedLine> Lines(string rule, string inputs)
    {
        var outcome = Assert.IsType<ReckonRule>(ReckonCatalogue.Find(rule)).Answer(inputs.Split(' '));
        Assert.Null(outcome.Refusal);
        return outcome.Value.Lines;
    }

    /// <summary>Holds the figure of a line against the one that is expected.</summary>
    internal static void Expect(string rule, string inputs, string what, double expected, double within)
    {
        var number = Assert.NotNull(Line(rule, inputs, what).Number);
        Assert.InRange((double)number, expected - within, expected + within);
    }

    /// <summary>Why a rule has no answer.</summary>
    internal static string Refusal(string rule, string inputs) =>
        Assert.IsType<string>(Assert.IsType<ReckonRule>(ReckonCatalogue.Find(rule)).Answer(inputs.Split(' ')).Refusal);
}
