using Ohmstead.Assessment.Verdicts;
using Ohmstead.Running;

namespace Ohmstead.Writing;

/// <summary>Which colour a verdict has. The words beside it say the same.</summary>
internal static class VerdictColour
{
    /// <summary>The colour of an outcome.</summary>
    public static Func<string, string> For(Palette colours, VerdictOutcome outcome) =>
        outcome switch
        {
            VerdictOutcome.Outside => colours.Wrong,
            VerdictOutcome.Undecided or VerdictOutcome.ProvesNothing => colours.Doubtful,
            VerdictOutcome.Inside => colours.Right,
            _ => static text => text,
        };
}
