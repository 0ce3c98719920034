using Deque.AxeCore.Commons;

namespace Ohmstead.Browser.Tests;

/// <summary>The rules of axe, run inside a page that is open already.</summary>
/// <remarks>Only broken rules come back in full. A run in which no rule found anything to look at proves nothing, and fails.</remarks>
internal static class Axe
{
    // The size of targets (WCAG 2.2, 2.5.8) is the one rule of level AA that axe leaves out unless it is asked.
    // Style sheets are not asked for a second time: the pages ask for nothing on their own, and a test must not do it for them.
    private const string Run = """
        async () => {
          const run = await axe.run(document, { resultTypes: ["violations"], preload: false, rules: { "target-size": { enabled: true } } });
          if (run.passes.length === 0) {
            throw new Error("no rule of axe found anything to look at");
          }
          return run.violations.flatMap(rule => rule.nodes.map(node => `${rule.id} (${rule.impact}): ${rule.help}: ${node.html}`));
        }
        """;

    private static readonly string Source = new BundledAxeScriptProvider().GetScript();

    /// <summary>What breaks a rule: the page, the form it has, the rule and the element.</summary>
    public static async Task<IReadOnlyList<string>> BrokenAsync(View view, ReportPage page, Form form)
    {
        await view.ShowAsync(form);
        if (!await view.Page.EvaluateAsync<bool>("() => 'axe' in window"))
        {
            await view.Page.EvaluateAsync(Source);
        }

        return [.. (await view.Page.EvaluateAsync<string[]>(Run)).Select(broken => $"{page} ({form}) {broken}")];
    }
}
