namespace Ohmstead.Electronics.Statistics;

/// <summary>The Weibull likelihood in mu = ln eta and v = ln beta, and its maximum by Newton's method with a step that always
/// climbs.</summary>
internal static class WeibullLikelihood
{
    private const int MostSteps = 500;
    private const double Step = 1e-4;

    internal sealed record Maximum(double Shape, double Scale, double LogLikelihood, double LogScaleError, double LogShapeError);

    internal static Maximum? Maximise(IReadOnlyList<LikeItems> items)
    {
        // Items of which the same is known add the same term.
        Term[] terms = [.. items.Where(i => i.Known.By is not null || i.Known.After > 0).Select(i => Term.For(i.Known, i.Count))];

        // Working in units of a typical age keeps the search near zero.
        double centre = terms.Sum(t => t.Count * t.Typical) / terms.Sum(t => t.Count);
        double Value(double mu, double v) => terms.Sum(t => t.Count * t.Log(mu + centre, Math.Exp(v)));

        (double mu, double v) = (0, 0);
        double best = Value(mu, v);
        for (int i = 0; i < MostSteps && double.IsFinite(best); i++)
        {
            Slopes s = Slopes.At(Value, mu, v);
            (double stepMu, double stepV) = s.Direction();
            double length = Math.Min(1, 1 / Math.Max(Math.Abs(stepMu), Math.Abs(stepV)));
            double next = double.NegativeInfinity;
            while (length > 1e-10 && !((next = Value(mu + (length * stepMu), v + (length * stepV))) > best))
            {
                length /= 2;
            }

            bool climbed = next > best;
            if (climbed)
            {
                (mu, v, best) = (mu + (length * stepMu), v + (length * stepV), next);
            }

            if (Math.Abs(v) > 5)
            {
                // Far beyond any shape that is accepted: the likelihood climbs for ever.
                return new Maximum(Math.Exp(v), Math.Exp(mu + centre), best, double.NaN, double.NaN);
            }

            if (!climbed || Math.Max(Math.Abs(length * stepMu), Math.Abs(length * stepV)) < 1e-10)
            {
                return Slopes.At(Value, mu, v).Errors() is { } errors
                    ? new Maximum(Math.Exp(v), Math.Exp(mu + centre), best, errors.Mu, errors.V)
                    : null;
            }
        }

        return null;
    }

    // First and second differences of the log-likelihood.
    private sealed record Slopes(double Mu, double V, double MuMu, double VV, double MuV)
    {
        internal static Slopes At(Func<double, double, double> f, double mu, double v)
        {
            double here = f(mu, v);
            (double up, double down) = (f(mu + Step, v), f(mu - Step, v));
            (double right, double left) = (f(mu, v + Step), f(mu, v - Step));
            double mixed =
                (f(mu + Step, v + Step) - f(mu + Step, v - Step) - f(mu - Step, v + Step) + f(mu - Step, v - Step)) / (4 * Step * Step);
            return new Slopes(
                (up - down) / (2 * Step),
                (right - left) / (2 * Step),
                (up - (2 * here) + down) / (Step * Step),
                (right - (2 * here) + left) / (Step * Step),
                mixed
            );
        }

        // Newton's step where the surface is a hill, else straight uphill.
        internal (double Mu, double V) Direction()
        {
            double determinant = (MuMu * VV) - (MuV * MuV);
            return MuMu < 0 && determinant > 0
                ? (-((VV * Mu) - (MuV * V)) / determinant, -((MuMu * V) - (MuV * Mu)) / determinant)
                : (Mu, V);
        }

        // Standard errors: the square roots of the diagonal of the inverse of the negative curvature.
        internal (double Mu, double V)? Errors()
        {
            double determinant = (MuMu * VV) - (MuV * MuV);
            return MuMu < 0 && determinant > 0 ? (Math.Sqrt(-VV / determinant), Math.Sqrt(-MuMu / determinant)) : null;
        }
    }

    // One observation: exact ages add a density, the others a probability.
    private sealed record Term(double LogAfter, double? LogBy, bool IsExact, int Count)
    {
        internal double Typical => double.IsFinite(LogAfter) && LogBy is { } by ? (LogAfter + by) / 2 : LogBy ?? LogAfter;

        internal static Term For(LifeObservation o, int count) =>
            new(Math.Log(o.After), o.By is { } by ? Math.Log(by) : null, o.IsExact, count);

        internal double Log(double mu, double shape)
        {
            double after = Math.Exp(shape * (LogAfter - mu));
            if (LogBy is not { } logBy)
            {
                return -after;
            }

            if (IsExact)
            {
                return Math.Log(shape) - logBy + (shape * (logBy - mu)) - after;
            }

            // ln(exp(-a) - exp(-b)) without cancelling.
            double width = Math.Exp(shape * (logBy - mu)) - after;
            return -after + Math.Log(width < 1e-5 ? width - (width * width / 2) : 1 - Math.Exp(-width));
        }
    }
}
