using BenchmarkDotNet.Running;
using Pattern.Core.Benchmarks.Geometry;

// Ratios that hold on a shared machine, with the accuracy beside each.
if (args is ["compare"])
{
    CurveComparison.Print();
    return;
}

if (args is ["flattening"])
{
    CurveComparison.PrintFlattening();
    return;
}

if (args is ["compare-queries"])
{
    QueryComparison.Print();
    return;
}

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
