using System.Text.Json;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>
/// Whatever looks at one board says of it what a check of the whole collection says: another file may deny what its own record shows.
/// </summary>
public sealed class OneStateTests
{
    private const string Own = "boards/SP-0001.md";
    private const string Stock = """
        lots:
          - { lot: L-031, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 35 V, temperature: 105 °C,
              received: 2026-01-28, quantity: 2 }
        bench:
          - date: 2026-02-21
            readings:
              - { lot: L-031, state: new, circuit: out, frequency: 120 Hz, capacitance: 478 µF }

        """;

    // The board alone is fit to run; what stands beside it is written by another hand, and some of it so that a plain search does not find
    // the name.
    public static TheoryData<string, string, string> Denied { get; } =
        new()
        {
            { "piece", "boards/SP-0002.md", Fitted("SP-0002", "L-031", "2026-03-01") },
            { "piece of one day", "boards/SP-0002.md", Fitted("SP-0002", "L-031", "2026-03-14") },
            { "piece, in escapes", "boards/SP-0002.md", Fitted("SP-0002", "\"L\\x2d031\"", "2026-03-01") },
            { "piece, over a line end", "boards/SP-0002.md", Fitted("SP-0002", "\"L-\\\n          031\"", "2026-03-01") },
            { "piece, in a folder below", "boards/store/SP-0002.md", Fitted("SP-0002", "L-031", "2026-03-01") },
            { "number", "boards/SP-0002.md", Fitted("SP-0001", null, "2026-03-01") },
            { "number in small letters", "boards/SP-0002.md", Fitted("sp-0001", null, "2026-03-01") },
            { "number in escapes", "boards/SP-0002.md", Fitted("\"\\u0053P-0001\"", null, "2026-03-01") },
        };

    [Theory]
    [MemberData(nameof(Denied))]
    public void What_another_board_denies_is_said_by_nobody(string what, string path, string other)
    {
        using var copy = CollectionCopy.Empty();
        copy.Write("stock.yaml", Stock);
        copy.Write(Own, Fitted("SP-0001", "L-031", "2026-03-14"));
        Assert.Equal(["fit to run"], Told(copy));
        copy.Write(path, other);
        Assert.True(Told(copy) is ["proof due"], $"{what}: {string.Join(", ", Told(copy))}");
    }

    [Fact]
    public void A_lot_that_is_overdrawn_by_other_boards_is_told_by_all()
    {
        using var copy = CollectionCopy.Empty();
        copy.Write(
            "stock.yaml",
            Stock.Replace("quantity: 2", "quantity: 1", StringComparison.Ordinal)
                + "      - { lot: L-031, state: new, circuit: out, frequency: 120 Hz, capacitance: 471 µF }\n"
        );
        copy.Write(Own, Fitted("SP-0001", "L-031", "2026-03-14"));
        Assert.Equal(["fit to run"], Told(copy));
        copy.Write("boards/SP-0002.md", Fitted("SP-0002", "L-031", "2026-04-14"));
        Assert.Equal(["proof due"], Told(copy));
    }

    [Fact]
    public void What_another_board_says_of_other_lots_and_numbers_is_nothing_to_this_one()
    {
        using var copy = CollectionCopy.Empty();
        copy.Write("stock.yaml", Stock);
        copy.Write(Own, Fitted("SP-0001", "L-031", "2026-03-14"));
        copy.Write("boards/SP-0002.md", Fitted("SP-00011", "L-0311", "2026-03-01"));
        copy.Write("boards/SP-0003.md", Fitted("SP-0003", null, "2026-03-01"));
        Assert.Equal(["fit to run"], Told(copy));
    }

    [Fact]
    public void A_session_that_fits_a_piece_hears_of_the_board_that_has_it()
    {
        using var copy = CollectionCopy.Empty();
        copy.Write("stock.yaml", Stock);
        copy.Write(Own, Fitted("SP-0001", null, "2026-03-14"));
        copy.Write("boards/SP-0002.md", Fitted("SP-0002", "L-031", "2026-03-01"));
        var told = Run.Typing(
            "work replaced C1 --lot L-031 --polarity schematic\n+5V 5.01\nquit\n",
            "bench",
            "SP-0001",
            "--in",
            copy.Root,
            "--as-of",
            "2026-11-25"
        ).Out;
        Assert.Contains("SP-0001 is now: proof due; ", told, StringComparison.Ordinal);
        Assert.DoesNotContain("fit to run", told, StringComparison.Ordinal);
    }

