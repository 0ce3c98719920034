using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Ohmstead.Electronics.Markings;
using Ohmstead.Output;
using Ohmstead.Records.Model;
using Ohmstead.Running;

namespace Ohmstead.Commands;

/// <summary>Says what a print can mean: every reading that is known, with its limits, its rule and its source.</summary>
internal sealed class MarkingCommand(Terminal terminal)
{
    // Before this year parts carried no codes of the kinds that are read here. Common practice.
    private const int FirstCodes = 1930;
    private const int LongestPrint = 60;

    private const string About = """
        Say what a print on a part can mean: letter and digit codes, tolerances, colours, dates, ceramic codes, old units.

        Examples:
          ohmstead marking 4K7J
          ohmstead marking brown black red gold
          ohmstead marking T5 --years 1980-1990
          ohmstead marking Y2 --kind "suppression capacitor"
          ohmstead marking "500 cm" --form json
        """;

    public Command Build()
    {
        var text = new Argument<string[]>("TEXT")
        {
            Description = "The print, or the names of the colours in order.",
            Arity = ArgumentArity.OneOrMore,
        };
        var years = new Option<YearRange?>("--years")
        {
            Description = "The years in which the part can have been made, such as 1975-1985; 1930 to this year when not given.",
            HelpName = "FIRST-LAST",
            CustomParser = Years,
        };
        var kind = new Option<string?>("--kind")
        {
            Description =
                "The kind of part that it stands on, as records name it, such as tantalum: what is printed on others only is left out.",
            HelpName = "KIND",
        };
        kind.AcceptOnlyFromAmong([.. PartKinds.All]);
        var form = TextOrJson.Make();
        var shared = new SharedOptions();
        var command = new Command("marking", About) { text, kind, years, form, shared.AsOf };
        command.SetAction(parsed =>
        {
            if (shared.Read(parsed, terminal.Error, ".") is not { } options)
            {
                return ExitCode.Usage;
            }

            var words = parsed.GetValue(text)!;
            var range = parsed.GetValue(years) ?? new YearRange(FirstCodes, options.Today.Year);
            var prints = Prints(
                words,
                range,
                parsed.GetValue(kind) is { } named && PartKinds.All.Means(named, out var on) ? PrintedOnKind.For(on) : PrintedOn.Any
            );
            if (parsed.IsJson(form))
            {
                MarkingTable.WriteJson(terminal.Out, prints);
            }
            else
            {
                MarkingTable.Write(terminal.Out, prints);
            }

            return prints.All(print => print.Meanings.Count == 0) ? ExitCode.Findings : ExitCode.Clean;
        });
        return command;
    }

    // A print of several words is read as a whole; only when no code knows it so, each of its groups is read by itself.
    private static IReadOnlyList<ReadPrint> Prints(string[] words, YearRange years, PrintedOn on)
    {
        var whole = string.Join(' ', words);
        var groups = whole.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var meanings = Read(whole, years, on);
        return meanings.Count > 0 || groups.Length < 2
            ? [new(whole, meanings)]
            : [.. groups.Select(group => new ReadPrint(group, Read(group, years, on)))];
    }

    private static IReadOnlyList<PrintMeaning> Read(string print, YearRange years, PrintedOn on) =>
        print.Length > LongestPrint ? [] : PrintReader.Read(print, years, on);

    private static YearRange? Years(ArgumentResult result)
    {
        var text = result.Tokens.Count > 0 ? result.Tokens[0].Value : string.Empty;
        var ends = text.Split('-');
        if (ends.Length == 2 && Year(ends[0]) is { } first && Year(ends[1]) is { } last && first <= last)
        {
            return new YearRange(first, last);
        }

        result.AddError($"'{text}' is no range of years, expected such as 1975-1985");
        return null;
    }

    private static int? Year(string text) =>
        text.Length == 4 && int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var year) && year > 0 ? year : null;
}
