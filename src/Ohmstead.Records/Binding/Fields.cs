using System.Collections.Immutable;
using System.Globalization;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Binding;

/// <summary>
/// The values of one mapping, found by key and read as what they are. A value that cannot be read is reported once and is absent.
/// </summary>
public sealed class Fields
{
    private readonly Binder binder;
    private readonly Shape shape;
    private readonly MappingNode mapping;
    private readonly int[] places;

    // The place behind the key that was asked for last: keys are asked for in about the order of the shape.
    private int next;

    /// <summary>The values of a mapping.</summary>
    /// <param name="binder">Takes what cannot be read.</param>
    /// <param name="shape">What the mapping may hold.</param>
    /// <param name="mapping">The mapping.</param>
    /// <param name="places">For each entry of the mapping the place of its key in the shape, or -1.</param>
    internal Fields(Binder binder, Shape shape, MappingNode mapping, int[] places)
    {
        this.binder = binder;
        this.shape = shape;
        this.mapping = mapping;
        this.places = places;
    }

    /// <summary>What the mapping was read as in another state of the file; null where it is to be read.</summary>
    internal object? Known { get; private init; }

    /// <summary>Keeps what the mapping was read as, for another state of the file.</summary>
    internal void Keep(object item) => binder.Keep(mapping, item);

    /// <summary>Where the mapping starts.</summary>
    public Spot Spot => mapping.Spot;

    /// <summary>
    /// Whether something stands behind a key, readable or not: a value that is there and cannot be read is no cause for a second message.
    /// </summary>
    public bool Holds(string key) => Value(Place(key)) is not null;

    /// <summary>The text of a single value, readable or not, without a word about it; null when there is none.</summary>
    internal string? Raw(string key) => (Value(Place(key)) as ScalarNode)?.Text;

    /// <summary>How many items are written in a list, readable or not; something that is no list counts as one.</summary>
    internal int CountOf(string key) =>
        Value(Place(key)) switch
        {
            null or ScalarNode { IsNothing: true } => 0,
            SequenceNode list => list.Items.Length,
            _ => 1,
        };

    /// <summary>Any text.</summary>
    public Written<string>? Text(string key)
    {
        if (Scalar(Place(key)) is not { } scalar)
        {
            return null;
        }

        if (scalar.Style == ScalarWriting.Plain && LooseWords.Unquoted(scalar.Text) is { } inside)
        {
            binder.Warn(
                RecordChecks.CurlyQuotes,
                SpotOf(scalar),
                $"the quotes around {Binder.Shown(scalar.Text)} are curly ones, which belong to the text",
                $"write {key}: {NodeText.Quoted(inside)}, or {key}: {NodeText.Quoted(scalar.Text)} where they belong to it"
            );
        }

        return new(scalar.Text, scalar.Text, SpotOf(scalar));
    }

    /// <summary>A name: no spaces, no path, no control characters.</summary>
    public Written<string>? Id(string key)
    {
        if (Scalar(Place(key)) is not { } scalar)
        {
            return null;
        }

        if (NameRules.Fault(scalar.Text) is { } why)
        {
            binder.Report(
                RecordChecks.NameUnusable,
                SpotOf(scalar),
                $"'{Binder.Shown(scalar.Text)}' cannot be a {key}: {why}",
                UsableName.For(key, scalar.Text, binder.Path) ?? "use letters, digits and - + . _ only"
            );
            return null;
        }

        return new(scalar.Text, scalar.Text, SpotOf(scalar));
    }

    /// <summary>The address of a folder on the web.</summary>
    public Written<Uri>? Address(string key) =>
        Address(key, AddressRules.Read, "the https address of the folder of the pages, or leave it out while there is none");

    /// <summary>The address at which a record is seen.</summary>
    /// <param name="key">The key.</param>
    public Written<RecordAddress>? AddressOfRecords(string key) =>
        Address(
            key,
            AddressRules.ReadPattern,
            $"the https address at which a record is seen, {RecordAddress.Commit} and {RecordAddress.Path} in their places, or leave it out"
        );

