using System.Collections.Frozen;
using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Changes;

/// <summary>One of two states of a collection, as far as all its boards share it.</summary>
/// <param name="Workshop">What boards refer to.</param>
/// <param name="Today">The day on which it is judged.</param>
/// <param name="Found">What was found in the files that boards share.</param>
/// <param name="Pictures">Its pictures.</param>
public sealed record CollectionSide(Workshop Workshop, DateOnly Today, ImmutableArray<Finding> Found, IPictures Pictures)
{
    /// <summary>What becomes of stories; of none where nobody asks.</summary>
    public IStories Stories { get; init; } = NoStories.Instance;

    /// <summary>What all boards together show; null before that is known.</summary>
    public BoardsTogether? Together { get; init; }

    /// <summary>Judges boards of this side, for one thread at a time.</summary>
    /// <param name="memo">What is known already: the other side asks for the same.</param>
    public BoardJudge Judge(JudgeMemo memo) =>
        new(Workshop, SharedFaults.From(Workshop, Together is null ? Found : Found.Concat(Together.Findings)), Today, Pictures, memo)
        {
            Pieces = Together?.Pieces ?? PieceShares.None,
            Stories = Stories,
        };

    /// <summary>This side with one kind of what boards share taken from another.</summary>
    /// <param name="other">The other side.</param>
    /// <param name="kind">The kind.</param>
    internal CollectionSide With(CollectionSide other, InputKind kind)
    {
        if (kind == InputKind.Day)
        {
            return this with { Today = other.Today };
        }

        var (own, its) = (Workshop, other.Workshop);
        CollectionSide From(InputKind asked) => kind == asked ? other : this;
        var designs = From(InputKind.Design).Workshop;
        ImmutableArray<Finding> found =
        [
            .. Found.Where(finding => KindOf(finding.Place.Path) != kind),
            .. other.Found.Where(finding => KindOf(finding.Place.Path) == kind),
        ];
        return this with
        {
            Workshop = new(
                From(InputKind.Rule).Workshop.Collection,
                From(InputKind.Calibration).Workshop.InstrumentsFile,
                From(InputKind.Stock).Workshop.StockFile,
                designs.DesignFiles
            )
            {
                UnreadDesigns = designs.UnreadDesigns,
                FilesWithErrors = own
                    .FilesWithErrors.Where(path => KindOf(path) != kind)
                    .Concat(its.FilesWithErrors.Where(path => KindOf(path) == kind))
                    .ToFrozenSet(StringComparer.Ordinal),
            },
            Found = found,
            Together = From(InputKind.Stock).Together,
        };
    }

    private static InputKind? KindOf(string path) =>
        path switch
        {
            "collection.yaml" => InputKind.Rule,
            "instruments.yaml" => InputKind.Calibration,
            "stock.yaml" => InputKind.Stock,
            _ when path.StartsWith("designs/", StringComparison.Ordinal) => InputKind.Design,
            _ => null,
        };
}
