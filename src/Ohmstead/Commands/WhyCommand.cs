using System.CommandLine;
using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Collections;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Output;
using Ohmstead.Records.Findings;

namespace Ohmstead.Commands;

/// <summary>Tells one verdict in full: the reading, the limit, where it comes from, the arithmetic, what would change it.</summary>
internal sealed class WhyCommand(Terminal terminal)
{
    public Command Build()
    {
        var board = new Argument<string>("BOARD") { Description = "The number of the board, such as SP-0007." };
        var place = new Argument<string?>("PLACE") { Description = "A part or test point, such as C12; the whole board when not given.", DefaultValueFactory = _ => null };
        var folder = new Option<string>("--in") { Description = "The collection's folder.", DefaultValueFactory = _ => Directory.Exists("records") ? "records" : "." };
        var shared = new SharedOptions();
        var command = new Command("why", "Tell why a part, a point or a board is judged as it is.") { board, place, folder, shared.AsOf };
        command.SetAction(parsed =>
        {
            if (shared.Read(parsed, terminal.Error) is not { } options)
            {
                return ExitCode.Usage;
            }

            var files = CollectionFolder.Open(parsed.GetValue(folder)!);
            var wanted = parsed.GetValue(board)!;
            BoardAssessment? found = null;
            var result = new CollectionRun(files.Only(Likely(files, wanted)), options).Run(null, _ => assessment => found = assessment.Board.Id.Value == wanted ? assessment : found);
            if (found is null)
            {
                // The file need not be named after the board.
                result = new CollectionRun(files, options with { Workers = 1 }).Run(null, _ => assessment => found = assessment.Board.Id.Value == wanted ? assessment : found);
            }

            if (found is null)
            {
                var near = Nearest.To(wanted, result.Boards.Select(summary => summary.Id.Value));
                terminal.Error.WriteLine($"there is no board '{Printable.Of(wanted)}'" + (near is null ? string.Empty : $", '{near}' is the nearest"));
                return ExitCode.Usage;
            }

            return Tell(found, parsed.GetValue(place));
        });
        return command;
    }

    private static List<string> Likely(CollectionFolder files, string board) => [.. files.Boards.Where(path => Path.GetFileNameWithoutExtension(path) == board)];

    private int Tell(BoardAssessment board, string? at)
    {
        if (at is null)
        {
            Line($"{board.Board.Id.Value} {board.Board.Title.Value}: {BoardStates.Words(board.State)}");
            foreach (var reason in board.Reasons)
            {
                Line($"  {(reason.At is null ? string.Empty : reason.At + ": ")}{reason.Text}");
                Line($"    = {reason.NextStep}");
            }

            foreach (var place in board.Overruled)
            {
                Line($"  {place.Part.Ref.Value}: outside its limit, kept by decision: {place.Decision!.Because.Value}");
            }

            foreach (var open in board.MeasureAgain)
            {
                Line($"  to measure again, {open.At}: {open.Text}");
                Line($"    = {MeasureAgain.NextStep}");
            }

            return ExitCode.Clean;
        }

        var readings = board.Readings.Where(reading => reading.Reading.Part?.Value == at || reading.Reading.Point?.Value == at || reading.Reading.Lot?.Value == at).ToArray();
        var proofs = board.Proofs.Where(proof => proof.Proof.Point.Value == at).ToArray();
        if (readings.Length == 0 && proofs.Length == 0)
        {
            var near = Nearest.To(at, board.Places.Select(place => place.Part.Ref.Value).Concat(board.Points.Select(point => point.Name.Value)));
            terminal.Error.WriteLine($"{board.Board.Id.Value} has no reading of '{Printable.Of(at)}'" + (near is null || near == at ? string.Empty : $", '{near}' is the nearest name"));
            return ExitCode.Usage;
        }

        if (board.Place(at) is { } known)
        {
            Line($"{board.Board.Id.Value} {at}: {PartWords.Describe(known.Part.Values)}" + (known.Sitting is { } lot ? $"; since {known.FittedOn!.Date.Text} from lot {lot.Id.Value}: {PartWords.Describe(lot.Values)}" : string.Empty));
        }

        foreach (var reading in readings)
        {
            var how = string.Join(", ", new[] { reading.Reading.State?.Value ?? "as found", reading.Lot is null ? null : "lot " + reading.Lot.Id.Value, reading.Reading.Circuit is null ? null : reading.Reading.Circuit.Value + " of circuit", reading.Reading.Frequency?.Text }.OfType<string>()).Replace("in of circuit", "in circuit", StringComparison.Ordinal);
            Line($"{reading.Visit.Date.Text} ({how}) {board.Board.Path}:{reading.Reading.Spot.Line.ToString(CultureInfo.InvariantCulture)}");
            if (reading.EmptiedOn is { } emptied)
            {
                Line($"  judged against nothing: the place was empty since {emptied.Date.Text}");
            }

            Verdicts(reading.Verdicts);
        }

        foreach (var proof in proofs)
        {
            Line($"{proof.Visit.Date.Text} (proof) {board.Board.Path}:{proof.Proof.Spot.Line.ToString(CultureInfo.InvariantCulture)}: {VerdictWords.Of(proof.Outcome)}");
            Verdicts(proof.Verdicts);
        }

        foreach (var line in DriftLines.Of(board, at))
        {
            Line(line);
        }

        if (board.Place(at) is { Decision: { } decision })
        {
            Line($"decided: {decision.What.Value}, because {decision.Because.Value}");
        }

        return ExitCode.Clean;
    }

    private void Verdicts(IReadOnlyList<Verdict> verdicts)
    {
        foreach (var verdict in verdicts)
        {
            Line($"  {verdict.Why}");
            if (verdict.Limit is not { } limit)
            {
                continue;
            }

            Line($"    limit: {verdict.LimitInWords}, {VerdictWords.Of(limit.Kind)} from {limit.Origin}");
            Line($"    arithmetic: {limit.Arithmetic}");
            Line($"    source: {limit.Source}");
            if (verdict.Deviation is { } deviation)
            {
                Line($"    {VerdictWords.Percent(deviation)} from nominal {QuantityText.Format(limit.Nominal!.Value)}");
            }

            if (verdict.Margin is { } margin)
            {
                Line(margin < 0 ? $"    beyond the limit by {VerdictWords.Percent(-margin)[1..]} of it" : $"    room to the limit: {(margin == 0 ? "none, exactly on it" : VerdictWords.Percent(margin)[1..] + " of it")}");
            }

            if (verdict.Probability is { } probability)
            {
                Line($"    inside with probability {probability.ToString("0.0000", CultureInfo.InvariantCulture)} (JCGM 106:2012, clause 7, from memory)");
            }

            foreach (var remark in verdict.Remarks)
            {
                Line($"    {remark}");
            }

            foreach (var (other, inside) in verdict.Others)
            {
                Line($"    by the {VerdictWords.Of(other.Kind)} {VerdictWords.Range(other.Interval)} ({other.Origin}): {(inside ? "inside" : "outside")}");
            }
        }
    }

    private void Line(string text) => terminal.Out.WriteLine(Printable.Of(text));
}
