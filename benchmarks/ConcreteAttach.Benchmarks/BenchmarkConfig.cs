using System.Globalization;
using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Reports;
using BenchmarkDotNet.Running;
using Perfolizer.Horology;

namespace ConcreteAttach.Benchmarks;

/// <summary>
/// Many short iterations, and a column with the ratio of the fastest ones: on a machine that does other work as well, the mean tells what the other work was,
/// the fastest iteration what this one is.
/// </summary>
internal static class BenchmarkConfig
{
    public static IConfig Create() => DefaultConfig.Instance
        .AddJob(Job.Default
            .WithLaunchCount(1)
            .WithWarmupCount(60) // 3 s: until the optimised code is there, also on a busy machine
            .WithIterationTime(TimeInterval.FromMilliseconds(50))
            .WithIterationCount(40)
            .AsDefault())
        .AddColumn(StatisticColumn.Min, new FastestRatioColumn())
        .WithSummaryStyle(SummaryStyle.Default.WithMaxParameterColumnWidth(40));

    private sealed class FastestRatioColumn : IColumn
    {
        public string Id => nameof(FastestRatioColumn);

        public string ColumnName => "Ratio of min";

        public string Legend => "Fastest iteration over the fastest iteration of the baseline";

        public bool AlwaysShow => true;

        public ColumnCategory Category => ColumnCategory.Baseline;

        public int PriorityInCategory => 100;

        public bool IsNumeric => true;

        public UnitType UnitType => UnitType.Dimensionless;

        public bool IsAvailable(Summary summary) => true;

        public bool IsDefault(Summary summary, BenchmarkCase benchmarkCase) => false;

        public string GetValue(Summary summary, BenchmarkCase benchmarkCase) => GetValue(summary, benchmarkCase, summary.Style);

        public string GetValue(Summary summary, BenchmarkCase benchmarkCase, SummaryStyle style)
        {
            BenchmarkCase? baseline = summary.GetBaseline(summary.GetLogicalGroupKey(benchmarkCase));
            double? own = summary[benchmarkCase]?.ResultStatistics?.Min;
            double? other = baseline is null ? null : summary[baseline]?.ResultStatistics?.Min;
            return own is null || other is null ? "?" : (own.Value / other.Value).ToString("F2", CultureInfo.InvariantCulture);
        }
    }
}
