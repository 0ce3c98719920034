using System.CommandLine;
using System.Globalization;
using Ohmstead.Electronics.Methods;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;
using Ohmstead.Running;
using Ohmstead.Writing;

namespace Ohmstead.Commands;

/// <summary>Enters work that was done.</summary>
internal sealed class WorkCommand(Terminal terminal)
{
    private readonly EntryOptions options = new();
    private readonly Argument<string> did = EntryOptions.OneOf("DID", "What was done", Vocabulary.Works);
    private readonly Argument<string?> place = new("PLACE")
    {
        CompletionSources = { Completions.Places },
        Description =
            "The reference of a part, such as C12, or another spot of the board, several parts as \"C1-C8 C11\"; the whole board when not "
            + "given.",
        DefaultValueFactory = _ => null,
    };
    private readonly Option<string?> lot = new("--lot")
    {
        CompletionSources = { Completions.Lots },
        Description = "The lot that the new part came from.",
    };
    private readonly Option<string[]> newPart = new("--new-part")
    {
        CompletionSources = { Completions.OneOf(Vocabulary.PartKinds) },
        Description = "What was put in, where it came from no lot: its kind, then what is printed on it.",
        AllowMultipleArgumentsPerToken = true,
    };
    private readonly Option<string?> from = new("--from")
    {
        CompletionSources = { Completions.Boards },
        Description = "The board and the place that the part was taken from, such as \"SP-0003 C4\": it is entered there, too.",
        HelpName = "BOARD PLACE",
    };
    private readonly Option<string[]> polarity = new("--polarity")
    {
        Description = "How the right way round was established, once for each way: " + string.Join(", ", Vocabulary.PolarityWays) + ".",
        AllowMultipleArgumentsPerToken = false,
    };
    private readonly Option<string?> with = new("--with")
    {
        CompletionSources = { Completions.OneOf(MethodCatalogue.All.Select(method => method.Name)) },
        Description = "What it was done with.",
    };
    private readonly Option<string?> dry = new("--dry") { Description = "How long it must dry before power, such as 24h." };
    private readonly Option<string?> kept = new("--kept") { Description = "Where the original part is kept." };
    private readonly Option<string?> hazard = new("--hazard") { Description = "The hazard that this work makes safe." };
    private readonly Option<string?> clears = new("--clears")
    {
        CompletionSources = { Completions.Places },
        Description = "The place of the finding that this work answers.",
    };
    private readonly Option<bool> irreversible = new("--irreversible")
    {
        Description = "The change cannot be undone: the keeper is asked first, then --sure is said.",
    };

    public Command Build()
    {
        polarity.AcceptOnlyFromAmong([.. Vocabulary.PolarityWays]);
        hazard.AcceptOnlyFromAmong([.. Vocabulary.Hazards]);
        var command = options.DatedCommand(
            "work",
            """
            Enter work that was done, in order.

            Examples:
              ohmstead work SP-0004 replaced C12 --lot L-002 --polarity schematic --kept "bag 7"
              ohmstead work SP-0004 replaced C12 --new-part "aluminium electrolytic" 470uF 20% 35V 105C --polarity schematic
              ohmstead work SP-0007 re-soldered "C3-C4 R3"
              ohmstead work SP-0011 replaced C2 --from "SP-0020 C2" --polarity schematic
              ohmstead work SP-0007 washed --with isopropanol --dry 24h
              ohmstead work SP-0007 "made safe" C1 --hazard "charged capacitor" --with "10 kΩ 10 W on an insulated probe"
              ohmstead work SP-0007 cleaned C3 --on 2026-06-01
            """,
            did,
            place,
            lot,
            newPart,
            from,
            polarity,
            with,
            dry,
            kept,
            hazard,
            clears,
            irreversible
        );
        command.SetAction(parsed => options.RunDated(parsed, terminal, (board, run) =>
            {
                if (parsed.GetValue(irreversible) && !parsed.GetValue(options.Sure))
                {
                    terminal.Error.WriteLine("this cannot be undone: ask the keeper, then enter it with --sure; nothing was written");
                    return ExitCode.Findings;
                }

                if (!parsed.GetValue(options.Sure) && (Unlisted(parsed, board) ?? OtherSort(parsed, board)) is { } sort)
                {
                    terminal.Error.WriteLine(Printable.Escape(sort));
                    return ExitCode.Findings;
                }

                var (made, fault) = NewPart(parsed.GetValue(newPart) ?? []);
                if (fault is not null)
                {
                    terminal.Error.WriteLine(Printable.Escape(fault));
                    return ExitCode.Usage;
                }

                if (parsed.GetValue(from) is { } origin)
                {
                    return new TakenFrom(terminal, run, options).Enter(parsed, board, origin, made, taken =>
                        Item(parsed, board, parsed.GetValue(place), taken.NewPart, taken.From)
                    );
                }

                if (parsed.GetValue(place) is { } meant && SaidPlaces.WhyUnsure(board, meant) is { } unsure)
                {
                    terminal.Error.WriteLine(Printable.Escape(unsure));
                    return ExitCode.Findings;
                }

                var exit = parsed.GetValue(place) is { } said
                    ? options.AddAt(parsed, terminal, board, run, "work", said, name => Item(parsed, board, name, made, null))
                    : options.Add(parsed, terminal, board, run, "work", _ => Item(parsed, board, null, made, null));
                if (exit == ExitCode.Clean)
                {
                    TellMethod(parsed.GetValue(did)!, parsed.GetValue(with), parsed.GetValue(dry));
                }

                return exit;
            }));
        return command;
    }

