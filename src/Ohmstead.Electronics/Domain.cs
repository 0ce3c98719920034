namespace Ohmstead.Electronics;

/// <summary>
/// The range in which a formula means something: states what the inputs must be, then computes, and turns both a broken
/// condition and an arithmetic overflow into a refusal.
/// </summary>
internal readonly struct Domain
{
    private Domain(string? fault) => Fault = fault;

    /// <summary>The first condition that is broken, in words; null when the formula means something.</summary>
    internal string? Fault { get; }

    /// <summary>A range broken by the first of the faults that is not null.</summary>
    internal static Domain Require(params ReadOnlySpan<string?> faults)
    {
        foreach (string? broken in faults)
        {
            if (broken is not null)
            {
                return new Domain(broken);
            }
        }

        return default;
    }

    internal static string? Positive(string name, decimal value) => value > 0 ? null : $"{name} is {Figures.Text(value)}, expected above 0";

    internal static string? NotNegative(string name, decimal value) =>
        value >= 0 ? null : $"{name} is {Figures.Text(value)}, expected 0 or more";

    internal static string? Within(string name, decimal value, decimal low, decimal high) =>
        value >= low && value <= high ? null : $"{name} is {Figures.Text(value)}, expected {Figures.Text(low)} to {Figures.Text(high)}";

    internal static string? Positive(string name, double value) =>
        double.IsFinite(value) && value > 0 ? null : $"{name} is {Figures.Text(value)}, expected a number above 0";

    internal static string? NotNegative(string name, double value) =>
        double.IsFinite(value) && value >= 0 ? null : $"{name} is {Figures.Text(value)}, expected a number of 0 or more";

    internal static string? Finite(string name, double value) =>
        double.IsFinite(value) ? null : $"{name} is {Figures.Text(value)}, expected a number";

    internal static string? Within(string name, double value, double low, double high) =>
        value >= low && value <= high ? null : $"{name} is {Figures.Text(value)}, expected {Figures.Text(low)} to {Figures.Text(high)}";

    internal static string? That(bool holds, string otherwise) => holds ? null : otherwise;

    internal Outcome<T> Compute<T>(Func<T> formula)
        where T : notnull => Flatten(formula, static formula => Outcome<T>.From(formula()));

    internal Outcome<double> Compute(Func<double> formula) => Flatten(formula, static formula => IfFinite(formula()));

    internal Outcome<T> Flatten<T>(Func<Outcome<T>> formula)
        where T : notnull => Flatten(formula, static formula => formula());

    /// <summary>The same for a formula that is given its figures: where every reading asks for it, a lambda that holds nothing is made
    /// once.</summary>
    internal Outcome<T> Flatten<TGiven, T>(TGiven given, Func<TGiven, Outcome<T>> formula)
        where T : notnull
    {
        if (Fault is not null)
        {
            return Outcome<T>.Refused(Fault);
        }

        try
        {
            return formula(given);
        }
        catch (Exception e) when (e is OverflowException or DivideByZeroException)
        {
            return Outcome<T>.Refused(Beyond);
        }
    }

    /// <summary>A computed number, refused when it is none.</summary>
    internal static Outcome<double> IfFinite(double value) =>
        double.IsFinite(value) ? Outcome<double>.From(value) : Outcome<double>.Refused(Beyond);

    private const string Beyond = "the figures are too large or too small to compute with";
}
