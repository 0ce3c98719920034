namespace Ohmstead.Browser.Tests;

/// <summary>What tests collect over all pages before they fail, so that one run tells everything.</summary>
internal static class Complaint
{
    /// <summary>Fails with every complaint in full, one a line.</summary>
    public static void None(IEnumerable<string> complaints)
    {
        var all = complaints.ToArray();
        Assert.True(all.Length == 0, string.Join(Environment.NewLine, all));
    }
}
