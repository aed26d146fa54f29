using BenchmarkDotNet.Running;
using Pattern.Core.Benchmarks.Geometry;

// Accuracy stands beside every time: it is measured over the same curves, without timing.
if (args is ["accuracy"])
{
    CurveAccuracy.Print();
    return;
}

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
