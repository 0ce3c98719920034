namespace Ohmstead.Commands;

/// <summary>Words of the command line that had another name once: they are taken still, and told nowhere.</summary>
internal static class OldNames
{
    private const string Order = "order";

    private static readonly (string Old, string Now)[] Commands = [("reckon", "calculate"), ("families", "failures")];

    private static readonly (string Old, string Now)[] OrderStates = [("part-received", "came-in-part")];

    /// <summary>A command line with the words of today.</summary>
    public static IReadOnlyList<string> OfToday(IReadOnlyList<string> words) =>
        words switch
        {
            [var command, ..] when Now(Commands, command) is { } now => [now, .. words.Skip(1)],
            [Order, var id, var state, ..] when Now(OrderStates, state) is { } now => [Order, id, now, .. words.Skip(3)],
            _ => words,
        };

    private static string? Now((string Old, string Now)[] names, string word) => Array.Find(names, name => name.Old == word).Now;
}
