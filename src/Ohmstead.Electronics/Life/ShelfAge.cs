namespace Ohmstead.Electronics.Life;

/// <summary>What makers say of a wet aluminium electrolytic that was never used. They disagree, and none of it is a verdict:
/// measure.</summary>
/// <param name="Years">Its age in years.</param>
/// <param name="Advice">What each source says at that age.</param>
public sealed record ShelfAge(double Years, IReadOnlyList<ShelfAdvice> Advice)
{
    /// <summary>What follows from age alone.</summary>
    public const string Meaning = "age alone is a prompt to measure: makers' shelf lives are guarantees, not physics";

    private static readonly Source UnitedStates = Source.Published(
        "Cornell Dubilier, letter of October 1993, read in a private copy",
        "shelf life at 35 degrees"
    );
    private static readonly Source Second = Source.Practice(
        "storage notes of EPCOS and Nichicon, quoted in the trade: two years at 5 to 35 degrees"
    );
    private static readonly Source Third = Source.Published("Nippon Chemi-Con FAQ 29BDH9T", "storage");

    // From so many years on, the source says this.
    private static readonly IReadOnlyList<(Source Source, double FromYears, string Says)> Statements =
    [
        (UnitedStates, 0, "meets all limits"),
        (UnitedStates, 1, "says nothing until three years"),
        (UnitedStates, 3, "test before use"),
        (UnitedStates, 4, "form again, as is usual"),
        (UnitedStates, 5, "meets its limits after forming again"),
        (UnitedStates, 10, "end of useful shelf life"),
        (Second, 0, "use as it is"),
        (Second, 2, "form again"),
        (Third, 0, "form again before use what was stored hot or for long, never rated voltage at once"),
    ];

    /// <summary>The age on a day, or a refusal when the part was made later.</summary>
    public static Outcome<ShelfAge> Compute(DateOnly made, DateOnly asOf) =>
        Domain
            .Require(Domain.That(made <= asOf, "the part was made after the day asked for"))
            .Compute(() =>
            {
                double years = (asOf.DayNumber - made.DayNumber) / 365.25;
                IEnumerable<ShelfAdvice> advice = Statements
                    .Where(s => s.FromYears <= years)
                    .GroupBy(s => s.Source)
                    .Select(g => new ShelfAdvice(g.Last().Says, g.Key));
                return new ShelfAge(years, [.. advice]);
            });
}

/// <summary>What one source says at an age.</summary>
/// <param name="Says">Its advice in short.</param>
/// <param name="Source">The source.</param>
public sealed record ShelfAdvice(string Says, Source Source);
