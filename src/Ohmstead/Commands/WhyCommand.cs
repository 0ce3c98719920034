using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Notes;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Output;
using Ohmstead.Records.Findings;
using Ohmstead.Running;
using Ohmstead.Writing;

namespace Ohmstead.Commands;

/// <summary>Tells one verdict in full: the reading, the limit, where it comes from, the arithmetic, what would change it.</summary>
internal sealed class WhyCommand(Terminal terminal)
{
    public Command Build()
    {
        var board = new Argument<string>("BOARD")
        {
            CompletionSources = { Completions.BoardsAndLots },
            Description = "The number of the board, such as SP-0007, or the name of a lot in the drawer, such as L-012.",
        };
        var place = new Argument<string?>("PLACE")
        {
            CompletionSources = { Completions.Places },
            Description = "A part or test point, such as C12; the whole board when not given.",
            DefaultValueFactory = _ => null,
        };
        var form = TextOrJson.Make();
        var all = new Option<bool>("--all") { Description = "Tell every entry that meets something, where a board has many of a kind." };
        var shared = new SharedOptions();
        var past = new PastOptions(shared);
        var command = new Command(
            "why",
            """
            Tell why a board may be switched on, or a part, a point or a lot is judged as it is.

            Examples:
              ohmstead why SP-0004               a board: what stands against switching it on
              ohmstead why SP-0004 C12           a part: the reading, the limit, the arithmetic
              ohmstead why L-002                 a lot in the drawer
              ohmstead why SP-0007 --on 2026-03-01   what was known of it at the bench on that day
            """
        )
        {
            board,
            place,
            all,
            shared.Folder,
            form,
            shared.AsOf,
            past.On,
            past.Known,
        };
        command.SetAction(parsed =>
        {
            var folder = parsed.GetValue(shared.Folder)!;
            var (opened, refused) = past.Open(parsed, folder, terminal.Error, () => SharedOptions.Open(folder, terminal.Error));
            if (opened is null)
            {
                return refused;
            }

            using var state = opened;
            var (files, options) = (state.Files, state.Run);
            var wanted = parsed.GetValue(board)!;
            if (!BoardFinder.IsLikely(files, wanted) && new WhyLot(Line, Verdicts).Tell(files, options, wanted))
            {
                return ExitCode.Clean;
            }

            var (found, result, _) = BoardFinder.Look(files, wanted, options);
            if (found is null && BoardFinder.TellUnread(files, wanted, result, terminal.Error))
            {
                return ExitCode.Usage;
            }

            if (
                found is null
                && (BoardFinder.Formerly(wanted, result.Boards) is not null || wanted.EndsWith(".md", StringComparison.Ordinal))
            )
            {
                terminal.Error.WriteLine(Printable.Escape(BoardFinder.Missing(wanted, result.Boards)));
                return ExitCode.Usage;
            }

            if (found is null)
            {
                var near = Nearest.To(wanted, result.Boards.Select(summary => summary.Id.Value).Concat(result.Workshop.Lots.Keys));
                terminal.Error.WriteLine(Nearest.Told($"there is no board or lot '{Printable.Escape(wanted)}'", near));
                return ExitCode.Usage;
            }

            if (parsed.IsJson(form))
            {
                JsonVerdicts.Write(terminal.Out, found, parsed.GetValue(place));
                return ExitCode.Clean;
            }

            return parsed.GetValue(place) is { } at ? Tell(found, at, options.Today) : Tell(found, parsed.GetValue(all));
        });
        return command;
    }

    private int Tell(JudgedBoard board, bool isAll)
    {
        Line($"{board.Board.Id.Value} {board.Board.Title.Value}: {BoardStates.Told(board.State, board.OverdueSince)}");
        if (board.Whereabouts is { Told: { } where, Away: null })
        {
            Line($"  {where}");
        }

        foreach (var reason in board.Reasons)
        {
            Line($"  {reason.Told}");
            Line($"    = {reason.NextStep}");
        }

        foreach (var place in board.Overruled)
        {
            Line($"  {place.Part.Ref.Value}: outside its limit, kept by decision: {place.Decision!.Because.Value}");
        }

        // What failed and was corrected is told wherever the state is: nobody should have to look for it.
        foreach (var reading in board.Readings.Where(static one => one.Corrects is { Overall: VerdictOutcome.Outside }))
        {
            var of = (reading.Reading.Part ?? reading.Reading.Point ?? reading.Reading.Lot)?.Value;
            Line($"  {of}: {CorrectionWords.Told(reading)}");
        }

        foreach (var proof in board.Proofs.Where(static one => one.Corrects is { Outcome: VerdictOutcome.Outside }))
        {
            Line($"  {proof.Proof.Point.Value}: {CorrectionWords.Told(proof)}");
        }

        foreach (var open in board.MeasureAgain)
        {
            Line($"  to measure again, {open.At}: {open.Text}");
            Line($"    = {MeasureAgain.NextStep}");
        }

        Lines(WhyEvidence.List(board, isAll), "  ");
        Lines(WhyNotes.Hazards(board));
        return ExitCode.Clean;
    }