    private Written<T>? Address<T>(string key, Func<string, Outcome<T>> read, string expected)
        where T : notnull
    {
        if (Scalar(Place(key)) is not { } scalar)
        {
            return null;
        }

        if (read(scalar.Text).Is(out var address, out var why))
        {
            return new(address, scalar.Text, SpotOf(scalar));
        }

        binder.Report(
            RecordChecks.AddressUnusable,
            SpotOf(scalar),
            $"'{Binder.Shown(scalar.Text)}' cannot be the {key}: {why}",
            $"write {key}: with {expected}"
        );
        return null;
    }

    /// <summary>A word from the key's closed list, as what it means.</summary>
    /// <param name="key">The key.</param>
    /// <param name="words">Its closed list.</param>
    public Written<T>? Word<T>(string key, WordList<T> words)
        where T : notnull
    {
        var place = Place(key);
        return Scalar(place) is { } scalar ? WordOf(scalar, ClosedBy(place, words), words) : null;
    }

    /// <summary>One word of the key's closed list, or several.</summary>
    /// <param name="key">The key.</param>
    /// <param name="words">Its closed list.</param>
    public ImmutableArray<Written<T>> Words<T>(string key, WordList<T> words)
        where T : notnull
    {
        var place = Place(key);
        var closed = ClosedBy(place, words);
        if (Value(place) is not SequenceNode sequence)
        {
            return Scalar(place) is { } single && WordOf(single, closed, words) is { } only ? [only] : [];
        }

        var read = ImmutableArray.CreateBuilder<Written<T>>(sequence.Items.Length);
        foreach (var item in sequence.Items)
        {
            if (item is not ScalarNode scalar)
            {
                ReportShape(key, item, "a word");
            }
            else if (WordOf(scalar, closed, words) is { } word)
            {
                read.Add(word);
            }
        }

        return read.DrainToImmutable();
    }

    /// <summary>A quantity of the key's own dimension.</summary>
    public Written<Quantity>? Quantity(string key)
    {
        var place = Place(key);
        return Scalar(place) is { } scalar ? QuantityOf(place, scalar, shape.KeyAt(place).Dimension) : null;
    }

    /// <summary>A quantity of a dimension that something else decides.</summary>
    public Written<Quantity>? Quantity(string key, Dimension dimension)
    {
        var place = Place(key);
        return Scalar(place) is { } scalar ? QuantityOf(place, scalar, dimension) : null;
    }

    /// <summary>What a meter showed: a quantity of the key's own dimension, one side of one, or a word.</summary>
    public Written<Indication>? Indication(string key)
    {
        var place = Place(key);
        if (Scalar(place) is not { } scalar)
        {
            return null;
        }

        if (IndicationText.Parse(scalar.Text, shape.KeyAt(place).Dimension).Is(out var read, out var fault))
        {
            return new(read, scalar.Text, SpotOf(scalar));
        }

        Report(fault.Kind == ParseFaultKind.Comma ? TextChecks.DecimalComma : FaultOf(shape.KeyAt(place).Dimension), place, scalar, fault);
        return null;
    }

    // A key that takes a number alone is told as a number.
    private static string FaultOf(Dimension dimension) =>
        dimension == Dimension.Number ? RecordChecks.NumberUnreadable : RecordChecks.QuantityUnreadable;

    private Written<Quantity>? QuantityOf(int place, ScalarNode scalar, Dimension dimension)
    {
        if (QuantityText.Parse(scalar.Text, dimension).Is(out var quantity, out var fault))
        {
            return new(quantity, scalar.Text, SpotOf(scalar));
        }

        Report(fault.Kind == ParseFaultKind.Comma ? TextChecks.DecimalComma : RecordChecks.QuantityUnreadable, place, scalar, fault);
        return null;
    }

    /// <summary>A tolerance around a nominal value of a dimension.</summary>
    public Written<Tolerance>? Tolerance(string key, Dimension dimension, Quantity? nominal)
    {
        var place = Place(key);
        if (Scalar(place) is not { } scalar)
        {
            return null;
        }

        if (Electronics.Quantities.Tolerance.Parse(scalar.Text, dimension, nominal).Is(out var tolerance, out var fault))
        {
            return new(tolerance, scalar.Text, SpotOf(scalar));
        }

        Report(fault.Kind == ParseFaultKind.Comma ? TextChecks.DecimalComma : RecordChecks.ToleranceUnreadable, place, scalar, fault);
        return null;
    }

