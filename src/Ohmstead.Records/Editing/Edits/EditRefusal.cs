using Ohmstead.Records.Text;

namespace Ohmstead.Records.Editing.Edits;

/// <summary>Why something was not written into a record.</summary>
/// <param name="Message">What is in the way, with its line.</param>
/// <param name="NextStep">What a person writes by hand instead.</param>
public sealed record EditRefusal(string Message, string NextStep);

/// <summary>A record after a change, or the reason why it stays as it is.</summary>
/// <param name="Text">The whole text after the change, or null.</param>
/// <param name="Refusal">Why there is none, or null.</param>
public readonly record struct EditOutcome(string? Text, EditRefusal? Refusal)
{
    /// <summary>Where the first entry that was added stands in the text after the change; the beginning of the file where none
    /// was.</summary>
    public Spot Entry { get; init; } = new(1, 1);

    internal static EditOutcome Written(string text) => new(text, null);

    internal static EditOutcome Written(string text, Spot entry) => new(text, null) { Entry = entry };

    internal static EditOutcome Refused(string message, string nextStep) => new(null, new EditRefusal(message, nextStep));
}