    private int Tell(JudgedBoard board, string at, DateOnly today)
    {
        var readings = board
            .Readings.Where(reading =>
                reading.Reading.Part?.Value == at || reading.Reading.Point?.Value == at || reading.Reading.Lot?.Value == at
            )
            .ToArray();
        var proofs = board.Proofs.Where(proof => proof.Proof.Point.Value == at).ToArray();
        string[] design = [.. WhyNotes.Design(board, at)];
        var life = board.Lives.FirstOrDefault(life => life.Reference == at);
        string[] fit = [.. FitOfPlace.Lines(board, at, today)];
        string[] stands = [.. WhyEvidence.At(board, at)];
        if (readings.Length == 0 && proofs.Length == 0 && design.Length == 0 && life is null && fit.Length == 0 && stands.Length == 0)
        {
            var near = Nearest.To(
                at,
                board.Places.Select(place => place.Part.Ref.Value).Concat(board.Points.Select(point => point.Name.Value))
            );
            terminal.Error.WriteLine(
                near == at
                    ? $"{board.Board.Id.Value} has no reading of '{Printable.Escape(at)}'"
                    : Nearest.Told($"{board.Board.Id.Value} has no part and no point '{Printable.Escape(at)}'", near)
            );
            return ExitCode.Usage;
        }

        if (board.Place(at) is { } known)
        {
            Line(
                $"{board.Board.Id.Value} {at}: {PartWords.Describe(known.Part.Values)}"
                    + (
                        known.FittedLot is { } lot
                            ? $"; since {known.FittedOn!.Date.Text} from lot {lot.Id.Value}: {PartWords.Describe(lot.Values)}"
                            : string.Empty
                    )
            );
        }

        Lines(design);
        foreach (var reading in readings)
        {
            var how = string.Join(
                    ", ",
                    new[]
                    {
                        reading.Reading.StateWord,
                        reading.Lot is null ? null : "lot " + reading.Lot.Id.Value,
                        reading.Reading.Circuit is null ? null : reading.Reading.Circuit.Text + " of circuit",
                        reading.Reading.Frequency?.Text,
                    }.OfType<string>()
                )
                .Replace("in of circuit", "in circuit", StringComparison.Ordinal);
            Line(
                $"{reading.Visit.Date.Text} ({how}) {board.Board.Path}:{reading.Reading.Spot.Line.ToString(CultureInfo.InvariantCulture)}"
            );
            if (reading.EmptiedOn is { } emptied)
            {
                Line($"  judged against nothing: the place was empty since {emptied.Date.Text}");
            }

            Verdicts(reading.Verdicts);
            Lines(
                [
                    .. CorrectionWords.Told(reading) is { } corrected ? new[] { corrected } : [],
                    .. WhyNotes.Test(reading.Reading.Result, reading.Reading.Method),
                    .. WhyNotes.Compute(board, reading).Select(note => note.Line),
                ],
                "  "
            );
        }

        foreach (var proof in proofs)
        {
            Line(
                $"{proof.Visit.Date.Text} (proof) {board.Board.Path}:{proof.Proof.Spot.Line.ToString(CultureInfo.InvariantCulture)}: "
                    + $"{VerdictWords.Describe(proof.Outcome)}"
            );
            Verdicts(proof.Verdicts);
            Lines(CorrectionWords.Told(proof) is { } corrected ? [corrected] : [], "  ");
            Lines(
                PointNotes
                    .Compute(board, proof)
                    .Concat(proof.Verdicts.Select(PartNotes.Frequency).OfType<WorkedNote>())
                    .Select(note => note.Line),
                "  "
            );
        }

        foreach (var line in fit.Concat(DriftLines.List(board, at)))
        {
            Line(line);
        }

        if (board.Place(at) is { } decidedOn && DecisionWords.Told(decidedOn) is { } decided)
        {
            Line($"decided: {decided}");
        }

        Lines(stands);

        if (life is not null)
        {
            WhyLife.Tell(Line, life);
        }

        return ExitCode.Clean;
    }

    private void Verdicts(ImmutableArray<Verdict> verdicts)
    {
        foreach (var verdict in verdicts)
        {
            terminal.Out.WriteLine(VerdictColour.For(terminal.Colours, verdict.Outcome)(Printable.Escape($"  {verdict.Why}")));
            if (verdict.Limit is not { } limit)
            {
                Lines(verdict.Remarks.Select(remark => remark.Text), "    ");
                continue;
            }

            Line($"    limit: {verdict.LimitInWords}, {VerdictWords.Describe(limit.Kind)} from {limit.Origin}");
            Line($"    arithmetic: {limit.Arithmetic}");
            Line($"    source: {limit.Source}");
            if (verdict.Deviation is { } deviation)
            {
                Line($"    {VerdictWords.Percent(deviation)} from nominal {QuantityText.Format(limit.Nominal!.Value)}");
            }

            if (verdict.Margin is { } margin)
            {
                Line(
                    margin < 0
                        ? $"    beyond the limit by {VerdictWords.Share(margin)} of it"
                        : $"    room to the limit: {(margin == 0 ? "none, exactly on it" : VerdictWords.Share(margin) + " of it")}"
                );
            }

            if (verdict.Probability is { } probability)
            {
                Line($"    inside with probability {VerdictWords.Probability(probability)} (JCGM 106:2012, clause 7, from memory)");
            }

            Lines([.. WhyNotes.Rule(verdict), .. verdict.Remarks.Select(remark => remark.Text)], "    ");
            foreach (var (other, inside) in verdict.Others)
            {
                Line(
                    $"    by the {VerdictWords.Describe(other.Kind)} {VerdictWords.Range(other.Interval)} ({other.Origin}): "
                        + $"{(inside ? "inside" : "outside")}"
                );
            }
        }
    }

    private void Lines(IEnumerable<string> lines, string indent = "")
    {
        foreach (var line in lines)
        {
            Line(indent + line);
        }
    }

    private void Line(string text) => terminal.Out.WriteLine(Printable.Escape(text));
}