    /// <summary>A day.</summary>
    public Written<DateOnly>? Date(string key)
    {
        var place = Place(key);
        if (Scalar(place) is not { } scalar)
        {
            return null;
        }

        if (DateText.ParseDay(scalar.Text).Is(out var date, out var fault))
        {
            return new(date, scalar.Text, SpotOf(scalar));
        }

        Report(RecordChecks.DateUnreadable, place, scalar, fault);
        return null;
    }

    /// <summary>A day, a month or a year.</summary>
    public Written<RoughDate>? RoughDate(string key)
    {
        var place = Place(key);
        if (Scalar(place) is not { } scalar)
        {
            return null;
        }

        if (DateText.ParseRough(scalar.Text).Is(out var date, out var fault))
        {
            return new(date, scalar.Text, SpotOf(scalar));
        }

        Report(RecordChecks.DateUnreadable, place, scalar, fault);
        return null;
    }

    /// <summary>A number without a unit.</summary>
    public Written<decimal>? Number(string key)
    {
        var place = Place(key);
        if (Scalar(place) is not { } scalar)
        {
            return null;
        }

        if (QuantityText.Parse(scalar.Text, Dimension.Number).Is(out var number, out var fault))
        {
            return new(number.Value, scalar.Text, SpotOf(scalar));
        }

        Report(fault.Kind == ParseFaultKind.Comma ? TextChecks.DecimalComma : RecordChecks.NumberUnreadable, place, scalar, fault);
        return null;
    }

    /// <summary>A whole number, not negative.</summary>
    public Written<int>? Count(string key)
    {
        if (Scalar(Place(key)) is not { } scalar)
        {
            return null;
        }

        if (
            scalar.Text.Length <= 9
            && scalar.Text.All(char.IsAsciiDigit)
            && scalar.Text is not ""
            && !(scalar.Text.Length > 1 && scalar.Text[0] == '0')
        )
        {
            return new(int.Parse(scalar.Text, CultureInfo.InvariantCulture), scalar.Text, SpotOf(scalar));
        }

        binder.Report(
            RecordChecks.NumberUnreadable,
            SpotOf(scalar),
            $"'{Binder.Shown(scalar.Text)}' is no whole number, '{key}' needs one",
            FamiliarWords.IsNothing(scalar.Text) ? $"leave {key} out"
                : CountText.Meant(scalar.Text) is { } count ? $"write {key}: {count}"
                : $"write {key}: with the figure, in digits and without a sign, such as {shape.KeyAt(Place(key)).Example}"
        );
        return null;
    }

    /// <summary>A mapping of the key's inner shape.</summary>
    public Fields? Mapping(string key)
    {
        var place = Place(key);
        switch (Value(place))
        {
            case null or ScalarNode { IsNothing: true }:
                return null;
            case MappingNode mapping:
                return binder.Bind(mapping, shape.KeyAt(place).Inner!);
            case { } other:
                ReportShape(key, other, MappingOf(other, shape.KeyAt(place).Inner!));
                return null;
        }
    }

    /// <summary>The items of a list of mappings.</summary>
    public ImmutableArray<Fields> List<T>(string key)
        where T : class
    {
        var place = Place(key);
        var inner = shape.KeyAt(place).Inner!;
        switch (Value(place))
        {
            case null or ScalarNode { IsNothing: true }:
                return [];
            case SequenceNode sequence:
                var items = ImmutableArray.CreateBuilder<Fields>(sequence.Items.Length);
                for (var i = 0; i < sequence.Items.Length; i++)
                {
                    if (sequence.Items[i] is not MappingNode mapping)
                    {
                        ReportItem(key, sequence.Items[i], inner);
                    }
                    else if (binder.Known<T>(mapping) is { } known)
                    {
                        items.Add(new(binder, inner, mapping, []) { Known = known });
                    }
                    else if (OtherPlace.ListFor(shape, inner, mapping) is { } right)
                    {
                        ReportOtherPlace(key, mapping, inner, right);
                    }
                    else
                    {
                        items.Add(binder.Bind(mapping, inner));
                    }
                }

                return items.DrainToImmutable();
            case { } other:
                ReportList(key, other, inner);
                return [];
        }
    }

