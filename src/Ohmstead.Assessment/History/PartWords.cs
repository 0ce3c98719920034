using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.History;

/// <summary>Parts in words.</summary>
public static class PartWords
{
    /// <summary>Where a part of a board is listed.</summary>
    internal static string ListedIn(Part part) => part.FromDesign is null ? "this board's record" : "the design";

    /// <summary>What the part is, in one line: kind, value, tolerance, ratings, class.</summary>
    public static string Describe(IFitPart part)
    {
        var words = new List<string> { part.Kind.Text };
        Add(words, part.Capacitance);
        Add(words, part.Resistance);
        Add(words, part.Inductance);
        Add(words, part.Frequency);
        Fuse(words, part);
        if (part.Kind.Value == PartKinds.Cell && part.Material is { } chemistry)
        {
            words.Add(chemistry.Text);
        }

        if (part.Tolerance is { } tolerance)
        {
            words.Add(tolerance.Text);
        }

        Add(words, part.RatedVoltage);
        if (part.Size is { } size)
        {
            words.Add(size.Text);
        }

        Add(words, part.Power);
        Add(words, part.Temperature);
        if (part.SafetyClass is { } safety)
        {
            words.Add("class " + safety.Text);
        }

        if (part.Type is { } type)
        {
            words.Add(type.Value);
        }

        return string.Join(' ', words);
    }

    /// <summary>What the part is as its print says it: kind, value, tolerance, voltage.</summary>
    public static string AsPrinted(PartValues part) =>
        string.Join(
            ", ",
            new[]
            {
                part.Kind.Text,
                part.Capacitance?.Text,
                part.Resistance?.Text,
                part.Inductance?.Text,
                part.Tolerance?.Text,
                part.RatedVoltage?.Text,
            }.Where(text => text is not null)
        );

    // As it is printed on the cap: T 1.6 A L.
    private static void Fuse(List<string> words, IFitPart part)
    {
        if (part.Kind.Value != PartKinds.Fuse)
        {
            return;
        }

        if (part.Speed is { } speed)
        {
            words.Add(speed.Text);
        }

        Add(words, part.Current);
        if (part.Breaking is { } breaking)
        {
            words.Add(breaking.Text);
        }

        if (part.Standard is { } standard)
        {
            words.Add(standard.Text);
        }
    }

    private static void Add(List<string> words, Written<Quantity>? quantity)
    {
        if (quantity is not null)
        {
            words.Add(QuantityText.Format(quantity.Value));
        }
    }
}
