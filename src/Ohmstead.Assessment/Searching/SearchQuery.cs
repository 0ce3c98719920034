using System.Collections.Immutable;

namespace Ohmstead.Assessment.Searching;

/// <summary>What somebody looks for, where a text is at hand and no index: the same words mean the same as on the pages, but for slips of
/// typing.</summary>
public sealed class SearchQuery
{
    // A shorter word is the start of too many.
    private const int ShortestStart = 4;

    private readonly ImmutableArray<ImmutableArray<ImmutableArray<string>>> clauses;
    private readonly bool isEmpty;

    private SearchQuery(ImmutableArray<ImmutableArray<ImmutableArray<string>>> clauses, bool isEmpty) =>
        (this.clauses, this.isEmpty) = (clauses, isEmpty);

    /// <summary>Takes words apart. Words that tell nothing are passed over; where there are no others, nothing is met.</summary>
    public static SearchQuery Of(string text)
    {
        var items = SearchText.Read(text);
        var taken = ImmutableArray.CreateBuilder<ImmutableArray<ImmutableArray<string>>>();
        for (var at = 0; at < items.Count; at++)
        {
            var (item, next) = (items[at], at + 1 < items.Count ? items[at + 1] : default);
            if (
                item.Kind == SearchItemKind.Word
                && !SearchText.IsStop(item.Token)
                && next.Kind is SearchItemKind.Number or SearchItemKind.Name
            )
            {
                // sp 7 may be SP-0007.
                taken.Add([
                    [SearchText.Joined(item.Token, next.Token)],
                    [item.Token, next.Token],
                ]);
                at++;
            }
            else if (item.Asked.Select(Telling).Where(tokens => tokens.Length > 0).ToImmutableArray() is { Length: > 0 } meanings)
            {
                taken.Add(meanings);
            }
        }

        return new(taken.ToImmutable(), string.IsNullOrWhiteSpace(text));
    }

    /// <summary>Whether texts that are told together hold all that is looked for.</summary>
    public bool IsMetBy(IEnumerable<string?> texts)
    {
        if (isEmpty || clauses.Length == 0)
        {
            return isEmpty;
        }

        var held = texts.OfType<string>().SelectMany(SearchText.Read).SelectMany(item => item.Held).ToHashSet(StringComparer.Ordinal);
        return clauses.All(meanings => meanings.Any(tokens => tokens.All(token => IsHeld(held, token))));
    }

    private static ImmutableArray<string> Telling(ImmutableArray<string> tokens) => [.. tokens.Where(token => !SearchText.IsStop(token))];

    private static bool IsHeld(HashSet<string> held, string token) =>
        held.Contains(token)
        || (
            token.Length >= ShortestStart
            && token.All(char.IsLetter)
            && held.Any(other => other.StartsWith(token, StringComparison.Ordinal) && other.All(char.IsLetter))
        );
}
