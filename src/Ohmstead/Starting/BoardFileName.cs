namespace Ohmstead.Starting;

/// <summary>Where the file of a new board goes: as the collection has it by now.</summary>
internal static class BoardFileName
{
    /// <summary>The path of a new board. The folder and the form that most boards have are taken; a collection without boards has
    /// boards/NUMBER.md.</summary>
    /// <param name="number">The number of the new board.</param>
    /// <param name="title">What it is.</param>
    /// <param name="boards">The boards that are there.</param>
    public static string For(string number, string title, IReadOnlyList<KnownBoard> boards)
    {
        if (boards.Count == 0)
        {
            return $"boards/{number}.md";
        }

        var folder = Usual(boards.Select(board => Path.GetDirectoryName(board.Path)!.Replace('\\', '/')));
        var name = Usual(boards.Select(FormOf)) switch
        {
            Form.SmallLetters => number.ToLowerInvariant(),
            Form.WithTitle when Slug(title) is { Length: > 0 } slug => $"{number}-{slug}",
            _ => number,
        };
        return folder.Length == 0 ? name + ".md" : $"{folder}/{name}.md";
    }

    private enum Form
    {
        Number,
        SmallLetters,
        WithTitle,
    }

    private static Form FormOf(KnownBoard board)
    {
        var name = Path.GetFileNameWithoutExtension(board.Path);
        return name == board.Number ? Form.Number
            : name.Equals(board.Number, StringComparison.OrdinalIgnoreCase) && !name.Any(char.IsUpper) ? Form.SmallLetters
            : name.StartsWith(board.Number + "-", StringComparison.Ordinal) ? Form.WithTitle
            : Form.Number;
    }

    private static T Usual<T>(IEnumerable<T> values)
        where T : notnull => values.CountBy(value => value).OrderByDescending(pair => pair.Value).ThenBy(pair => pair.Key).First().Key;

    private static string Slug(string title)
    {
        var words = new string([.. title.ToLowerInvariant().Select(letter => char.IsAsciiLetterOrDigit(letter) ? letter : ' ')]).Split(
            ' ',
            StringSplitOptions.RemoveEmptyEntries
        );
        return string.Join('-', words.Take(6));
    }
}
