namespace Ohmstead.Browser.Tests;

/// <summary>Words that end beyond the edge of what they are shown on, numbers of a list that begin before it, and columns of a verdict that
/// run into each other.</summary>
internal static class Crowding
{
    // The words themselves, not the boxes they stand in: a box of a grid ends where the next begins.
    private const string Script = """
        () => {
          const found = [];
          const wide = document.documentElement.clientWidth;
          const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
          const range = document.createRange();
          const last = new Map();
          while (walker.nextNode()) {
            const words = walker.currentNode;
            const box = words.parentElement;
            if (!words.data.trim() || box.closest('svg') || !box.getClientRects().length) continue;
            range.selectNodeContents(words);
            for (const line of range.getClientRects()) {
              if (line.right > wide + 0.5) found.push(`'${words.data}' ends at ${line.right} of ${wide}`);
              const row = box.closest('.v > summary');
              const before = row && last.get(row);
              if (before && before.box !== box && before.line.top < line.bottom && line.top < before.line.bottom && before.line.left < line.left && line.left - before.line.right < 2)
                found.push(`'${words.data}' begins where '${before.words}' ends`);
              if (row) last.set(row, { box, line, words: words.data });
            }
          }
          const pen = document.createElement('canvas').getContext('2d');
          for (const list of document.querySelectorAll('ol')) {
            const style = getComputedStyle(list);
            if (!list.getClientRects().length || style.listStyleType !== 'decimal') continue;
            pen.font = style.font;
            const number = `${list.children.length}. `;
            if (pen.measureText(number).width > parseFloat(style.paddingLeft)) found.push(`'${number}' has no room before its list, which begins '${list.textContent.trim().slice(0, 40)}'`);
          }
          return found;
        }
        """;

    /// <summary>What is crowded on the page that is shown, in words.</summary>
    public static async Task<IReadOnlyList<string>> OfAsync(View view) => await view.Page.EvaluateAsync<string[]>(Script);
}
