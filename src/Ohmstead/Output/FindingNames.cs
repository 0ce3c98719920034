using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Ohmstead.Records.Findings;

namespace Ohmstead.Output;

/// <summary>
/// Lasting names of findings, by what they are about: the check, the board and the entry. Neither a line nor the name of a file counts, so
/// a host that has seen a finding knows it again after entries above it, a tidy or a rename.
/// </summary>
/// <param name="sources">What stands at the places.</param>
internal sealed class FindingNames(FindingSources sources)
{
    private readonly Dictionary<string, int> taken = new(StringComparer.Ordinal);

    /// <summary>The name of the next finding; among findings that are alike in all of that, they are counted.</summary>
    public string Next(Finding finding)
    {
        var about = $"{finding.Check}|{sources.Meaning(finding.Place)}";
        var nth = taken[about] = taken.GetValueOrDefault(about) + 1;
        var bytes = Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{about}|{nth}"));
        return Convert.ToHexStringLower(SHA256.HashData(bytes).AsSpan(0, 16));
    }
}
