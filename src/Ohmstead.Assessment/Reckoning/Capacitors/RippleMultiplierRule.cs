using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Capacitors;

/// <summary>What multipliers data sheets give.</summary>
internal static class RippleMultiplierRule
{
    private static readonly ReckonInput Grade = ReckonInput
        .Word(
            "grade",
            string.Join("; ", RippleGrade.All.Select(grade => $"{grade.Name}, {grade.Meaning}")),
            [.. RippleGrade.All.Select(grade => grade.Name)]
        )
        .Usually(RippleGrade.GeneralPurpose.Name);

    internal static ReckonRule Rule { get; } =
        new(
            "ripple-multiplier",
            "how much more ripple current of another frequency than the rated one a part bears",
            [SharedInputs.Frequency, Grade],
            "frequency=1kHz",
            given => Work(RippleGrade.All.First(grade => grade.Name == given.Text(Grade)), given[SharedInputs.Frequency])
        )
        {
            Validity =
                "the row at or under the frequency is told; a large can bears less than a small part; makers differ widely, the part's "
                + "own data sheet comes first",
        };

    private static Outcome<Reckoned> Work(RippleGrade grade, decimal hertz)
    {
        if (!grade.At(hertz).Is(out var row, out var reason))
        {
            return Outcome<Reckoned>.Refused(reason);
        }

        var where = $"row of {Answers.Text(row.Hertz, Dimension.Frequency)}, {grade.Meaning}";
        return Answers.All(
            Outcome<ReckonedLine>.From(Answers.Figure("least multiplier", row.Low, ShownAs.Plain, where, grade.Source)),
            Outcome<ReckonedLine>.From(Answers.Figure("greatest multiplier", row.High, ShownAs.Plain, where, grade.Source))
        );
    }
}
