using System.CommandLine.Completions;
using Ohmstead.Assessment.Reckoning;
using Ohmstead.Assessment.Workshops;
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

        var files = CollectionFolder.Open(folder);
        return BoardFinder.IsLikely(files, board) && BoardFinder.Look(files, board, Run).Found is { } found
            ? found
                .Places.Select(place => new CompletionItem(place.Part.Ref.Value))
                .Concat(found.Points.Select(point => new CompletionItem(point.Name.Value)))
            : [];
    }

    /// <summary>The boards, and the lots in the drawer.</summary>
    public static IEnumerable<CompletionItem> BoardsAndLots(CompletionContext context) => Boards(context).Concat(Lots(context));

    /// <summary>The letters that references on the board begin with.</summary>
    public static IEnumerable<CompletionItem> Classes(CompletionContext context) =>
        Places(context)
            .Select(place => string.Concat(place.Label.TakeWhile(char.IsAsciiLetterUpper)))
            .Where(letters => letters.Length > 0)
            .Distinct(StringComparer.Ordinal)
            .Select(letters => new CompletionItem(letters));

    /// <summary>The designs, by their files.</summary>
    public static IEnumerable<CompletionItem> Designs(CompletionContext context) =>
        Folder(context) is { } folder
            ? CollectionFolder.Open(folder).Designs.Select(path => new CompletionItem(Path.GetFileNameWithoutExtension(path)))
            : [];

    /// <summary>The lots in the drawer.</summary>
    public static IEnumerable<CompletionItem> Lots(CompletionContext context) => Named(context, workshop => workshop.Lots.Keys);

    /// <summary>The orders.</summary>
    public static IEnumerable<CompletionItem> Orders(CompletionContext context) => Named(context, workshop => workshop.Orders.Keys);

    /// <summary>The lines of the order that was given.</summary>
    public static IEnumerable<CompletionItem> OrderLines(CompletionContext context) =>
        Said(context, "--order") is { Length: > 0 } name
            ? Named(context, workshop => workshop.Orders.TryGetValue(name, out var order) ? order.Lines.Select(line => line.Id.Value) : [])
            : [];

    /// <summary>The instruments.</summary>
    public static IEnumerable<CompletionItem> Instruments(CompletionContext context) =>
        Named(context, workshop => workshop.Instruments.Keys);

    /// <summary>The checks and the words that can be explained.</summary>
    public static IEnumerable<CompletionItem> Explained(CompletionContext context) =>
        Words(CheckPages.All().Keys.Concat(Glossary.All().SelectMany(word => word.Names)));

    /// <summary>The rules that can be worked out.</summary>
    public static IEnumerable<CompletionItem> Rules(CompletionContext context) => Words(ReckonCatalogue.All.Select(rule => rule.Name));

    /// <summary>The inputs of the rule that was given.</summary>
    public static IEnumerable<CompletionItem> Inputs(CompletionContext context) =>
        Said(context, "RULE") is { } name && ReckonCatalogue.Find(name) is { } rule
            ? Words(rule.Inputs.Select(input => $"{input.Name}="))
            : [];

    /// <summary>Words that are offered where others are taken too.</summary>
    public static Func<CompletionContext, IEnumerable<CompletionItem>> OneOf(IEnumerable<string> words) => _ => Words(words);

    /// <summary>What a meter shows where it shows no figure, and what a test gives.</summary>
    public static IEnumerable<CompletionItem> Readings(CompletionContext context) =>
        new[] { IndicationText.Open, IndicationText.Short, IndicationText.OverRange, "over", "under" }
            .Concat(Vocabulary.Results)
            .Select(word => new CompletionItem(word));

    private static IEnumerable<CompletionItem> Words(IEnumerable<string> words) => words.Select(word => new CompletionItem(word));

    // The boards are not read for it.
    private static IEnumerable<CompletionItem> Named(CompletionContext context, Func<Workshop, IEnumerable<string>> names) =>
        Folder(context) is { } folder ? Words(names(new CollectionRun(CollectionFolder.Open(folder).Only([]), Run).Run().Workshop)) : [];

    // The day decides no name.
    private static RunOptions Run =>
        new(DateOnly.MinValue, IsThorough: false, Workers: 1, ReadingLimits.Usual) { ForPages = false, IsCompared = false };

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
