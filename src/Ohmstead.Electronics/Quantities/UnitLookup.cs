namespace Ohmstead.Electronics.Quantities;

/// <summary>Finds units by their spelling.</summary>
internal static class UnitLookup
{
    /// <summary>The unit the text spells in a dimension: its power of ten, prefix included, and its whole factor.</summary>
    internal static bool TryFind(Dimension dimension, ReadOnlySpan<char> text, out int power, out int multiplier)
    {
        foreach (ref readonly var unit in UnitTable.UnitsFor(dimension))
        {
            if (!unit.Spells(text, out var prefix))
                continue;
            power = unit.Power + prefix;
            multiplier = unit.Multiplier;
            return true;
        }

        (power, multiplier) = (0, 1);
        return false;
    }

    /// <summary>Whether the text is a farad with an m before it, which is micro on old print and milli (or mega) in SI.</summary>
    internal static bool IsTwoFacedFarad(Dimension dimension, ReadOnlySpan<char> text) =>
        dimension is Dimension.Capacitance && text is ['m' or 'M', 'f' or 'F'];

    /// <summary>Another dimension in which the text is a unit, or null. A letter alone is taken for a unit (m) before it is taken for a
    /// code (m for milli).</summary>
    internal static Dimension? OtherDimension(Dimension expected, ReadOnlySpan<char> text)
    {
        var letter = text.Length == 1 && Unit.TryPrefix(text[0], out _);
        Dimension? code = null;
        foreach (var dimension in Enum.GetValues<Dimension>())
        {
            if (dimension == expected || !(TryFind(dimension, text, out _, out _) || IsTwoFacedFarad(dimension, text)))
                continue;
            if (!letter || dimension is not (Dimension.Capacitance or Dimension.Resistance))
                return dimension;
            code ??= dimension;
        }

        return code;
    }

    /// <summary>Another dimension in which the letter stands for a decimal point, or null.</summary>
    internal static Dimension? OtherCode(Dimension expected, char letter)
    {
        foreach (var dimension in Enum.GetValues<Dimension>())
        {
            if (dimension != expected && DimensionFacts.TryCodeLetter(dimension, letter, out _))
                return dimension;
        }

        return null;
    }

    /// <summary>The known unit that the text is most likely a slip for, or null: one letter wrong, or two in a long word, and the same
    /// first letter.</summary>
    internal static string? Nearest(Dimension dimension, string text)
    {
        string? best = null;
        if (text.AsSpan().ContainsAnyInRange('0', '9') || text.Contains(' ', StringComparison.Ordinal))
            return null;
        var least = text.Length >= 5 ? 3 : 2;
        foreach (var unit in Candidates(dimension))
        {
            var distance = Distance(text, unit);
            if (distance >= least || text.Length < 2 || char.ToUpperInvariant(text[0]) != char.ToUpperInvariant(unit[0]))
                continue;
            (best, least) = (unit, distance);
        }

        return best;
    }

    private static IEnumerable<string> Candidates(Dimension dimension)
    {
        foreach (var usual in UnitTable.Usual(dimension))
            yield return usual;
        foreach (var unit in UnitTable.UnitsFor(dimension).ToArray())
            yield return unit.Spelling;
    }

    /// <summary>The number of letters to add, drop or change, upper and lower case taken as one.</summary>
    private static int Distance(string left, string right)
    {
        var row = new int[right.Length + 1];
        for (var j = 0; j <= right.Length; j++)
            row[j] = j;
        for (var i = 1; i <= left.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= right.Length; j++)
            {
                var same = char.ToUpperInvariant(left[i - 1]) == char.ToUpperInvariant(right[j - 1]);
                var cost = Math.Min(Math.Min(row[j], row[j - 1]) + 1, diagonal + (same ? 0 : 1));
                diagonal = row[j];
                row[j] = cost;
            }
        }

        return row[^1];
    }
}
