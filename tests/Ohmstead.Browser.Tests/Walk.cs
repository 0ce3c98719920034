namespace Ohmstead.Browser.Tests;

/// <summary>What was seen on a walk through the report from disk, on which each page was opened once and looked at in every form.</summary>
/// <param name="Complaints">What the browser complained of, and what was asked for outside the report.</param>
/// <param name="Silent">Pages that do not say what they are about.</param>
/// <param name="Wide">Pages that are wider than the screen, with the width.</param>
/// <param name="Spilled">Cells of tables that are higher than the room they take, so that their words run into the row below.</param>
/// <param name="Crowded">Words beyond the edge of the widest screen, and columns of a verdict without room between.</param>
/// <param name="Parted">Figures parted from their units, and days and numbers broken over lines, with the width of the screen.</param>
/// <param name="Broken">By form: what breaks a rule of axe. Empty without scripts, which axe is.</param>
internal sealed record Walk(
    IReadOnlyList<string> Complaints,
    IReadOnlyList<string> Silent,
    IReadOnlyList<string> Wide,
    IReadOnlyList<string> Spilled,
    IReadOnlyList<string> Crowded,
    IReadOnlyList<string> Parted,
    ILookup<Form, string> Broken
)
{
    private static readonly int[] Widths = [1280, 768, 640, 375, 320];

    /// <summary>Walks through the pages that are opened.</summary>
    public static async Task<Walk> ThroughAsync(ReportFixture report, bool scripts)
    {
        var folder = new Uri(report.Index.Address, ".");
        var seen = await report.LookAsync(
            [.. TestExtent.Of(report.Opened, usual: 8)],
            (view, page) => SeeAsync(view, page, folder, scripts),
            scripts
        );
        return new(
            [.. seen.SelectMany(walk => walk.Complaints)],
            [.. seen.SelectMany(walk => walk.Silent)],
            [.. seen.SelectMany(walk => walk.Wide)],
            [.. seen.SelectMany(walk => walk.Spilled)],
            [.. seen.SelectMany(walk => walk.Crowded)],
            [.. seen.SelectMany(walk => walk.Parted)],
            seen.SelectMany(walk => walk.Broken)
                .SelectMany(form => form.Select(broken => (Form: form.Key, broken)))
                .ToLookup(pair => pair.Form, pair => pair.broken)
        );
    }

    private static async Task<Walk> SeeAsync(View view, ReportPage page, Uri folder, bool scripts)
    {
        var silent = new List<string>();
        var wide = new List<string>();
        var spilled = new List<string>();
        var crowded = new List<string>();
        var parted = new List<string>();
        var complaints = await view.ComplaintsAsync(page, folder, async () =>
        {
            var words = await view.Page.EvaluateAsync<string[]>(
                "() => [document.title, ...[...document.querySelectorAll('h1')].map(heading => heading.innerText)]"
            );
            if (words.Length != 2 || words.Any(string.IsNullOrWhiteSpace))
            {
                silent.Add($"{page} has no title, or not one heading of the first level");
            }

            foreach (var width in Widths)
            {
                await view.ShowAsync(new(Microsoft.Playwright.ColorScheme.Light, width));
                var room = await view.Page.EvaluateAsync<int[]>(
                    "() => [document.scrollingElement.scrollWidth, document.scrollingElement.clientWidth]"
                );
                if (room[0] > room[1])
                {
                    wide.Add($"{page} is {room[0]} wide on a screen of {room[1]}");
                }

                spilled.AddRange(
                    (
                        await view.Page.EvaluateAsync<string[]>(
                            "() => [...document.querySelectorAll('main td')].filter(cell => cell.clientHeight && cell.scrollHeight > "
                                + "cell.clientHeight + 1).map(cell => cell.innerText)"
                        )
                    ).Select(cell => $"{page} on a screen of {width}: '{cell}'")
                );
                parted.AddRange((await Parting.OfAsync(view)).Select(words => $"{page} on a screen of {width}: {words}"));
                if (width == Widths[0])
                {
                    crowded.AddRange((await Crowding.OfAsync(view)).Select(words => $"{page} on a screen of {width}: {words}"));
                }
            }
        });
        var broken = new List<(Form Form, string Words)>();
        foreach (var form in scripts ? Form.All : [])
        {
            broken.AddRange((await Axe.BrokenAsync(view, page, form)).Select(words => (form, words)));
        }

        return new(complaints, silent, wide, spilled, crowded, parted, broken.ToLookup(pair => pair.Form, pair => pair.Words));
    }
}
