using Ohmstead.Electronics;
using Ohmstead.Electronics.Hazards;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Basis;

/// <summary>Puts answers together from what the library gives.</summary>
internal static class Answers
{
    /// <summary>The first refusal, or all lines; a refusal too when there is none.</summary>
    internal static Outcome<Reckoned> All(params IReadOnlyList<Outcome<ReckonedLine>> lines)
    {
        var found = new List<ReckonedLine>(lines.Count);
        foreach (var line in lines)
        {
            if (!line.Is(out var known, out var reason))
            {
                return Outcome<Reckoned>.Refused(reason);
            }

            found.Add(known);
        }

        return found.Count > 0
            ? Outcome<Reckoned>.From(new Reckoned(found))
            : Outcome<Reckoned>.Refused("nothing is known for these figures");
    }

    /// <summary>All lines that are no refusal; the first refusal when every one is.</summary>
    internal static Outcome<Reckoned> Any(params IReadOnlyList<Outcome<ReckonedLine>> lines)
    {
        Outcome<ReckonedLine>[] known = [.. lines.Where(line => line.Is(out _, out _))];
        return All(known.Length > 0 ? known : lines);
    }

    /// <summary>The usual cautions of a hazard of the catalogue beside an answer.</summary>
    internal static Outcome<Reckoned> WithCautions(this Outcome<Reckoned> answer, string hazard) =>
        answer.Then(reckoned => reckoned with { Cautions = HazardCatalogue.All.First(known => known.Name == hazard).Cautions });

    /// <summary>A caution of the rule's own, and then those of a hazard of the catalogue.</summary>
    internal static Outcome<Reckoned> WithCautions(this Outcome<Reckoned> answer, string hazard, string own) =>
        answer.WithCautions(hazard).Then(reckoned => reckoned with { Cautions = [own, .. reckoned.Cautions] });

    /// <summary>A caution of the rule's own beside an answer.</summary>
    internal static Outcome<Reckoned> WithCaution(this Outcome<Reckoned> answer, string caution) =>
        answer.Then(reckoned => reckoned with { Cautions = [caution, SafetyNotice.Defer] });

    internal static Outcome<ReckonedLine> Line(string what, Outcome<Worked<decimal>> worked, ShownAs shown) =>
        worked.Then(w => Figure(what, w.Value, shown, w.Arithmetic, w.Source) with { Remarks = w.Remarks });

    internal static Outcome<ReckonedLine> Line(string what, Outcome<Worked<double>> worked, ShownAs shown) =>
        worked.Then(w => Figure(what, (decimal)w.Value, shown, w.Arithmetic, w.Source) with { Remarks = w.Remarks });

    /// <summary>A value of which the rule writes the working itself, up to the equals sign.</summary>
    internal static Outcome<ReckonedLine> Line(string what, Outcome<decimal> value, ShownAs shown, string working, Source source) =>
        value.Then(v => Figure(what, v, shown, $"{working} = {shown.Text(v)}", source));

    /// <inheritdoc cref="Line(string, Outcome{decimal}, ShownAs, string, Source)"/>
    internal static Outcome<ReckonedLine> Line(string what, Outcome<double> value, ShownAs shown, string working, Source source) =>
        value.Then(v => Figure(what, (decimal)v, shown, $"{working} = {shown.Text((decimal)v)}", source));

    /// <summary>Words instead of a figure.</summary>
    internal static Outcome<ReckonedLine> Said(
        string what,
        string says,
        string arithmetic,
        Source source,
        params IReadOnlyList<string> remarks
    ) => Outcome<ReckonedLine>.From(new ReckonedLine(what, says, arithmetic, source) { Remarks = remarks });

    internal static Outcome<ReckonedLine> Remarking(this Outcome<ReckonedLine> line, params IReadOnlyList<string> remarks) =>
        line.Then(known => known with { Remarks = [.. known.Remarks, .. remarks] });

    internal static ReckonedLine Figure(string what, decimal value, ShownAs shown, string arithmetic, Source source) =>
        new(what, shown.Text(value), arithmetic, source) { Number = value, Unit = shown.Unit == "%" ? string.Empty : shown.Unit };

    /// <summary>The same, or a refusal where a result is no answer any more; null says that it is one.</summary>
    internal static Outcome<T> Unless<T>(this Outcome<T> outcome, Func<T, string?> against)
        where T : notnull => outcome.Is(out var value, out _) && against(value) is { } reason ? Outcome<T>.Refused(reason) : outcome;

    /// <summary>A quantity as it stands in a working.</summary>
    internal static string Text(decimal value, ShownAs shown) => shown.Text(value);

    internal static Source Practice(string title) => new(title, null, SourceBasis.CommonPractice);

    internal static Outcome<Quantity> Parsed(string text, Dimension dimension) =>
        QuantityText.Parse(text, dimension).Is(out var quantity, out var fault)
            ? Outcome<Quantity>.From(quantity)
            : Outcome<Quantity>.Refused(fault.Message);
}
