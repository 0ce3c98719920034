using System.Collections.Immutable;
using Ohmstead.Assessment.Markings;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Records.Text;

namespace Ohmstead.Assessment.Checks.Basis;

/// <summary>A part that a record lists: of a board, of a design, or a lot in the drawer.</summary>
/// <param name="Ref">Its reference or the name of its lot, as written.</param>
/// <param name="Name">What messages call it.</param>
/// <param name="Values">What it is.</param>
/// <param name="Lot">The lot that it is; null for a part of a board or a design.</param>
public readonly record struct PartInList(Written<string> Ref, string Name, PartValues Values, Lot? Lot = null);

/// <summary>What a check sees that looks at one record by itself, whichever it is. What a kind of record does not have is empty.</summary>
/// <param name="path">The file.</param>
public abstract class FileUnderCheck(string path)
{
    /// <summary>The file.</summary>
    public string Path { get; } = path;

    /// <summary>What messages call the record, so that it can follow "of".</summary>
    public abstract string Called { get; }

    /// <summary>The number or name of the record, as written; null where it has none.</summary>
    public virtual Written<string>? Id => null;

    /// <summary>The parts that it lists.</summary>
    public virtual IEnumerable<PartInList> Parts => [];

    /// <summary>The test points that it lists.</summary>
    public virtual ImmutableArray<TestPoint> Points => [];

    /// <summary>References of parts that must differ within the record: none where a check of its own compares them.</summary>
    public virtual IEnumerable<Written<string>> References => Parts.Select(part => part.Ref);

    /// <summary>The design whose parts and points stand before its own; null for any record but a board of a design.</summary>
    public virtual DesignFile? Design => null;

    /// <summary>The parts that its points may name.</summary>
    public virtual IEnumerable<string> PartNames => References.Select(name => name.Value);

    /// <summary>The points that its points may name.</summary>
    public virtual IEnumerable<string> PointNames => Points.Select(point => point.Name.Value);

    /// <summary>When what it tells of was made, as it says.</summary>
    public virtual Written<RoughDate>? Made => null;

    /// <summary>The day by which that was there, and why, in words that follow "and"; null where nothing says it.</summary>
    public virtual (DateOnly Day, string Why)? HereBy => null;

    /// <summary>The hours and the warmth that it says boards run.</summary>
    public virtual Duty? Duty => null;

    /// <summary>The story below the record.</summary>
    public virtual string Story => string.Empty;

    /// <summary>The line of the file on which the story begins.</summary>
    public virtual int StoryLine => 1;

    /// <summary>Pictures that it names and that are there.</summary>
    public virtual IEnumerable<Written<string>> Pictures => [];

    /// <summary>What becomes of stories.</summary>
    public required IStories Stories { get; init; }

    /// <summary>When a part can have been made, as far as the record says; null for one whose date code is told elsewhere.</summary>
    public virtual DateWindow? MadeWithin(PartInList part) => null;

    /// <summary>Whether a name may be that of something which is in a list but could not be read.</summary>
    public virtual bool MayBeUnread(string name) => false;

    /// <summary>A finding of a check at a place of the file.</summary>
    public Finding Finding(CheckDescription check, Spot spot, string message, string? nextStep) =>
        new(check.Name, check.Severity, spot.In(Path), message, nextStep);
}
