using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.NoEmit;

namespace TopLayout.Benchmarks;

/// <summary>Run with <c>dotnet run -c Release --project tests/TopLayout.Benchmarks -- --filter '*'</c>.</summary>
internal static class Program
{
    private static void Main(string[] args)
    {
        var job = Job.ShortRun.WithToolchain(InProcessNoEmitToolchain.Instance);
        BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args, DefaultConfig.Instance.AddJob(job));
    }
}
