using Ohmstead.Electronics;
using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Parts;

/// <summary>How long a fuse may carry an overload.</summary>
internal static class FuseRule
{
    private static readonly ReckonInput Rated = ReckonInput.Of("rated", Dimension.Current, "the rated current").Within(0.001m, 100m);
    private static readonly ReckonInput Speed = ReckonInput.Word("speed", "F is quick, T is slow", "F", "T");
    private static readonly ReckonInput System = ReckonInput.Word("system", "whose rating it is", "IEC", "UL").Usually("IEC");

    internal static ReckonRule Rule { get; } = new(
        "fuse", "within what time a fuse must open at an overload",
        [Rated, Speed, System],
        "rated=500mA speed=T",
        given => Answers.All([.. FuseFigures.All
                .Where(row => row.System == given.Text(System) && (row.Speed is not { } speed || given.Text(Speed)[0] == speed))
                .Select(row => Outcome<ReckonedLine>.Of(Answers.Figure(
                    $"at {Answers.Text(given[Rated] * row.TimesRated, Dimension.Current)} opens within", row.OpensWithinSeconds, Dimension.Duration, $"{Answers.Text(row.TimesRated, ShownAs.Plain)} x {given.Text(Rated)}", row.Source)))])
            .Then(answer => answer with { Lines = [.. answer.Lines.Select(line => line with { Remarks = [FuseFigures.Meaning] })] })
            .WithCaution("a fuse is replaced by one of the same rating, speed, system, breaking capacity and size, never by a larger one"))
    {
        Validity = "a rating in one system is no rating in the other",
    };
}
