using System.Collections.Immutable;
using System.Globalization;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Findings;

/// <summary>Something about a record that a person should know: what was found, where, what was expected and what to do next.</summary>
/// <param name="Check">The readable name of the check that found it, such as <c>polarity-not-established</c>.</param>
/// <param name="Severity">How serious it is.</param>
/// <param name="Place">Where it stands.</param>
/// <param name="Message">One line, lower case, no full stop, sufficient alone: what was found and what was expected.</param>
/// <param name="NextStep">What to write or do, or null when nothing certain can be said.</param>
public sealed record Finding(string Check, Severity Severity, Place Place, string Message, string? NextStep = null)
{
    /// <summary>Other places that belong to it ("first used here"), each with a note.</summary>
    public ImmutableArray<RelatedPlace> Related { get; init; } = [];

    /// <summary>How many more of the same check stand in the same file and are counted instead of told; its message says so too.</summary>
    public int More { get; private init; }

    /// <summary>The same, with how many more of its check there are in its file.</summary>
    /// <param name="more">More than zero.</param>
    internal Finding And(int more) =>
        this with
        {
            More = more,
            Message = $"{Message}; {more.ToString(CultureInfo.InvariantCulture)} more in this file",
        };
}

/// <summary>A second place that a finding speaks of.</summary>
/// <param name="Place">Where it stands.</param>
/// <param name="Note">What is there.</param>
public sealed record RelatedPlace(Place Place, string Note);

/// <summary>How serious a finding is.</summary>
public enum Severity
{
    /// <summary>Worth knowing; nothing is wrong.</summary>
    Note,

    /// <summary>Probably not meant, or a risk; the record can be read.</summary>
    Warning,

    /// <summary>The record breaks the format or contradicts itself.</summary>
    Error,
}
