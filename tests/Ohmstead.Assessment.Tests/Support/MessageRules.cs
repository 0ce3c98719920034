namespace Ohmstead.Assessment.Tests.Support;

/// <summary>How every message is written: one line, a small letter first, no full stop.</summary>
internal static class MessageRules
{
    internal static void Hold(string message)
    {
        Assert.NotEmpty(message);
        Assert.DoesNotContain('\n', message);
        Assert.False(message.EndsWith('.') && !message.EndsWith("...", StringComparison.Ordinal), $"'{message}' ends with a full stop");

        // A reference such as C12 keeps its capital; a sentence does not get one.
        Assert.False(char.IsUpper(message[0]) && message.Length > 1 && char.IsLower(message[1]), $"'{message}' starts with a capital");
    }
}