    private void ReportList(string key, Node found, Shape inner)
    {
        var item = found switch
        {
            ScalarNode scalar => ItemOf(scalar.Text, inner),
            _ => NodeText.Flow(found) ?? inner.Example,
        };
        binder.Report(
            RecordChecks.ValueShape,
            found.Spot,
            $"{WhatIs(found)} stands after '{key}', expected a list, each item after a dash",
            found is MappingNode { IsFlow: false }
                ? "write a dash and a space before its first key"
                : $"write it on a line of its own, after a dash: - {item}"
        );
    }

    private void ReportItem(string key, Node found, Shape inner)
    {
        // [ point: drift, result: pass ] is a list of pairs: the brackets are the slip.
        var step = found switch
        {
            ScalarNode scalar => $"write {ItemOf(scalar.Text, inner)}",
            SequenceNode { IsFlow: true } list when list.Items.All(pair => pair is MappingNode { Entries.Length: 1 }) => NodeText.Flow(
                new MappingNode(list.Spot, [.. list.Items.Cast<MappingNode>().Select(pair => pair.Entries[0])], IsFlow: true)
            )
                is { } braces
                ? $"write {braces}"
                : "write { and } in place of [ and ]",
            SequenceNode { IsFlow: false } => "take one of the two dashes away",
            _ => $"write it in the form {inner.Example}",
        };
        binder.Report(
            RecordChecks.ValueShape,
            found.Spot,
            $"{WhatIs(found)} stands as an item of '{key}', expected a {inner.Name} in braces or in lines of key: value",
            step
        );
    }

    /// <summary>What a bare word was meant as: the item's first key, with the others that it needs.</summary>
    private static string ItemOf(string text, Shape inner)
    {
        if (text.Contains(',', StringComparison.Ordinal) || text.Contains('\t', StringComparison.Ordinal))
        {
            return $"each value after its key, in the form {inner.Example}";
        }

        var others = inner.Keys.Skip(1).Where(key => key.IsNeeded).Select(key => $", {key.Name}: …");
        return $"{{ {inner.Keys[0].Name}: {NodeText.Value(text, isFlow: true)}{string.Concat(others)} }}";
    }

    private static string MappingOf(Node found, Shape inner)
    {
        var key = found is not ScalarNode scalar
            ? null
            : inner.Keys.FirstOrDefault(one =>
                one.Kind is ValueKind.Date or ValueKind.RoughDate && DateText.ParseRough(scalar.Text).Fault is null
            )
                ?? inner.Keys.FirstOrDefault(one =>
                    one.Kind == ValueKind.Quantity && QuantityText.Parse(scalar.Text, one.Dimension).Fault is null
                )
                ?? inner.Keys.FirstOrDefault(one => one.Words.Contains(scalar.Text, StringComparer.Ordinal));
        return key is not null
            ? $"{{ {key.Name}: {((ScalarNode)found).Text} }}"
            : $"{{ … }} with {string.Join(", ", inner.Keys.Take(3).Select(one => one.Name))}";
    }

    private void ReportOtherPlace(string key, MappingNode found, Shape inner, Key right) =>
        binder.Report(
            RecordChecks.KeyUnknown,
            found.Entries.First(entry => inner.PlaceOf(entry.Key) < 0).KeySpot,
            $"this is a {right.Inner!.Name}, and stands under '{key}'",
            OtherPlace.Step(shape, mapping, right)
        );

    private static Spot SpotOf(ScalarNode scalar) => scalar.Spot;

    private int Place(string key)
    {
        var place = shape.IsAt(next, key) ? next : shape.PlaceOf(key);
        next = place + 1;
        return place >= 0 ? place : throw new InvalidOperationException($"The shape '{shape.Name}' has no key '{key}'.");
    }

    // Few keys are written, so looking through them costs less than a table of all.
    private Node? Value(int place)
    {
        for (var entry = places.Length - 1; entry >= 0; entry--)
        {
            if (places[entry] == place)
            {
                return mapping.Entries[entry].Value;
            }
        }

        return null;
    }

    private ScalarNode? Scalar(int place)
    {
        switch (Value(place))
        {
            case null:
                return null;
            case ScalarNode scalar:
                return Binder.IsBlank(scalar) ? null : scalar;
            case { } other:
                ReportShape(shape.KeyAt(place).Name, other, SingleOf(shape.KeyAt(place), other));
                return null;
        }
    }

