using Ohmstead.Assessment.Changes;
using Ohmstead.Running;

namespace Ohmstead.Output.Changes;

/// <summary>What differs between two states of a collection, for people at a terminal.</summary>
internal static class ChangesText
{
    /// <summary>Writes it: how much differs, what was rewritten of what was measured, then each board and what boards share.</summary>
    public static void Write(TextWriter target, CollectionChanges changes)
    {
        target.WriteLine(Printable.Escape(ChangeLines.Counts(changes)));
        Section(target, ChangeLines.Rewritten(changes));
        foreach (var board in changes.Boards)
        {
            Section(target, ChangeLines.Board(board));
        }

        Section(target, ChangeLines.Shared(changes));
    }

    private static void Section(TextWriter target, IEnumerable<ChangeLine> lines)
    {
        var isFirst = true;
        foreach (var (depth, text) in lines)
        {
            if (isFirst)
            {
                target.WriteLine();
                isFirst = false;
            }

            target.WriteLine(new string(' ', 2 * depth) + Printable.Escape(text));
        }
    }
}
