using System.Reflection;
using BenchmarkDotNet.Running;
using ConcreteAttach.Benchmarks;

var summaries = BenchmarkSwitcher.FromAssembly(Assembly.GetExecutingAssembly()).Run(args, BenchmarkConfig.Create());

// The runner itself returns normally when a benchmark fails.
return summaries.Any(summary => summary.HasCriticalValidationErrors || summary.Reports.Any(report => !report.Success)) ? 1 : 0;
