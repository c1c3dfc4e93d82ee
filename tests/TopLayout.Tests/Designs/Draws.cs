using CsCheck;

namespace TopLayout.Tests.Designs;

/// <summary>The same draws from a generator on each run; a failure names the seed and the draw.</summary>
internal static class Draws
{
    private const uint Stream = 1;

    public static void All<T>(Gen<T> gen, ulong seed, int count, Action<T> holds)
    {
        var random = new PCG(Stream, seed);
        for (var i = 0; i < count; i++)
        {
            var drawn = gen.Generate(random, null, out _);
            try
            {
                holds(drawn);
            }
            catch (Exception failure)
            {
                throw new InvalidOperationException($"seed {seed}, draw {i}: {drawn}", failure);
            }
        }
    }
}
