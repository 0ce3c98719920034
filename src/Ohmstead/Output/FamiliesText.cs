using System.Globalization;
using Ohmstead.Assessment.Families;
using Ohmstead.Assessment.Families.Statistics;
using Ohmstead.Running;

namespace Ohmstead.Output;

/// <summary>Families of parts as a table for people, and the ages at failure below it.</summary>
internal static class FamiliesText
{
    private static readonly string[] Heads =
    [
        "family",
        "parts",
        "measured",
        "boards",
        "failed as found",
        "share (95 %)",
        "failed later",
        "in circuit",
    ];

    /// <summary>Writes the table.</summary>
    public static void Write(TextWriter target, IReadOnlyList<FamilyStatistics> families)
    {
        if (families.Count == 0)
        {
            target.WriteLine("no part was measured out of circuit yet");
            return;
        }

        string[][] rows = [Heads, .. families.Select(Row)];
        int[] widths = [.. Enumerable.Range(0, Heads.Length).Select(column => rows.Max(row => row[column].Length))];
        foreach (var row in rows)
        {
            target.WriteLine(
                string.Join(
                        "  ",
                        row.Select((cell, column) => IsText(column) ? cell.PadRight(widths[column]) : cell.PadLeft(widths[column]))
                    )
                    .TrimEnd()
            );
        }

        target.WriteLine();
        target.WriteLine(FamilyWords.Caution);
        target.WriteLine(
            "'in circuit' were proved outside in circuit only and count in no share: in circuit nothing but a failure can be proved."
        );
        Ages(target, families);
    }

    private static void Ages(TextWriter target, IReadOnlyList<FamilyStatistics> families)
    {
        target.WriteLine();
        target.WriteLine($"Ages at failure. {FamilyWords.AgeFrom}");
        FamilyStatistics[] told = [.. FamilyAges.WorthTelling(families)];
        foreach (var family in told)
        {
            target.WriteLine();
            target.WriteLine(Printable.Escape($"{family.Name.Text}: {FamilyAges.Counts(family)}"));
            if (FamilyAges.FirstLooks(family) is { Length: > 0 } looks)
            {
                target.WriteLine("  " + looks);
            }

            if (family.Ages.Steps.Is(out var estimate, out _))
            {
                foreach (var step in FamilyAges.Steps(estimate))
                {
                    target.WriteLine(
                        $"  {step.Range}: {step.Share}" + (step.Together.Length == 0 ? string.Empty : $", together {step.Together}")
                    );
                }
            }

            target.WriteLine($"  {FamilyAges.Life(family)}");
        }

        if (FamilyAges.Rest(families.Count, told.Length) is { Length: > 0 } rest)
        {
            target.WriteLine();
            target.WriteLine(rest);
        }
    }

    private static bool IsText(int column) => column is 0 or 5;

    private static string[] Row(FamilyStatistics family) =>
        [
            Printable.Escape(family.Name.Text),
            Number(family.Parts),
            Number(family.Measured),
            Number(family.Boards),
            Number(family.FailedAsFound),
            family.Share is null ? string.Empty : FamilyWords.Share(family),
            Number(family.FailedLater),
            Number(family.FailedInCircuit),
        ];

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
