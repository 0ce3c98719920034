using System.Globalization;

namespace Ohmstead.Electronics.Tests;

/// <summary>Attributes cannot hold decimals: rows of a theory write them as text.</summary>
internal static class Exact
{
    internal static decimal Of(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);
}
