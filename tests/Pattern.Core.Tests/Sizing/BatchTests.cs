using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Sizing;
using Pattern.Core.Tests.Blocks;

namespace Pattern.Core.Tests.Sizing;

public class BatchTests
{
    private static readonly BatchOptions Four = new() { Workers = 4, BodiesAtOnce = 3 };

    private static IEnumerable<BodyRow> Women(int count) => Bodies.Ansur.Take(count).Select((body, i) => BodyRow.Of(i + 1, body));

    private static Block Draft(BodyMeasurements body) => SkirtBlock.For(body).Draft();

    [Fact]
    public void Draft_OnManyWorkers_IsWhatOneAfterTheOtherIs()
    {
        string[] one = [.. Women(250).Select(row => Trial.Of(row, Draft).ToString() + Length(Trial.Of(row, Draft)))];

        Assert.Equal(one, Batch.Draft(Women(250), Draft, Four).Select(trial => trial + Length(trial)));
        Assert.Equal(one, Batch.Draft(Women(250), Draft, new BatchOptions { Workers = 1, BodiesAtOnce = 1_000 }).Select(trial => trial + Length(trial)));

        static string Length(Trial trial) => string.Join(",", trial.Block?.Panels.Select(panel => panel.SeamOutline().Length.Millimeters) ?? []);
    }

    /// <summary>The first bodies take longest: whoever is done later, the order stays.</summary>
    [Fact]
    public void Draft_WhateverIsDoneFirst_KeepsTheOrder()
    {
        using var second = new ManualResetEventSlim();
        Block Slow(BodyMeasurements body)
        {
            if (body.Name == "first")
            {
                Assert.True(second.Wait(TimeSpan.FromSeconds(60)));
            }
            else
            {
                second.Set();
            }

            return Draft(Bodies.Example);
        }

        BodyRow[] rows = [.. Enumerable.Range(1, 40).Select(i => BodyRow.Of(i, Bodies.Example.Named(i == 1 ? "first" : "later")))];

        Assert.Equal(Enumerable.Range(1, 40), Batch.Draft(rows, Slow, new BatchOptions { Workers = 2, BodiesAtOnce = 1 }).Select(trial => trial.Row.Number));
    }

    // A row that is null never came back from its worker, and the batch waited for it for ever.
    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    public void Draft_ARowThatIsNull_IsRefusedAtOnce(int workers)
    {
        BodyRow[] rows = [BodyRow.Of(1, Bodies.Example), null!, BodyRow.Of(3, Bodies.Example)];
        using var ended = new ManualResetEventSlim();
        Exception? thrown = null;
        new Thread(() =>
        {
            thrown = Record.Exception(() => Batch.Draft(rows, Draft, new BatchOptions { Workers = workers, BodiesAtOnce = 1 }).Count());
            ended.Set();
        })
        { IsBackground = true }.Start();

        Assert.True(ended.Wait(TimeSpan.FromSeconds(60)));
        Assert.IsAssignableFrom<ArgumentNullException>(thrown);
    }

    // What the draft itself cancels is the draft's own word, not the caller's: it comes through as it was thrown.
    [Fact]
    public void Draft_ADraftThatCancelsItself_ComesThroughAsThrown()
    {
        Exception? thrown = Record.Exception(() => Batch.Draft(Women(5), _ => throw new OperationCanceledException("mine"), Four).Count());

        Assert.Equal("mine", Assert.IsType<OperationCanceledException>(thrown).Message);
    }

    [Fact]
    public void Draft_ThatReturnsNoBlock_IsAFailedTrialThatSaysSo()
    {
        Trial trial = Batch.Draft(Women(1), _ => (Block)null!, Four).Single();

        Assert.Equal((TrialOutcome.Failed, DiagnosticCode.MethodBroke), (trial.Outcome, trial.Code));
        Assert.Contains("returned no block", trial.Reason, StringComparison.Ordinal);
        Assert.Contains("no block", Assert.Throws<ConstructionException>(() => SizeRun.Of(SizeTable.En13402Women, _ => (Block)null!)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>(() => TrialSummary.Of([null!]));
    }

    [Fact]
    public void Draft_OneBadBody_NeverStopsTheRest()
    {
        BodyMeasurements noHip = Bodies.Example.Without(BodyMeasurement.HipGirth);
        BodyRow[] rows = [.. Enumerable.Range(1, 20).Select(i => BodyRow.Of(i, i == 7 ? noHip : i == 8 ? Bodies.Example.Named("breaks") : Bodies.Example))];

        Trial[] trials = [.. Batch.Draft(rows, body => body.Name is null ? Draft(body) : throw new InvalidOperationException("broke"), Four)];

        Assert.Equal(Enumerable.Range(1, 20), trials.Select(trial => trial.Row.Number));
        Assert.Equal((TrialOutcome.Refused, DiagnosticCode.BodyMeasurementMissing), (trials[6].Outcome, trials[6].Code));
        Assert.Equal((TrialOutcome.Failed, DiagnosticCode.MethodBroke), (trials[7].Outcome, trials[7].Code));
        Assert.Equal(18, trials.Count(trial => trial.Outcome == TrialOutcome.Passed));
    }

    [Fact]
    public void Draft_Endless_ReadsNoFurtherThanAFewParts()
    {
        int read = 0;
        IEnumerable<BodyRow> Endless()
        {
            while (true)
            {
                yield return BodyRow.Of(++read, Bodies.Example);
            }
        }

        Assert.Equal(100, Batch.Draft(Endless(), Draft, Four).Take(100).Count());

        // Four workers with three parts of three bodies each.
        Assert.InRange(read, 100, 100 + (4 * 3 * 3) + 3);
    }

    [Fact]
    public void Draft_Cancelled_StopsAndSaysSo()
    {
        using var cancel = new CancellationTokenSource();
        int done = 0;
        Assert.ThrowsAny<OperationCanceledException>(() =>
        {
            foreach (Trial trial in Batch.Draft(Women(1_000), Draft, Four, null, cancel.Token))
            {
                if (++done == 30)
                {
                    cancel.Cancel();
                }
            }
        });
        Assert.InRange(done, 30, 33);
    }

    [Fact]
    public void Draft_TellsHowFarItIs()
    {
        var told = new Told();

        Assert.Equal(20, Batch.Draft(Women(20), BuiltInMethods.Skirt, Four, told).Count());

        Assert.Equal([3, 6, 9, 12, 15, 18, 20], told.Counts);
    }

    [Fact]
    public void Draft_OfNothing_IsNothing() => Assert.Empty(Batch.Draft([], Draft, Four));

    [Fact]
    public void Options_OutOfRange_AreRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new BatchOptions { Workers = 0 });
        Assert.Throws<ArgumentOutOfRangeException>(() => new BatchOptions { BodiesAtOnce = 0 });
        Assert.Throws<ArgumentNullException>(() => Batch.Draft(null!, Draft));
    }

    private sealed class Told : IProgress<int>
    {
        internal List<int> Counts { get; } = [];

        public void Report(int value) => Counts.Add(value);
    }
}
