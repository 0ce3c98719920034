namespace Ohmstead.Browser.Tests;

/// <summary>Figures that stand on another line than their unit, and days and numbers that are broken over two lines.</summary>
internal static class Parting
{
    // What is looked for is written here once more, without asking the program: a day, a number of a board, lot or order, a figure and its
    // unit. One that is cut at the end of its text node is found too, since only the rectangles of the match are counted.
    private const string Script = """
        () => {
          const named = /\d{4}-\d\d-\d\d|\b[A-Z]{1,3}-\d{2,4}(?:\/\d+)?/gu;
          const figures = /\d[ \u00a0](?:[pn\u00b5mkM]?(?:F|\u03a9|V|A|Hz|W|h|s)|%|\u00b0C|mg\/m\u00b3|(?:year|month|day)s?)(?![\p{L}\d])/gu;
          const found = [];
          const range = document.createRange();
          for (const place of document.querySelectorAll('main :is(th, td, li, dd, p, small, figcaption)')) {
            const walker = document.createTreeWalker(place, NodeFilter.SHOW_TEXT);
            while (walker.nextNode()) {
              const words = walker.currentNode;
              const box = words.parentElement;
              if (!box.checkVisibility() || box.closest('code, pre, svg')) continue;
              if (box.closest('th, td, li, dd, p, small, figcaption') !== place) continue;
              for (const match of [...words.data.matchAll(named), ...words.data.matchAll(figures)]) {
                range.setStart(words, match.index);
                range.setEnd(words, match.index + match[0].length);
                const lines = new Set([...range.getClientRects()].filter(line => line.width > 0).map(line => Math.round(line.top)));
                if (lines.size > 1) found.push(`'${match[0]}' is broken in '${place.innerText.trim().slice(0, 60)}'`);
              }
            }
          }
          return found;
        }
        """;

    /// <summary>What is broken on the page that is shown, in words.</summary>
    public static async Task<IReadOnlyList<string>> OfAsync(View view) => await view.Page.EvaluateAsync<string[]>(Script);
}
