using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Basis;

/// <summary>One input of a rule: its name, what it means, and what may be written for it.</summary>
/// <param name="Name">The name before the equals sign.</param>
/// <param name="Meaning">What it is, in a few words.</param>
/// <param name="Kind">What is written for it.</param>
public sealed record ReckonInput(string Name, string Meaning, InputKind Kind)
{
    /// <summary>What is measured, for a quantity.</summary>
    public Dimension Dimension { get; init; }

    /// <summary>The words that may be written; empty for every other kind.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    /// <summary>What is taken when nothing is written, or null.</summary>
    public string? Usual { get; init; }

    /// <summary>The least that means something here, in the base unit; null where there is no such bound.</summary>
    public decimal? Least { get; init; }

    /// <summary>The greatest that means something here, in the base unit; null where there is no such bound.</summary>
    public decimal? Most { get; init; }

    /// <summary>What may be written, in words: "1 mA to 100 A"; null without bounds.</summary>
    public string? Range =>
        (Least, Most) switch
        {
            ({ } least, { } most) => $"{Shown(least)} to {Shown(most)}",
            ({ } least, null) => $"{Shown(least)} or more",
            (null, { } most) => $"at most {Shown(most)}",
            _ => null,
        };

    /// <summary>True when the rule does without it.</summary>
    public bool IsOptional { get; init; }

    /// <summary>True when the rule cannot be worked without it being written.</summary>
    public bool IsNeeded => Usual is null && !IsOptional;

    /// <summary>What to write, for people: "in farad, such as 391uF".</summary>
    public string Form =>
        Kind switch
        {
            InputKind.Quantity => QuantityForm,
            InputKind.Kelvin => "in kelvin, such as 5K",
            InputKind.Count => "a whole number",
            InputKind.Word => "one of: " + string.Join(", ", Words),
            InputKind.Date => "a day, such as 2026-03-14",
            InputKind.List => "a list with commas and no spaces",
            _ => "a text",
        };

    private string QuantityForm =>
        Dimension switch
        {
            Dimension.Capacitance => "in farad, such as 391uF",
            Dimension.Resistance => "in ohm, such as 4k7",
            Dimension.Inductance => "in henry, such as 15nH",
            Dimension.Voltage => "in volt, such as 25V",
            Dimension.Current => "in ampere, such as 250mA",
            Dimension.Power => "in watt, such as 2W",
            Dimension.Frequency => "in hertz, such as 100Hz",
            Dimension.Duration => "a time, such as 2000h, 4s or 30years",
            Dimension.Temperature => "in degrees Celsius, such as 65C",
            Dimension.Length => "a length, such as 12.5mm",
            Dimension.Ratio => "a share, such as 0.2, 20% or 50ppm",
            _ => "a number",
        };

    internal static ReckonInput Create(string name, Dimension dimension, string meaning) =>
        new(name, meaning, InputKind.Quantity) { Dimension = dimension };

    internal static ReckonInput Kelvin(string name, string meaning) => new(name, meaning, InputKind.Kelvin);

    internal static ReckonInput Count(string name, string meaning) => new(name, meaning, InputKind.Count);

    internal static ReckonInput Word(string name, string meaning, params IReadOnlyList<string> words) =>
        new(name, meaning, InputKind.Word) { Words = words };

    internal static ReckonInput Free(string name, string meaning) => new(name, meaning, InputKind.Text);

    internal static ReckonInput Day(string name, string meaning) => new(name, meaning, InputKind.Date);

    internal static ReckonInput List(string name, string meaning) => new(name, meaning, InputKind.List);

    /// <summary>The same with the range in which the rule means something: outside it there is no answer but the reason.</summary>
    internal ReckonInput Within(decimal least, decimal most) => this with { Least = least, Most = most };

    /// <summary>The same with a least value alone.</summary>
    internal ReckonInput From(decimal least) => this with { Least = least };

    /// <summary>Why a value has no answer, or null when it may have one.</summary>
    internal string? Against(decimal value) =>
        value < Least || value > Most ? $"{Shown(value)} is outside what this is meant for, expected {Range}" : null;

    internal ReckonInput Optional() => this with { IsOptional = true };

    internal ReckonInput Usually(string text) => this with { Usual = text };

    private string Shown(decimal value) =>
        Kind switch
        {
            InputKind.Kelvin => ((ShownAs)"K").Text(value),
            _ => ((ShownAs)Dimension).Text(value),
        };
}
