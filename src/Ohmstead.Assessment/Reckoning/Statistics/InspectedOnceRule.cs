using System.Globalization;
using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Statistics;

namespace Ohmstead.Assessment.Reckoning.Statistics;

/// <summary>The share bad by age from single looks.</summary>
internal static class InspectedOnceRule
{
    private static readonly ReckonInput Looks = ReckonInput.List("looks", "bad/looked@age for each age");

    internal static ReckonRule Rule { get; } =
        new(
            "inspected-once",
            "the share bad by age when each item was looked at once",
            [Looks],
            "looks=1/10@10,4/10@20,3/10@30,8/10@40",
            given =>
                Read(given.List(Looks)).Is(out var looks, out var reason)
                    ? CurrentStatus
                        .Estimate(looks)
                        .Then(shares => new Reckoned([
                            .. shares.Select(share =>
                                Answers.Figure(
                                    $"bad by {ShownAs.Plain.Text((decimal)share.Age)}",
                                    (decimal)share.Share,
                                    ShownAs.Percent,
                                    string.Create(
                                        CultureInfo.InvariantCulture,
                                        $"{share.Bad} of {share.Looked} at this age; the share never falls"
                                    ),
                                    CurrentStatus.Source
                                )
                            ),
                        ]))
                    : Outcome<Reckoned>.Refused(reason)
        )
        {
            Formula = "neighbours that would fall are pooled",
        };

    private static Outcome<IReadOnlyList<Inspection>> Read(IReadOnlyList<string> entries)
    {
        var looks = new List<Inspection>(entries.Count);
        foreach (var entry in entries)
        {
            string[] parts = entry.Split('/', '@');
            if (
                parts.Length != 3
                || !int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out var bad)
                || !int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var looked)
                || Ages.Number(parts[2]) is not { } age
            )
            {
                return Outcome<IReadOnlyList<Inspection>>.Refused(
                    $"'{entry}' is no look, expected such as 1/10@20 for 1 bad of 10 at age 20"
                );
            }

            looks.Add(new Inspection(age, bad, looked));
        }

        return Outcome<IReadOnlyList<Inspection>>.From(looks);
    }
}
