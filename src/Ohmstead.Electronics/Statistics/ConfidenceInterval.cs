namespace Ohmstead.Electronics.Statistics;

/// <summary>A range that holds the true value in so many of a hundred repetitions.</summary>
/// <param name="Low">The lower end.</param>
/// <param name="High">The upper end.</param>
/// <param name="Confidence">The confidence, as a fraction: 0.95.</param>
public sealed record ConfidenceInterval(double Low, double High, double Confidence);
