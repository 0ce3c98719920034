using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Markings;

namespace Ohmstead.Assessment.Reckoning.Parts;

/// <summary>Which group on an integrated circuit is the date.</summary>
internal static class PackageDateRule
{
    private const int First = 1960;
    private const int Last = 2030;

    private static readonly ReckonInput Groups = ReckonInput.List("print", "the groups of characters as printed");
    private static readonly ReckonInput Type = ReckonInput.Free("type", "the type number, when it is known").Optional();

    internal static ReckonRule Rule { get; } =
        new(
            "package-date",
            "which group of figures on an integrated circuit is its date, and which dates it can be",
            [Groups, Type],
            "print=SN7404N,7834 type=SN7404N",
            given =>
                DateCode
                    .OnPackage(given.List(Groups), given.Has(Type) ? given.Text(Type) : null, new YearRange(First, Last))
                    .Is(out var dates, out var fault)
                    ? Answers.All([
                        .. dates.Readings.Select(reading =>
                            Answers.Said(
                                "date",
                                reading.Value.ToString(),
                                reading.Rule,
                                reading.Source,
                                dates.IsCertain ? [] : ["more than one can be meant: the print alone does not decide"]
                            )
                        ),
                    ])
                    : Outcome<Reckoned>.Refused(fault.Message)
        )
        {
            Validity = "four figures of year and week, 1960 to 2030; 7404, 7432 and 8212 are types and dates alike",
        };
}
