using Ohmstead.Electronics.Quantities;
using Ohmstead.Meters;
using Ohmstead.Prompt;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;
using Ohmstead.Running;
using Ohmstead.Writing;
using Key = Ohmstead.Records.Shapes.Key;

namespace Ohmstead.Bench;

/// <content>What happens to a line that is a reading.</content>
internal sealed partial class Session
{
    private bool Enter(string[] words)
    {
        if (Known(words[0]) is { } named)
        {
            words = words[1..];
            if (stops.ToList().FindIndex(stop => stop.Name == named) is >= 0 and var known)
            {
                at = known;
                if (words.Length == 0)
                {
                    return true;
                }
            }
            else if (words.Length > 0)
            {
                // A fuse or a switch has nothing to measure against, and can be open: it is entered by name, and the walk stays where it
                // is.
                return EnterAt(named, words, units: null, isStop: false);
            }
            else
            {
                Say(
                    board.Board.Points.Any(point => point.Name.Value == named && point.Measures is PointMeasure.Result)
                        ? $"  {named} is a test that passes or fails, and the result is missing; write {named} pass or {named} fail"
                        : $"  {named} has nothing to measure against, and what was read of it is missing; write it after the name, as in "
                            + $"{named} pass, {named} fail{(KindAt(named) is null ? string.Empty : $", {named} open")}, "
                            + "or a value with its unit"
                );
                return true;
            }
        }
        else if (Stranger(words[0]) is { } strange)
        {
            Say($"  {strange}");
            return true;
        }

        return EnterAt(stops[at].Name, words, stops[at].Units, isStop: true);
    }

    // The name of a place as the record has it; capitals are not asked where one place alone can be meant.
    private string? Known(string word)
    {
        string[] names =
        [
            .. board.Board.Places.Where(place => !place.IsEmpty).Select(place => place.Part.Ref.Value),
            .. board.Board.Points.Select(point => point.Name.Value),
        ];
        return names.FirstOrDefault(name => name == word)
            ?? (names.Where(name => string.Equals(name, word, StringComparison.OrdinalIgnoreCase)).ToArray() is [var only] ? only : null);
    }

    // What looks like the name of a place that is not there, or like a word; null for what may be a value.
    private string? Stranger(string word)
    {
        var id = board.Board.Board.Id.Value;
        if (IndicationText.Parse(word, Dimension.Resistance).Fault is { NextStep: IndicationText.OverRange })
        {
            return null;
        }

        if (PlaceName.LooksLike(word) || (word is ['+' or '-', ..] && !stops[at].IsPoint && word.Any(char.IsAsciiLetter)))
        {
            var empty = board.Board.Place(word) is { IsEmpty: true };
            var names = stops.Select(stop => stop.Name).Concat(board.Board.Places.Select(place => place.Part.Ref.Value));
            return empty
                ? $"{word} is empty: what was there was taken out"
                : OtherRail.Told(board.Board, word, Nearest.To(word, names))
                    ?? Nearest.Told($"{id} has no part and no point '{word}'", Nearest.To(word, names));
        }

        string[] known = [.. BenchWords.Alone, .. BenchWords.Begun, .. stops.Select(stop => stop.Name)];
        return word.All(char.IsAsciiLetter) && !IsOfReading(word)
            ? Nearest.Told($"'{word}' is no word of the bench, no place and no value", Nearest.To(word, known), "; ? tells all there are")
            : null;
    }

    // What is one, or is told as one that is written otherwise.
    private static bool IsOfReading(string word) =>
        IndicationText.WordOf(word) is not null
        || IndicationText.Parse(word, Dimension.Resistance).Fault is { NextStep.Length: > 0 }
        || SaidIndication.Joined([word, "0"]).Count == 1
        || Vocabulary.Results.Means(word, out _)
        || WhyNoValue.Knows(word);

    private bool EnterAt(string place, string[] words, UnsaidUnits? units, bool isStop)
    {
        if (Prepare(place, words, units) is not var (entry, said))
        {
            return true;
        }

        var bench = new BenchEntry(told, run) { IsBrief = true };
        if (undo.Around(at, () => Add(bench, entry)) == ExitCode.Clean)
        {
            Entered(bench, place, said, isStop);
        }

        return true;
    }

    // What was judged before it was written is how the board stands now.
    private void Entered(BenchEntry bench, string place, IReadOnlyList<(string Key, string Value)> said, bool isStop)
    {
        if (KindAt(place) is { } kind)
        {
            memory.Keep(
                instrument,
                kind,
                BenchMemory.HasFrequency(kind) ? Value(said, BenchShape.Frequency) : null,
                Value(said, BenchShape.Circuit)
            );
        }

        Take(bench.After!);
        at = isStop ? Next(at + 1) : at;
    }

    // What goes into every reading is looked at when it is said: a slip is not told at each place anew.
    private void SayAlways(string[] said)
    {
        foreach (var word in SaidIndication.Joined(said))
        {
            var (_, fault) = EnteredValues.Read([word], KindAt(stops[at].Name), null, BenchShape.Reading);
            if (fault is not null)
            {
                Say(
                    word.All(char.IsAsciiDigit) ? $"  '{word}' has no unit, and always says the same; write always {word}Hz" : $"  {fault}"
                );
                return;
            }
        }

        always = said;
    }

