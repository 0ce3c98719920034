using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Files;

/// <summary>The file of a board, of a design or of a photograph has a name that some systems cannot keep.</summary>
public sealed class FileNameUnusable : IFileCheck
{
    private const string NextStep = "give it a name of letters, digits and - + . _ that is none of a device, and mend what names it";

    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "file-name-unusable",
            Severity.Warning,
            "the file of a board, of a design or of a photograph has a name that some systems cannot keep",
            CheckEffect.Told,
            "nothing is judged by the name of a file"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(FileUnderCheck file)
    {
        if (file.Id is { } id && FaultIn(file.Path) is { } fault)
        {
            yield return file.Finding(Description, id.Spot, Say(file.Path, fault), NextStep);
        }

        foreach (var picture in file.Pictures)
        {
            if (FaultIn(picture.Value) is { } why)
            {
                yield return file.Finding(Description, picture.Spot, Say(picture.Value, why), NextStep);
            }
        }
    }

    // Why some system cannot keep a file of a path, or null.
    private static string? FaultIn(string path)
    {
        foreach (var name in path.AsSpan().Split('/'))
        {
            if (NameRules.FileFault(path.AsSpan()[name]) is { } fault)
            {
                return fault;
            }
        }

        return null;
    }

    private static string Say(string path, string fault) => $"some systems cannot keep '{path}': {fault}";
}
