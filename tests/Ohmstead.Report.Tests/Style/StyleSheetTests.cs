using System.Reflection;
using System.Text;
using System.Text.RegularExpressions;
using Ohmstead.Report.Html;
using Ohmstead.Report.Script;
using Ohmstead.Report.Style;

namespace Ohmstead.Report.Tests.Style;

public partial class StyleSheetTests
{
    private static readonly string Css = Encoding.UTF8.GetString(StyleSheet.Read());

    private static readonly string[] Tones = ["good", "bad", "open", "quiet"];

    // Full loss of one kind of cone, over linear light: Machado, Oliveira and Fernandes 2009, table of severity 1.0, from memory.
    private static readonly Dictionary<string, double[]> Eyes = new(StringComparer.Ordinal)
    {
        ["protanopia"] = [0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998],
        ["deuteranopia"] = [0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881],
        ["tritanopia"] = [1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900],
    };

    [Fact]
    public void It_is_small_and_loads_nothing()
    {
        Assert.InRange(Css.Length, 1000, 26_000);
        Assert.DoesNotContain("url(", Css, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("@import", Css, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("@font-face", Css, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("//", Css, StringComparison.Ordinal);
        Assert.DoesNotContain('\r', Css);
    }

    // Fifty kilobytes are read before a person notices, common practice, and once for all pages.
    [Fact]
    public void The_script_is_small_and_with_the_style_sheet_too()
    {
        var script = PageScript.Read(PageScript.FileName);
        Assert.InRange(script.Length, 1, 22_000);
        Assert.InRange(script.Length + StyleSheet.Read().Length, 1, 50_000);
        // Read by those who search.
        Assert.InRange(PageScript.Read(PageScript.SearchName).Length, 1, 26_000);
    }

    [Theory]
    [InlineData(PageScript.FileName, 1)]
    [InlineData(PageScript.SearchName, 0)]
    public void The_scripts_make_nothing_out_of_text_but_rows_written_as_the_pages_are_and_ask_for_nothing_but_files_beside_them(
        string name,
        int times
    )
    {
        var script = Encoding.UTF8.GetString(PageScript.Read(name));
        Assert.StartsWith("\"use strict\";\n", script, StringComparison.Ordinal);
        // Once, for rows that the writer of the pages has escaped, in a template, where nothing runs or loads.
        const string rows = "holder.innerHTML = hits.slice(0, shown).map(row => row.html).join(\"\");";
        Assert.Equal(times + 1, script.Split(rows).Length);
        script = script.Replace(rows, string.Empty, StringComparison.Ordinal);
        // A choice of the person at the page is remembered, each in one place; nothing of a record is.
        script = script.Replace("localStorage.getItem(`ohmstead.${name}`)", string.Empty, StringComparison.Ordinal);
        script = script.Replace("localStorage.setItem(`ohmstead.${name}`, value)", string.Empty, StringComparison.Ordinal);
        // Where one photograph ends over the other: a whole number of percent from a slider, and nothing of a record.
        const string cut = "copies[1].style.clipPath = `inset(0 0 0 ${slider.value}%)`;";
        Assert.Equal(times + 1, script.Split(cut).Length);
        script = script.Replace(cut, string.Empty, StringComparison.Ordinal);
        string[] dangers =
        [
            "innerHTML",
            "outerHTML",
            "insertAdjacentHTML",
            "document.write",
            "eval(",
            "Function(",
            "fetch(",
            "XMLHttpRequest",
            "import(",
            "localStorage",
            "cookie",
            ".style",
            "http:",
            "https:",
        ];
        Assert.All(dangers, danger => Assert.DoesNotContain(danger, script, StringComparison.Ordinal));
        Assert.All(script, c => Assert.InRange(c, '\n', '~'));
    }

    [Fact]
    public void It_styles_every_class_of_the_pages_and_no_other()
    {
        var known = typeof(ClassName)
            .GetProperties(BindingFlags.Public | BindingFlags.Static)
            .Select(property => ((ClassName)property.GetValue(null)!).Name);
        var styled = Selector.Matches(Css).Select(match => match.Groups["name"].Value).Distinct(StringComparer.Ordinal);
        Assert.Equal(known.Order(StringComparer.Ordinal), styled.Order(StringComparer.Ordinal));
    }

    // WCAG 2.2, definition of contrast ratio: black on white is 21:1; #767676 is the lightest grey that passes 4.5:1 on white (from
    // memory).
    [Theory]
    [InlineData("000000", "ffffff", 21.0)]
    [InlineData("767676", "ffffff", 4.54)]
    [InlineData("fff", "fff", 1.0)]
    public void The_contrast_of_known_pairs_is_as_published(string a, string b, double expected) =>
        Assert.Equal(expected, Rgb.Contrast(Rgb.Parse(a), Rgb.Parse(b)), 0.005);

    // WCAG 2.2, 1.4.3 (text, 4.5:1) and 1.4.11 (lines that carry meaning, 3:1).
    [Theory]
    [InlineData("")]
    [InlineData("prefers-color-scheme: dark")]
    [InlineData("@media print")]
    public void Every_text_and_every_line_with_meaning_has_enough_contrast(string part)
    {
        var palette = Palette.After(Css, part);
        string[] texts = ["ink", "soft", "link", .. Tones];
        foreach (var ground in new[] { "paper", "sheet" })
        {
            Assert.All(texts, name => Assert.True(Rgb.Contrast(palette[name], palette[ground]) >= 4.5, $"{name} on {ground}"));
            Assert.True(Rgb.Contrast(palette["edge"], palette[ground]) >= 3.0, $"edge on {ground}");
        }
    }

    [Fact]
    public void Grey_stays_grey_for_every_eye() =>
        Assert.All(Eyes.Values, eye => Assert.InRange(Rgb.Difference(Rgb.Parse("808080").Through(eye), Rgb.Parse("808080")), 0, 0.1));

    // A difference of 20 is told apart at a glance, common practice.
    [Theory]
    [InlineData("", "protanopia")]
    [InlineData("", "deuteranopia")]
    [InlineData("", "tritanopia")]
    [InlineData("prefers-color-scheme: dark", "protanopia")]
    [InlineData("prefers-color-scheme: dark", "deuteranopia")]
    [InlineData("prefers-color-scheme: dark", "tritanopia")]
    public void Inside_and_outside_differ_for_every_eye(string part, string eye)
    {
        var palette = Palette.After(Css, part);
        Assert.True(Rgb.Difference(palette["good"].Through(Eyes[eye]), palette["bad"].Through(Eyes[eye])) >= 20);
    }

    [Theory]
    [InlineData("@media print")]
    [InlineData("content: attr(data-column)")]
    [InlineData("display: table-header-group")]
    [InlineData("break-inside: avoid")]
    [InlineData(":focus-visible")]
    [InlineData("prefers-reduced-motion")]
    [InlineData("forced-colors")]
    public void It_answers_to_print_narrow_screens_keyboard_and_settings(string rule) =>
        Assert.Contains(rule, Css, StringComparison.Ordinal);

    [GeneratedRegex(@"(?<![0-9])\.(?<name>[a-z][a-z0-9-]*)", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Selector { get; }
}