    private static string? Value(IReadOnlyList<(string Key, string Value)> said, Key key) =>
        said.FirstOrDefault(value => value.Key == key.Name).Value;

    // The entry, and what was said of it: what was typed, what always holds, what is remembered, in this order; or null with a message.
    private (PreparedEntry Entry, IReadOnlyList<(string Key, string Value)> Said)? Prepare(string place, string[] words, UnsaidUnits? units)
    {
        var kind = KindAt(place);
        var measures = board.Board.Points.FirstOrDefault(point => point.Name.Value == place)?.Measures;
        var shape = kind is null ? BenchShape.Proof : BenchShape.Reading;
        var (typed, fault) = EnteredValues.Read(words, kind, measures, shape, units);
        if (fault is not null)
        {
            Say($"  {fault}");
            return null;
        }

        List<string> all = [.. typed.Select(Word)];
        if (kind is not null)
        {
            foreach (var word in SaidIndication.Joined(always))
            {
                var (also, wrong) = EnteredValues.Read([word], kind, measures, shape);
                if (wrong is not null)
                {
                    Say($"  always: {wrong}");
                    return null;
                }

                all.AddRange(also.Where(value => !Holds(typed, value.Key) && IsFor(kind, value.Key)).Select(Word));
            }

            var setting = memory.For(instrument, kind);
            if (
                setting.Frequency is { } frequency
                && !all.Exists(word => word.StartsWith(BenchShape.Frequency.Name + "=", StringComparison.Ordinal))
            )
            {
                all.Add(Word((BenchShape.Frequency.Name, frequency)));
            }
        }

        var (entry, refused) = PreparedEntry.Prepare(
            board.Board,
            new(place, all)
            {
                Circuit = kind is null || Holds(typed, BenchShape.Circuit.Name) ? null : memory.For(instrument, kind).Circuit,
                Instrument = instrument,
            }
        );
        if (entry is null)
        {
            Say($"  {refused}");
            return null;
        }

        return (entry, typed);
    }

    private static string Word((string Key, string Value) value) => $"{value.Key}={value.Value}";

    private static bool Holds(IReadOnlyList<(string Key, string Value)> values, string key) => values.Any(value => value.Key == key);

    // A resistor is read at no frequency.
    private static bool IsFor(PartKind kind, string key) => key != BenchShape.Frequency.Name || BenchMemory.HasFrequency(kind);

    private int Add(BenchEntry bench, PreparedEntry entry)
    {
        var exit = Enter(bench, entry, isSure: false, isTrial: false);
        return bench.Question is not { } question || exit == ExitCode.Clean ? exit
            : IsYes($"  {question} y writes it all the same, anything else does not > ") ? Enter(bench, entry, isSure: true, isTrial: false)
            : exit;
    }

    private int Enter(BenchEntry bench, PreparedEntry entry, bool isSure, bool isTrial) =>
        bench.Add(board, plan.Visit with { Instrument = instrument ?? plan.Visit.Instrument }, entry.Key, entry.Item, isSure, isTrial);

    private bool IsYes(string question) =>
        Ask(question) is { } answer && (answer is ['y'] || (Vocabulary.YesNo.Means(answer, out var isSure) && isSure));

    private string? Ask(string question)
    {
        var (begin, end) = terminal.Colours.OfPrompt;
        return lines.Ask(new PromptText(Printable.Escape(question), begin, end));
    }

    // What the meter shows is judged and told first, and written only when somebody takes it.
    private void ReadMeter(IMeter meter)
    {
        var place = stops[at].Name;
        while (true)
        {
            terminal.Out.Flush();
            var isStopped = false;
            var (reading, fault) = meter.Read(() => isStopped |= lines.IsStopped());
            if (reading is null)
            {
                Say($"  {fault}", terminal.Colours.Doubtful);
                return;
            }

            Say($"  the meter shows {reading.Told}");
            var (values, unfit) = FitOfReading.To(reading, stops[at], KindAt(place));
            if (unfit is not null)
            {
                Say($"  {unfit}", terminal.Colours.Wrong);
                return;
            }

            if (Prepare(place, [.. values.Select(Word)], units: null) is not var (entry, said))
            {
                return;
            }

            var bench = new BenchEntry(told, run) { IsBrief = true };
            var exit = Enter(bench, entry, isSure: false, isTrial: true);
            if (exit != ExitCode.Clean && bench.Question is null)
            {
                return;
            }

            var question =
                exit == ExitCode.Clean
                    ? "  Enter takes it, r reads again, anything else leaves it > "
                    : $"  {bench.Question} y takes it all the same, r reads again, anything else leaves it > ";
            switch (Ask(question)?.Trim())
            {
                case "r":
                    continue;
                case "" when exit == ExitCode.Clean:
                case "y" when exit != ExitCode.Clean:
                    var taking = new BenchEntry(told, run) { IsBrief = true, IsTold = false };
                    if (undo.Around(at, () => Enter(taking, entry, isSure: exit != ExitCode.Clean, isTrial: false)) == ExitCode.Clean)
                    {
                        Entered(taking, place, said, isStop: true);
                    }

                    return;
                default:
                    Say("  nothing was taken");
                    return;
            }
        }
    }
}
