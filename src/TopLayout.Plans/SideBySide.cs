using System.Runtime.ExceptionServices;

namespace TopLayout.Plans;

/// <summary>Jobs that know nothing of each other, on all cores of the machine at once.</summary>
public static class SideBySide
{
    /// <summary>What every item comes to, in the order of the items, whichever job ends first.</summary>
    /// <param name="items">The items.</param>
    /// <param name="make">The job; it may run on any thread.</param>
    /// <param name="begins">Told, one call at a time, the item whose job begins and how many have begun with it.</param>
    /// <param name="most">Jobs that may run at once, &gt; 0; as many as the machine has cores when left out.</param>
    /// <remarks>An exception of a job is thrown as it is; of several, one.</remarks>
    public static IReadOnlyList<TResult> Each<T, TResult>(IReadOnlyList<T> items, Func<T, TResult> make, Action<T, int>? begins = null, int? most = null)
    {
        var results = new TResult[items.Count];
        var gate = new Lock();
        var begun = 0;

        void Run(int i)
        {
            if (begins is not null)
            {
                lock (gate)
                {
                    begins(items[i], ++begun);
                }
            }

            results[i] = make(items[i]);
        }

        try
        {
            Parallel.For(0, items.Count, new ParallelOptions { MaxDegreeOfParallelism = Math.Min(most ?? int.MaxValue, Environment.ProcessorCount) }, Run);
        }
        catch (AggregateException several)
        {
            ExceptionDispatchInfo.Throw(several.InnerExceptions[0]);
        }

        return results;
    }
}
