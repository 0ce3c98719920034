using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Parts;

/// <summary>How long a fuse may carry an overload, and what it can interrupt.</summary>
internal static class FuseRule
{
    private static readonly ReckonInput Rated = ReckonInput.Create("rated", Dimension.Current, "the rated current").Within(0.001m, 100m);
    private static readonly ReckonInput Speed = ReckonInput.Word("speed", "F is quick, T is slow", FuseLetters.Speeds);
    private static readonly ReckonInput Breaking = ReckonInput
        .Word("breaking", "L is low, mostly glass, H is high, mostly ceramic; both are told where it is not given", FuseLetters.Breakings)
        .Optional();
    private static readonly ReckonInput System = ReckonInput.Word("system", "whose rating it is", "IEC", "UL").Usually("IEC");

    internal static ReckonRule Rule { get; } =
        new(
            "fuse",
            "within what time a fuse must open at an overload, and what it can interrupt",
            [Rated, Speed, Breaking, System],
            "rated=500mA speed=T breaking=L",
            given =>
                Answer(given)
                    .Then(answer => answer with { Lines = [.. answer.Lines.Select(line => line with { Remarks = [FuseFigures.Meaning] })] })
                    .WithCaution(
                        "a fuse is replaced by one of the same rating, speed, system, breaking capacity and size, never by a larger one"
                    )
        )
        {
            Validity =
                "a rating in one system is no rating in the other; of M, FF and TT, and of E, no figures are known here: no source at "
                + "hand has them",
        };

    private static Outcome<Reckoned> Answer(GivenInputs given)
    {
        var system = given.Text(System) == "UL" ? FuseSystem.UL : FuseSystem.IEC;
        var breaking = system == FuseSystem.UL || !given.Has(Breaking) ? null : FuseLetters.Breaking(given.Text(Breaking));
        IEnumerable<Outcome<ReckonedLine>> times = FuseFigures
            .For(given[Rated], system, FuseLetters.Speed(given.Text(Speed)), breaking)
            .Select(row => Line(given, row, breaking))
            .OfType<Outcome<ReckonedLine>>();
        var breaks = FuseFigures.BreaksAmperes(system, breaking, given[Rated]);
        return Answers.All([
            .. times,
            .. breaks.Is(out _, out _) ? [Answers.Line("it interrupts", breaks, Dimension.Current)] : Array.Empty<Outcome<ReckonedLine>>(),
        ]);
    }

    private static Outcome<ReckonedLine>? Line(GivenInputs given, FuseFigures row, FuseBreaking? breaking)
    {
        var seconds = row.OpensWithinSeconds ?? row.CarriesSeconds ?? 0m;
        var letter = row.Breaking is { } its && breaking is null ? $"{its}: " : string.Empty;
        return Outcome<ReckonedLine>.From(
            Answers.Figure(
                $"{letter}at {Answers.Text(given[Rated] * row.TimesRated, Dimension.Current)} "
                    + $"{(row.OpensWithinSeconds is null ? "carries" : "opens within")}",
                seconds,
                Dimension.Duration,
                $"{Answers.Text(row.TimesRated, ShownAs.Plain)} x {given.Text(Rated)}: it {row.Does}",
                row.Source
            )
        );
    }
}
