using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics.Hazards;

namespace Ohmstead.Assessment.Reckoning.Hazards;

/// <summary>Whether PCB must be assumed in an oil-filled capacitor.</summary>
internal static class OilFilledRule
{
    private static readonly ReckonInput Made = ReckonInput.Day("made", "the last day on which it can have been made").Optional();
    private static readonly ReckonInput Country = ReckonInput.Word(
        "country",
        "whose law: only that of the United States is known here",
        "US"
    );

    internal static ReckonRule Rule { get; } =
        new(
            "oil-filled",
            "whether an oil-filled capacitor must be taken to hold PCB",
            [Made, Country],
            "made=1979-07-01 country=US",
            given =>
                PolychlorinatedOil.MustBeAssumed(given.Has(Made) ? given.Day(Made) : null) is var assumed
                    ? Answers
                        .All(
                            Answers.Said(
                                "it must be assumed to hold 500 ppm of PCB or more",
                                assumed.Value ? "yes, until it is tested or is marked \"No PCBs\"" : "no, by this law",
                                assumed.Arithmetic,
                                assumed.Source,
                                assumed.Remarks
                            )
                        )
                        .WithCautions("polychlorinated-oil")
                    : default
        )
        {
            Validity = "the law of the United States; other countries have their own, and none of them is a test",
        };
}