    private static string SingleOf(Key key, Node found) =>
        found switch
        {
            MappingNode { Entries: [{ Value: ScalarNode only }] } => only.Text,
            SequenceNode { Items: [ScalarNode first, ..] } list when key.Kind != ValueKind.Text =>
                $"{first.Text}{(list.Items.Length == 1 ? string.Empty
                : key.Kind == ValueKind.Id ? ", and an entry of its own for each other"
                : ", or another of them, and the rest in a note")}",
            SequenceNode list when key.Kind == ValueKind.Text && NodeText.Flow(list) is { } text => NodeText.Quoted(text),
            _ => key.Example,
        };

    private Written<T>? WordOf<T>(ScalarNode scalar, Key key, WordList<T> words)
        where T : notnull
    {
        if (words.Means(scalar.Text, out var value))
        {
            return new(value, scalar.Text, SpotOf(scalar));
        }

        ReportWord(scalar, key);
        return null;
    }

    // The schema, messages and completion have the words from the key: read by another list, they would disagree with what is read.
    private Key ClosedBy<T>(int place, WordList<T> words)
        where T : notnull =>
        shape.KeyAt(place) is var key && ReferenceEquals(key.Words, words)
            ? key
            : throw new InvalidOperationException($"The words of '{key.Name}' are of another list.");

    private void ReportWord(ScalarNode scalar, Key key)
    {
        if (binder.CountsIfFull(RecordChecks.WordUnknown))
        {
            return;
        }

        if (DoubtfulWords.Word(scalar.Text, key) is { } doubtful)
        {
            binder.Report(RecordChecks.WordUnknown, SpotOf(scalar), $"'{Binder.Shown(scalar.Text)}' is {key.OtherWord}", doubtful);
            return;
        }

        var near = FamiliarWords.Word(scalar.Text, key.Words);
        binder.Report(
            RecordChecks.WordUnknown,
            SpotOf(scalar),
            Binder.Told($"'{Binder.Shown(scalar.Text)}' is {key.OtherWord}", scalar.Text, near),
            near is not null
                    ? $"write {key.Name}: {near}"
                        + (FamiliarWords.SaysMore(scalar.Text) ? $", and {NodeText.Quoted(scalar.Text)} in note" : string.Empty)
                : FamiliarWords.Holding(scalar.Text, key.Words) is { Count: > 0 } several
                    ? $"write which: {key.Name}: {string.Join($", {key.Name}: ", several)}"
                : $"known words: {string.Join(", ", key.Words)}"
        );
    }

    private void Report(string check, int place, ScalarNode scalar, ParseFault fault)
    {
        // Inside quotes and blocks the text does not start at the scalar's own place in every case; the scalar's place is true in all.
        var start = Math.Min(fault.Offset, scalar.Text.Length);
        var end = Math.Min(start + fault.Length, scalar.Text.Length);
        var (before, length) = (CodePoints(scalar.Text.AsSpan(0, start)), CodePoints(scalar.Text.AsSpan(start, end - start)));
        var isExact = scalar.Style == ScalarWriting.Plain && before + length <= scalar.Spot.Length;
        var key = shape.KeyAt(place);
        binder.Report(
            check,
            isExact ? scalar.Spot with { Column = scalar.Spot.Column + before, Length = length } : scalar.Spot,
            ValueStep.Cause(shape, key, scalar.Text) ?? fault.Message,
            ValueStep.For(shape, key, scalar.Text, fault, mapping)
        );
    }

    private static int CodePoints(ReadOnlySpan<char> text)
    {
        var count = text.Length;
        foreach (var unit in text)
        {
            if (char.IsLowSurrogate(unit))
            {
                count--;
            }
        }

        return count;
    }

    private void ReportShape(string key, Node found, string expected) =>
        binder.Report(
            RecordChecks.ValueShape,
            found.Spot,
            $"{WhatIs(found)} stands after '{key}', expected "
                + (shape.KeyAt(Place(key)).Kind == ValueKind.Mapping ? "keys and values in braces" : "a single value"),
            $"write {key}: {expected}"
        );

    private static string WhatIs(Node found) =>
        found switch
        {
            MappingNode => "an entry of keys and values",
            SequenceNode { IsFlow: true } => "a list in [ ]",
            SequenceNode => "a list",
            _ => "a single value",
        };
}
