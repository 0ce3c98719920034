using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Basis;

/// <summary>What a check is called and looks for. Its page of explanation has the same name.</summary>
/// <param name="Name">The readable name, in small letters with hyphens.</param>
/// <param name="Severity">How serious its findings are.</param>
/// <param name="Summary">One line that says what a finding of it means.</param>
/// <param name="Effect">What a finding of it does to the state of the board it is about.</param>
/// <param name="Because">Why, in one line.</param>
public sealed record CheckDescription(string Name, Severity Severity, string Summary, CheckEffect Effect, string Because);

/// <summary>A check of one record by itself: a board, a design, the drawer, the collection. It holds no state and never throws for what a
/// record can hold.</summary>
public interface IFileCheck
{
    /// <summary>What it is called and looks for.</summary>
    CheckDescription Description { get; }

    /// <summary>Looks at a record.</summary>
    IEnumerable<Finding> Look(FileUnderCheck file);
}

/// <summary>A check of one board. It holds no state, reads its argument and nothing else, and never throws for what a record can
/// hold.</summary>
public interface IBoardCheck
{
    /// <summary>What it is called and looks for.</summary>
    CheckDescription Description { get; }

    /// <summary>Looks at a board.</summary>
    IEnumerable<Finding> Look(BoardUnderCheck board);
}

/// <summary>A check of what the files of a collection say together.</summary>
public interface ICollectionCheck
{
    /// <summary>What it is called and looks for.</summary>
    CheckDescription Description { get; }

    /// <summary>Looks at the collection.</summary>
    IEnumerable<Finding> Look(CollectionUnderCheck collection);
}
