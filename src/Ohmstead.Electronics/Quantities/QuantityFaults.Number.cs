namespace Ohmstead.Electronics.Quantities;

/// <content>Faults in the number itself.</content>
internal static partial class QuantityFaults
{
    /// <summary>The number cannot begin, or cannot go on after its point, at the index.</summary>
    private static Parsed<Quantity> Number(ReadOnlySpan<char> text, int index, Dimension expected)
    {
        if (text is "-" or "–" or "—" or "−" or "‑" or "―")
            return Fault(ParseFaultKind.NotUnderstood, 0, 1, $"'{text}' is a dash and no value, expected {Expected(expected)}");
        if (LookAlike(text, expected, out var fault))
            return fault;
        if (char.IsWhiteSpace(text[0]))
            return Fault(
                ParseFaultKind.NotUnderstood,
                0,
                1,
                $"a space before '{Excerpt.From(text.Trim())}', expected the number at once",
                Offer(expected, text.Trim().ToString())
            );
        if (text[0] == '+')
            return Fault(
                ParseFaultKind.NotUnderstood,
                0,
                1,
                $"a plus sign in '{Excerpt.From(text)}', expected the number alone",
                Offer(expected, text[1..].ToString())
            );
        if (WithLetterDigits(text, expected, out fault))
            return fault;
        if (index > 0 && text[index - 1] == '.')
        {
            return index < text.Length && text[index] == ','
                ? Comma(text, index, expected)
                : Fault(
                    ParseFaultKind.NotUnderstood,
                    index - 1,
                    1,
                    $"no digit after the point in '{Excerpt.From(text)}'",
                    Offer(expected, string.Concat(text[..(index - 1)], text[index..]))
                );
        }

        if (OtherUnits.Hedge(text) is > 0 and var hedge)
            return Fault(
                ParseFaultKind.NotUnderstood,
                0,
                hedge,
                $"'{Excerpt.From(text[..hedge].TrimEnd())}' stands before the number in '{Excerpt.From(text)}', expected the number alone",
                Offer(expected, text[hedge..].ToString())
            );
        if (IsNoNumber(text, out var why))
            return Fault(ParseFaultKind.NotUnderstood, 0, text.Length, $"'{Excerpt.From(text)}' is {why}, expected {Expected(expected)}");
        if (text.Length > 1 && char.IsAsciiDigit(text[1]) && UnitLookup.OtherCode(expected, text[0]) is { } other)
            return Wrong(text, 0, text.Length, other, expected);
        return Fault(ParseFaultKind.NotUnderstood, 0, text.Length, $"'{Excerpt.From(text)}' is no number, expected {Expected(expected)}");
    }

    private static bool IsNoNumber(ReadOnlySpan<char> text, out string why)
    {
        Span<char> lower = stackalloc char[text.Length];
        text.ToLowerInvariant(lower);
        why = lower switch
        {
            "nan" => "not a number",
            "inf" or "-inf" or "infinity" or "-infinity" or "∞" or "-∞" => "infinite",
            "ol" or "o.l" or "over" or "open" or "short" or "shorted" or "--" => "a state of the meter or the part, not a value",
            _ => "",
        };
        return why.Length > 0;
    }

    /// <summary>A comma among the digits: both meanings are worked out for the person to choose from.</summary>
    private static Parsed<Quantity> Comma(ReadOnlySpan<char> text, int index, Dimension expected)
    {
        var end = index;
        while (end < text.Length && (char.IsAsciiDigit(text[end]) || text[end] is ',' or '.'))
            end++;
        var number = text[..end].ToString();
        var rest = text[end..].ToString();
        var before = number[..index];
        var after = number[(index + 1)..];
        var whole = before.Replace(".", "", StringComparison.Ordinal);
        if (after.Length == 0 || after.AsSpan().ContainsAny(',', '.'))
        {
            var joined = number.Replace(",", "", StringComparison.Ordinal);
            var grouped = after.Split('.')[0].Split(',').All(group => group.Length == 3);
            return Fault(
                ParseFaultKind.Comma,
                index,
                1,
                $"a comma in '{Excerpt.From(number)}', expected digits with at most one decimal point and no separators",
                grouped ? Offer(expected, joined + rest) : null
            );
        }

        var point = $"{whole}.{after}";
        var thousands = before.Contains('.', StringComparison.Ordinal) ? before + after : whole + after.PadRight(3, '0');
        return Fault(
            ParseFaultKind.Comma,
            index,
            1,
            $"a comma can mean {Excerpt.From(point)} or {Excerpt.From(thousands)}",
            Offer(expected, point + rest, thousands + rest)
        );
    }

    /// <summary>The letters O, l and I among the digits, typed or scanned for 0 and 1.</summary>
    private static bool WithLetterDigits(ReadOnlySpan<char> text, Dimension expected, out Parsed<Quantity> fault)
    {
        fault = default;
        var end = text[0] == '-' ? 1 : 0;
        var first = -1;
        var digits = 0;
        for (; end < text.Length && (char.IsAsciiDigit(text[end]) || text[end] is '.' or 'O' or 'o' or 'l' or 'I'); end++)
        {
            if (text[end..].StartsWith("oh", StringComparison.OrdinalIgnoreCase))
                break;
            if (char.IsAsciiDigit(text[end]))
                digits++;
            else if (text[end] != '.' && first < 0)
                first = end;
        }

        if (first < 0 || digits == 0)
            return false;
        var meant = text[..end].ToString().Replace('O', '0').Replace('o', '0').Replace('l', '1').Replace('I', '1');
        var digit = text[first] is 'O' or 'o' ? '0' : '1';
        fault = Fault(
            ParseFaultKind.LookAlike,
            first,
            1,
            $"letter {text[first]} in the number '{Excerpt.From(text[..end])}', expected the digit {digit}",
            Offer(expected, string.Concat(meant, text[end..]))
        );
        return true;
    }
}
