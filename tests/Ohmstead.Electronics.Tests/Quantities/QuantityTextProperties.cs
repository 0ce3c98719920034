using CsCheck;
using Ohmstead.Electronics.Decimals;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Tests.Quantities;

public class QuantityTextProperties
{
    private static readonly Gen<Quantity> Plausible = Gen.Select(
            Gen.Enum<Dimension>(),
            Gen.Long[0, 999_999_999_999],
            Gen.Int[0, 16],
            Gen.Bool
        )
        .Select(
            (dimension, digits, scale, negative) => new Quantity((negative ? -digits : digits) * DecimalMath.PowerOfTen(-scale), dimension)
        )
        .Where(quantity => QuantityText.Parse(QuantityText.Format(quantity), quantity.Dimension).Fault?.Kind != ParseFaultKind.OutOfRange);

    private static readonly Gen<string> Texts = Gen.OneOf(
        Gen.String,
        Gen.String["0123456789.,-+ eEkKMRpnumµFΩhm%/OlxV"],
        Gen.Select(Gen.Int[-5, 999], Gen.String["pnuµmkKMGT ΩFVAHzohm%\u2212\u0661\uFF11,"], (number, rest) =>
            number.ToString(System.Globalization.CultureInfo.InvariantCulture) + rest
        )
    );

    [Fact]
    public void What_is_written_is_read_back_as_the_same_quantity() =>
        Plausible.Sample(quantity => QuantityText.Parse(QuantityText.Format(quantity), quantity.Dimension).Value == quantity);

    [Fact]
    public void Writing_what_was_read_gives_the_same_bytes() =>
        Plausible.Sample(quantity =>
        {
            var once = QuantityText.Format(quantity);
            return QuantityText.Format(QuantityText.Parse(once, quantity.Dimension).Value) == once;
        });

    [Fact]
    public void Any_text_gives_a_value_or_a_fault_that_lies_inside_it() =>
        Gen.Select(Texts, Gen.Enum<Dimension>(), Gen.Enum<UnitPrint>())
            .Sample(
                (text, dimension, print) =>
                    QuantityText.Parse(text, dimension, print).Is(out _, out var fault)
                    || (
                        fault.Offset >= 0
                        && fault.Length >= Math.Min(1, text.Length)
                        && fault.Offset + fault.Length <= text.Length
                        && fault.Message.Length > 0
                    )
            );

    [Fact]
    public void Whatever_is_offered_to_be_written_instead_can_be_read() =>
        Gen.Select(Texts, Gen.Enum<Dimension>())
            .Sample(
                (text, dimension) =>
                    QuantityText.Parse(text, dimension).Fault?.NextStep is not { } next
                    || next.Split([", ", " or "], StringSplitOptions.None).All(offer => QuantityText.Parse(offer, dimension).Fault is null)
            );
}
