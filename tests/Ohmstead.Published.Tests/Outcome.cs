using System.Text;
using Ohmstead.Tests.Support;

namespace Ohmstead.Published.Tests;

/// <summary>How a run ended and what it printed, and every file that lay in its folder afterwards.</summary>
internal sealed record Outcome(Run Run, SortedDictionary<string, byte[]> Files)
{
    /// <summary>The text of a file.</summary>
    public string Text(string path) => Encoding.UTF8.GetString(Files[path]);
}
