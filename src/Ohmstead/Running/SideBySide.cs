using System.Runtime.ExceptionServices;

namespace Ohmstead.Running;

/// <summary>Does many small things on several threads; which thread does which does not show.</summary>
internal static class SideBySide
{
    // A worker of its own pays only when there is enough to share.
    private const int LeastForAWorker = 32;

    /// <summary>Does them all, and throws the first failure once every thread has stopped.</summary>
    /// <param name="count">How many there are.</param>
    /// <param name="workers">How many workers there may be, the calling thread among them.</param>
    /// <param name="worker">Makes what a worker does with each, given the worker's number from 0.</param>
    public static void Run(int count, int workers, Func<int, Action<int>> worker)
    {
        var next = -1;
        void Work(int number)
        {
            var one = worker(number);
            for (var i = Interlocked.Increment(ref next); i < count; i = Interlocked.Increment(ref next))
            {
                one(i);
            }
        }

        var helpers = Math.Min(workers - 1, count / LeastForAWorker);
        Exception? failure = null;
        var threads = Enumerable
            .Range(1, Math.Max(helpers, 0))
            .Select(number => new Thread(
                () =>
                {
                    try
                    {
                        Work(number);
                    }
#pragma warning disable CA1031 // Carried to the thread that started the run, which lets it go on.
                    catch (Exception problem)
#pragma warning restore CA1031
                    {
                        Interlocked.CompareExchange(ref failure, problem, null);
                        Interlocked.Exchange(ref next, count);
                    }
                },
                4 << 20
            )
            {
                IsBackground = true,
            })
            .ToArray();
        foreach (var thread in threads)
        {
            thread.Start();
        }

        try
        {
            Work(0);
        }
        finally
        {
            // Nobody may go on with what is taken down after a failure; those who have not failed begin nothing else.
            Interlocked.Exchange(ref next, count);
            foreach (var thread in threads)
            {
                thread.Join();
            }
        }

        if (failure is not null)
        {
            ExceptionDispatchInfo.Throw(failure);
        }
    }
}
