using Ohmstead.Electronics;
using Ohmstead.Electronics.Parts;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>What is usually accepted of a part in words, for a reading that no figure is known for.</summary>
public static class UsualWords
{
    /// <summary>The words, with their source, or null when nothing is known.</summary>
    public static LazyText? For(IMarkedPart part) =>
        part.Kind.Value is { Accepted: { } known } kind
            ? new(() =>
                $"usually accepted, {known.Measure}: {known.Accept} ({known.Source.Text})"
                + (kind == PartKinds.Fuse ? $"; {FuseFigures.Meaning}" : string.Empty)
            )
            : null;
}