    [Fact]
    public void Why_names_the_board_that_has_the_piece()
    {
        using var copy = CollectionCopy.Empty();
        copy.Write("stock.yaml", Stock);
        copy.Write(Own, Fitted("SP-0001", "L-031", "2026-03-14"));
        copy.Write("boards/SP-0002.md", Fitted("SP-0002", "L-031", "2026-03-01"));
        Assert.Contains(
            "C1: the piece from lot L-031 that was fitted on 2026-03-14 was not measured itself: "
                + "what was read in the drawer counts for SP-0002 C1, which was fitted before it\n",
            Run.Of("why", "SP-0001", "--in", copy.Root, "--as-of", "2026-11-25").Out,
            StringComparison.Ordinal
        );
    }

    // What is found of a neighbour is not the matter of whoever checks one file.
    [Fact]
    public void A_check_of_one_file_tells_nothing_of_another_board()
    {
        using var copy = CollectionCopy.Empty();
        copy.Write("stock.yaml", Stock);
        copy.Write(Own, Fitted("SP-0001", "L-031", "2026-03-14"));
        copy.Write("boards/SP-0002.md", Fitted("SP-0001", "L-031", "2026-04-14"));
        var found = ShownFinding.FromJson(Run.Of("check", copy.At(Own), "--form", "json", "--as-of", "2026-11-25").Out);
        Assert.Contains(found, finding => finding.Check == "board-number-repeated");
        Assert.All(found, finding => Assert.NotEqual("boards/SP-0002.md", finding.Path));
    }

    [Fact]
    public void Why_says_of_every_board_of_the_demo_what_its_check_says()
    {
        using var json = JsonDocument.Parse(Run.Of("check", CollectionCopy.Untouched, "--form", "json", "--as-of", "2026-11-25").Out);
        Assert.All(json.RootElement.GetProperty("boards").EnumerateArray(), board =>
        {
            var (number, state) = (board.GetProperty("board").GetString()!, board.GetProperty("state").GetString()!);
            Assert.Contains(
                $": {state}",
                Run.Of("why", number, "--in", CollectionCopy.Untouched, "--as-of", "2026-11-25").Out.Split('\n')[0],
                StringComparison.Ordinal
            );
        });
    }

    // What check, list, why, an entry and a session say, each once.
    private static string[] Told(CollectionCopy copy)
    {
        string[] day = ["--in", copy.Root, "--as-of", "2026-11-25"];
        using var json = JsonDocument.Parse(Run.Of("check", copy.Root, "--form", "json", "--as-of", "2026-11-25").Out);
        var checkedBoard = json
            .RootElement.GetProperty("boards")
            .EnumerateArray()
            .First(board => board.GetProperty("path").GetString() == Own)
            .GetProperty("state")
            .GetString()!;
        using var list = JsonDocument.Parse(Run.Of(["boards", "--form", "json", .. day]).Out);
        var listed = list
            .RootElement.GetProperty("boards")
            .EnumerateArray()
            .First(board => board.GetProperty("record").GetString() == Own)
            .GetProperty("state")
            .GetString()!;
        var ofOneFile = Run.Of("check", copy.At(Own), "--as-of", "2026-11-25").Out;
        string[] all =
        [
            checkedBoard,
            listed,
            Between(ofOneFile, "1 boards: 1 ", ";"),
            Between(Run.Of(["why", "SP-0001", .. day]).Out, "Tide-gauge logger: ", "\n"),
            Between(Run.Of(["enter", "SP-0001", "+5V", "5.02V", "--trial", .. day]).Out, "is now: ", "\n"),
            Between(Run.Typing("quit\n", ["bench", "SP-0001", .. day]).Out, "is now: ", ";"),
        ];
        return [.. all.Distinct(StringComparer.Ordinal)];
    }

    private static string Between(string text, string before, string after)
    {
        var at = text.IndexOf(before, StringComparison.Ordinal);
        Assert.True(at >= 0, $"'{before}' is not in: {text}");
        var from = at + before.Length;
        return text[from..text.IndexOf(after, from, StringComparison.Ordinal)];
    }

    private static string Fitted(string number, string? lot, string day) =>
        $"---\nboard: {number}\ntitle: Tide-gauge logger\n"
        + "parts:\n  - { ref: C1, kind: aluminium electrolytic, capacitance: 470 µF, rated_voltage: 25 V, temperature: 85 °C }\n"
        + "points:\n  - { point: +5V, nominal: 5 V, tolerance: 5 % }\n"
        + $"bench:\n  - date: {day}\n"
        + (lot is null ? string.Empty : $"    work:\n      - {{ part: C1, did: replaced, lot: {lot}, polarity: schematic }}\n")
        + "    proof:\n      - { point: +5V, voltage: 5.02 V }\n---\n";
}
