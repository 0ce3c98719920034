namespace Ohmstead.Bench;

/// <summary>The words of the bench: what a person may type at a stop beside a reading.</summary>
internal static class BenchWords
{
    /// <summary>Says nothing about the circuit from now on.</summary>
    public const string Unsaid = "unsaid";

    /// <summary>What is told to somebody who asks.</summary>
    public const string Help = """
          391 1.4            what was read: numbers alone take the units shown, or say them: 391uF 1.4ohm 12% pass
          > 20, open         beyond the range of the meter; also < 0.1, short, over range
          C14                go to a place        C14 391 1.4   go there, and enter
          (nothing)          pass on              back          one place back
          120Hz              said once with a reading it holds for this kind of part and this instrument; the prompt shows it
          in, out            parts of this kind are read in circuit, or lifted    unsaid   say nothing about it
          always ripple=4mV  add this to every reading that follows; always alone adds nothing any more
          with bridge-1      the instrument from now on
          left               what is still to be read
          why, fit           the verdict in full, or what would fit, of this place; why C14, fit C14
          undo               take the last entry back
          found WHERE "WHAT" minor    work replaced C12 --lot L-018 ...    decide C12 keep "WHY"    wait "WHAT"
          quit, exit         end; the next session goes on where this one ended

        """;

    /// <summary>What is told where a meter is read.</summary>
    public const string MeterHelp = """
          (nothing)          read the meter; what it shows is told with its verdict, and Enter takes it
          next               pass on

        """;

    /// <summary>What is told where keys are edited.</summary>
    public const string KeyHelp = """
          keys: Tab completes, arrows and Ctrl-R bring older lines, Ctrl-_ takes a change of the line back, Ctrl-C gives the line up,
          Ctrl-D ends; a paste of several lines is taken line by line, each with Enter

        """;

    /// <summary>Words that stand alone.</summary>
    public static IReadOnlyList<string> Alone { get; } =
    ["back", "exit", "fit", "help", "in", "left", "next", "out", "quit", "undo", Unsaid, "why"];

    /// <summary>Words that something follows.</summary>
    public static IReadOnlyList<string> Begun { get; } = ["always", "decide", "found", "wait", "with", "work"];
}
