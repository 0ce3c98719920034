namespace Ohmstead.Records.Model;

/// <summary>Instruments are equal when all that a reading's uncertainty may depend on is: the name and what each is good for, values and
/// texts as written, not where they stand. When they were calibrated is not looked at.</summary>
public sealed class AccuracyComparer
{
    private (Instrument? One, Instrument? Other, bool IsSame) last;

    /// <summary>Whether they are equal. The answer on two instruments is kept until it is asked about others.</summary>
    /// <param name="one">An instrument, or null where it is not known.</param>
    /// <param name="other">Another one, or null.</param>
    public bool AreEqual(Instrument? one, Instrument? other)
    {
        if (ReferenceEquals(one, other) || one is null || other is null)
        {
            return ReferenceEquals(one, other);
        }

        if (!ReferenceEquals(last.One, one) || !ReferenceEquals(last.Other, other))
        {
            last = (one, other, one.Id.Value == other.Id.Value && AreGoodForTheSame(one, other));
        }

        return last.IsSame;
    }

    private static bool AreGoodForTheSame(Instrument one, Instrument other)
    {
        if (one.Accuracies.Length != other.Accuracies.Length)
        {
            return false;
        }

        for (var at = 0; at < one.Accuracies.Length; at++)
        {
            if (!IsSame(one.Accuracies[at], other.Accuracies[at]))
            {
                return false;
            }
        }

        return true;
    }

    private static bool IsSame(Accuracy one, Accuracy other) =>
        WrittenEquality.AreEqual(one.Measures, other.Measures)
        && WrittenEquality.AreEqual(one.Error, other.Error)
        && WrittenEquality.AreEqual(one.Digits, other.Digits)
        && WrittenEquality.AreEqual(one.Step, other.Step)
        && WrittenEquality.AreEqual(one.Fixed, other.Fixed)
        && WrittenEquality.AreEqual(one.UpTo, other.UpTo)
        && WrittenEquality.AreEqual(one.Certificate, other.Certificate);
}
