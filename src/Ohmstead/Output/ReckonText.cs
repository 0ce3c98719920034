using Ohmstead.Assessment.Reckoning;
using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics.Hazards;
using Ohmstead.Running;

namespace Ohmstead.Output;

/// <summary>Rules and their answers as text for people.</summary>
internal static class ReckonText
{
    private const string Indent = "  ";

    /// <summary>Writes the list of rules.</summary>
    public static void WriteList(TextWriter target)
    {
        var width = ReckonCatalogue.All.Max(rule => rule.Name.Length);
        foreach (var field in ReckonCatalogue.Fields)
        {
            Line(target, $"{field.Name}:");
            foreach (var rule in field.Rules)
            {
                Line(target, $"{Indent}{rule.Name.PadRight(width)}  {rule.Computes}");
            }
        }

        Line(target, "ohmstead calculate RULE explains a rule, with an example to change");
    }

    /// <summary>Writes what a rule is, and its example worked.</summary>
    public static void WritePage(TextWriter target, ReckonRule rule)
    {
        Line(target, $"{rule.Name}: {rule.Computes}");
        if (rule.Formula is { } formula)
        {
            Line(target, $"{Indent}formula: {formula}");
        }

        if (rule.Validity is { } validity)
        {
            Line(target, $"{Indent}holds: {validity}");
        }

        var width = rule.Inputs.Max(input => input.Name.Length);
        foreach (var input in rule.Inputs)
        {
            Line(
                target,
                $"{Indent}{input.Name.PadRight(width)}  {input.Meaning}; "
                    + $"{input.Form}{(input.Range is { } range ? $", {range}" : string.Empty)}{Need(input)}"
            );
        }

        Line(target, $"{Indent}example: ohmstead calculate {rule.Name} {Quoted(rule)}");
        if (rule.OfExample().Is(out var answer, out _))
        {
            WriteAnswer(target, answer, Indent + Indent);
        }
    }

    /// <summary>Writes an answer.</summary>
    public static void WriteAnswer(TextWriter target, Reckoned answer, string indent)
    {
        foreach (var line in answer.Lines)
        {
            Line(target, $"{indent}{line.What}: {line.Value}");
            if (line.Arithmetic.Length > 0)
            {
                Line(target, $"{indent}{Indent}arithmetic: {line.Arithmetic}");
            }

            Line(target, $"{indent}{Indent}source: {line.Source.Text}");
            foreach (var remark in line.Remarks.Where(remark => answer.Cautions.Count == 0 || remark != SafetyNotice.Defer))
            {
                Line(target, $"{indent}{Indent}{remark}");
            }
        }

        foreach (var caution in answer.Cautions)
        {
            Line(target, $"{indent}caution: {caution}");
        }
    }

    /// <summary>The example of a rule as a shell takes it.</summary>
    public static string Quoted(ReckonRule rule) =>
        string.Join(' ', rule.Example.Split(' ').Select(word => word.Contains('*', StringComparison.Ordinal) ? $"'{word}'" : word));

    private static string Need(ReckonInput input) =>
        input switch
        {
            { Usual: { } usual } => $" ({usual} when not given)",
            { IsOptional: true } => " (not always needed)",
            _ => string.Empty,
        };

    private static void Line(TextWriter target, string text) => target.WriteLine(Printable.Escape(text));
}
