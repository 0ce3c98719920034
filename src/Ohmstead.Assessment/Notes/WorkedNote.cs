using Ohmstead.Electronics;

namespace Ohmstead.Assessment.Notes;

/// <summary>Something computed that stands beside verdicts and decides none: what follows from figures of the record, with its working and
/// source.</summary>
/// <param name="Says">What it says, in a few words.</param>
/// <param name="Arithmetic">The working with the figures put in.</param>
/// <param name="Source">Where the rule comes from.</param>
public sealed record WorkedNote(string Says, string Arithmetic, string Source)
{
    /// <summary>The note on one line.</summary>
    public string Line => $"{Says}: {Arithmetic} ({Source})";

    internal static WorkedNote From<T>(string says, Worked<T> worked) =>
        new(says, string.Join("; ", worked.Remarks.Prepend(worked.Arithmetic.Text)), worked.Source.Text);
}