    // What is put in or pulled is a part, and work on a place that is none takes from the lot and renews nothing.
    private string? Unlisted(ParseResult parsed, FoundBoard board)
    {
        var isOfPart =
            Vocabulary.Works.Means(parsed.GetValue(did)!, out var kind) && kind is WorkKind.Replaced or WorkKind.Removed or WorkKind.Fitted;
        return
            parsed.GetValue(from) is null && (isOfPart || parsed.GetValue(lot) is not null || parsed.GetValue(newPart) is { Length: > 0 })
            ? SaidPlaces.WhyNoPart(board.Board, parsed.GetValue(place))
            : null;
    }

    // A lot of another sort of part is nearly always a slip of its name.
    private string? OtherSort(ParseResult parsed, FoundBoard board)
    {
        if (
            parsed.GetValue(lot) is not { } name
            || !board.Workshop.Lots.TryGetValue(name, out var taken)
            || parsed.GetValue(place) is not { } said
            || SaidPlaces.Parse(board.Board, said).Places is not [var first, ..]
            || board.Board.Place(first) is not { } at
            || at.Part.Values.Kind.Value is var kind && taken.Values.Kind.Value.Family == kind.Family
        )
        {
            return null;
        }

        string[] others =
        [
            .. board.Workshop.Lots.Values.Where(one => one.Values.Kind.Value == at.Part.Values.Kind.Value).Select(one => one.Id.Value),
        ];
        return $"lot {name} is of kind '{taken.Values.Kind.Text}', and {first} of kind '{at.Part.Values.Kind.Text}'"
            + (others.Length > 0 ? $"; of that kind there is {string.Join(", ", others)}" : string.Empty)
            + "; nothing was written, and --sure writes it all the same";
    }

    private string Item(ParseResult parsed, FoundBoard board, string? name, string? made, string? origin)
    {
        var isPart = name is not null && board.Board.Place(name) is not null;
        var said = new Dictionary<string, string?>(StringComparer.Ordinal)
        {
            ["part"] = isPart ? Scalar(name) : null,
            ["at"] = isPart ? null : Scalar(name),
            ["did"] = Scalar(parsed.GetValue(did)),
            ["lot"] = Scalar(parsed.GetValue(lot)),
            ["new_part"] = made,
            ["taken_from"] = Scalar(origin),
            ["polarity"] = parsed.GetValue(polarity) is { Length: > 0 } ways ? FlowText.List(ways) : null,
            ["with"] = Scalar(parsed.GetValue(with)),
            ["dry"] = Scalar(parsed.GetValue(dry)),
            ["kept"] = Scalar(parsed.GetValue(kept)),
            ["irreversible"] = parsed.GetValue(irreversible) ? "yes" : null,
            ["clears"] = Scalar(parsed.GetValue(clears)),
            ["hazard"] = Scalar(parsed.GetValue(hazard)),
            ["note"] = Scalar(parsed.GetValue(options.Note)),
        };
        return FlowText.MappingOf(BenchShape.Work.Keys.Select(key => (key.Name, said.GetValueOrDefault(key.Name))));
    }

    private static (string? Item, string? Fault) NewPart(string[] words)
    {
        if (words.Length == 0)
        {
            return (null, null);
        }

        if (!Vocabulary.PartKinds.Contains(words[0], StringComparer.Ordinal))
        {
            return (
                null,
                Nearest.Told(
                    $"'{words[0]}' is no kind of part: --new-part begins with the kind, such as \"aluminium electrolytic\" 470uF 20% 25V",
                    Nearest.To(words[0], Vocabulary.PartKinds)
                )
            );
        }

        var (values, fault) = SaidPart.Read(words[1..], PartShape.NewPart);
        var said = new Dictionary<string, string?>(values, StringComparer.Ordinal) { ["kind"] = words[0] };
        return (
            fault is null ? FlowText.Mapping(PartShape.NewPart.Keys.Select(key => (key.Name, said.GetValueOrDefault(key.Name)))) : null,
            fault
        );
    }

    // What is usual for the way it was done, and what a wash needs before power.
    private void TellMethod(string done, string? means, string? drying)
    {
        var method = means is null ? null : MethodCatalogue.In(means);
        if (method is not null)
        {
            MethodCommand.Tell(terminal, method);
        }

        if (
            drying is null
            && Vocabulary.Works.Means(done, out var kind)
            && (kind is WorkKind.Washed || (kind is WorkKind.Cleaned && method is { MustDry: true }))
        )
        {
            terminal.Out.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"  no drying time is written: {MethodCatalogue.DryAtRoomHours} h at room temperature is usual ('method drying'); "
                        + $"--dry keeps a proof from being entered before it is over"
                )
            );
        }
    }

    private static string? Scalar(string? value) => value is null ? null : FlowText.Scalar(value);
}
