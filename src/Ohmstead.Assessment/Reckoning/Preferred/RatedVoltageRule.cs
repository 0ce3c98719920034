using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.PreferredValues;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Preferred;

/// <summary>Today's rating for an old one.</summary>
internal static class RatedVoltageRule
{
    internal static ReckonRule Rule { get; } =
        new(
            "rated-voltage",
            "the rated voltage to look for today in place of an old mark",
            [SharedInputs.RatedVoltage],
            "rated-voltage=64V",
            given => Work(RatedVoltages.Replace(new Quantity(given[SharedInputs.RatedVoltage], Dimension.Voltage)))
        )
        {
            Formula = "the lowest rating that is made and not below the mark",
            Validity = "aluminium electrolytics; never below the mark",
        };

    private static Outcome<Reckoned> Work(VoltageReplacement found) =>
        found.Rating is not { } rating
            ? Outcome<Reckoned>.Refused($"{QuantityText.Format(found.Mark)}: {found.Note}")
            : Answers.All(
                Outcome<ReckonedLine>.From(
                    Answers.Figure(
                        "rating to look for",
                        rating.Value,
                        Dimension.Voltage,
                        $"{Answers.Text(found.Ratio ?? 1m, ShownAs.Plain)} x {QuantityText.Format(found.Mark)}",
                        Answers.Practice("ratings that are made")
                    ) with
                    {
                        Remarks =
                        [
                            .. found.Also.Select(also => $"{QuantityText.Format(also)} may be preferred"),
                            .. found.Note is { } note ? [note] : Array.Empty<string>(),
                        ],
                    }
                ),
                Answers.Said(
                    "preferred ratings",
                    $"{Row(RatedVoltages.FirstChoice)} V, then {Row(RatedVoltages.SecondChoice)} V, times 1, 10 and 100",
                    string.Empty,
                    new Source("IEC 60384-4:2016", "2.2.3", SourceBasis.Memory)
                ),
                Answers.Said(
                    "ratings that are made",
                    string.Join(", ", RatedVoltages.Market.Select(QuantityText.Format)),
                    string.Empty,
                    Answers.Practice("ratings that are made")
                )
            );

    private static string Row(IEnumerable<decimal> volts) => string.Join(", ", volts.Select(volt => Answers.Text(volt, ShownAs.Plain)));
}
