using System.CommandLine.Completions;
using Ohmstead.Collections;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;
using Ohmstead.Records.Nodes;
using Ohmstead.Writing;

namespace Ohmstead.Commands;

/// <summary>What a shell may offer where a board or a place is expected: the collection's own names.</summary>
internal static class Completions
{
    /// <summary>The numbers of the boards, by their files: no record is read while somebody types.</summary>
    public static IEnumerable<CompletionItem> Boards(CompletionContext context) =>
        Folder(context) is { } folder
            ? CollectionFolder.Open(folder).Boards.Select(path => new CompletionItem(Path.GetFileNameWithoutExtension(path)))
            : [];

    /// <summary>The parts and points of the board that was given.</summary>
    public static IEnumerable<CompletionItem> Places(CompletionContext context)
    {
        if (Folder(context) is not { } folder || Said(context, "BOARD") is not { Length: > 0 } board)
        {
            return [];
        }

        // The day decides no name.
        var run = new RunOptions(DateOnly.MinValue, IsThorough: false, Workers: 1, ReadingLimits.Usual)
        {
            ForPages = false,
            IsCompared = false,
        };
        var files = CollectionFolder.Open(folder);
        return BoardFinder.IsLikely(files, board) && BoardFinder.Look(files, board, run).Found is { } found
            ? found
                .Places.Select(place => new CompletionItem(place.Part.Ref.Value))
                .Concat(found.Points.Select(point => new CompletionItem(point.Name.Value)))
            : [];
    }

    /// <summary>What a meter shows where it shows no figure, and what a test gives.</summary>
    public static IEnumerable<CompletionItem> Readings(CompletionContext context) =>
        new[] { IndicationText.Open, IndicationText.Short, IndicationText.OverRange, "over", "under" }
            .Concat(Vocabulary.Results)
            .Select(word => new CompletionItem(word));

    private static string? Folder(CompletionContext context) =>
        Said(context, "--in") is { } folder && Directory.Exists(folder) ? folder : null;

    // The command may know no such word, or what was typed so far is no value of it.
    private static string? Said(CompletionContext context, string name)
    {
        try
        {
            return context.ParseResult.GetValue<string>(name);
        }
        catch (Exception unknown) when (unknown is ArgumentException or InvalidOperationException)
        {
            return null;
        }
    }
}
