using System.Runtime.ExceptionServices;

namespace Ohmstead.Publishing;

/// <summary>Work that several threads share, each with a draft of its own. What is written must not depend on who does what.</summary>
internal static class Jobs
{
    /// <summary>Does all jobs, in about their order: the long ones belong to the front.</summary>
    /// <exception cref="IOException">One of them could not write; of several that could not, the first in the list.</exception>
    public static void Do(int workers, ReportFolder target, IReadOnlyList<Action<Draft>> jobs)
    {
        var failures = new Exception?[jobs.Count];
        var (next, hasFailed) = (-1, false);
        void Work()
        {
            using var draft = new Draft(target);
            for (
                var job = Interlocked.Increment(ref next);
                job < jobs.Count && !Volatile.Read(ref hasFailed);
                job = Interlocked.Increment(ref next)
            )
            {
                try
                {
                    jobs[job](draft);
                }
#pragma warning disable CA1031 // Carried to the thread that asked for the work, which lets it go on.
                catch (Exception problem)
#pragma warning restore CA1031
                {
                    failures[job] = problem;
                    Volatile.Write(ref hasFailed, true);
                }
            }
        }

        var helpers = Enumerable
            .Range(1, Math.Clamp(workers - 1, 0, jobs.Count))
            .Select(_ => new Thread(Work, 4 << 20) { IsBackground = true })
            .ToArray();
        foreach (var helper in helpers)
        {
            helper.Start();
        }

        Work();
        foreach (var helper in helpers)
        {
            helper.Join();
        }

        if (failures.FirstOrDefault(failure => failure is not null) is { } first)
        {
            ExceptionDispatchInfo.Throw(first);
        }
    }
}
