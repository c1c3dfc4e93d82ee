namespace TopLayout.Tests.Geometry;

/// <summary>The same trial over fixed seeds; a failure names its seed.</summary>
internal static class Trials
{
    public static void Run(int count, Action<Random> trial)
    {
        for (var seed = 0; seed < count; seed++)
        {
            try
            {
                trial(new Random(seed));
            }
            catch (Exception e) when (e is not OutOfMemoryException)
            {
                Assert.Fail($"seed {seed}: {e.Message}\n{e.StackTrace}");
            }
        }
    }

    public static double Between(this Random random, double min, double max) => min + (random.NextDouble() * (max - min));

    public static T Pick<T>(this Random random, params T[] items) => items[random.Next(items.Length)];
}
