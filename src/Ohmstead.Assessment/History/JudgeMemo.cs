using Ohmstead.Assessment.Limits;

namespace Ohmstead.Assessment.History;

/// <summary>What judges know already, for several that work one after the other.</summary>
/// <remarks>Used by one thread at a time.</remarks>
public sealed class JudgeMemo
{
    /// <summary>The limits of marks: they are the same in every workshop.</summary>
    public LimitMemo Limits { get; } = new();

    /// <summary>The verdicts on the readings of one board; null where each board is judged once.</summary>
    public VerdictMemo? Verdicts { get; init; }

    /// <summary>Another board begins.</summary>
    public void Begin() => Verdicts?.Begin();
}
