using System;
using System.Collections.Concurrent;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Threading;
using System.Threading.Tasks;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;

namespace Pattern.Core.Sizing;

/// <summary>Many bodies drafted on all cores: results and refusals come in the order of the bodies.</summary>
/// <example><code>
/// BodyColumns columns = BodyColumns.In(LengthUnit.Centimeter).With(BodyMeasurement.WaistGirth, "waist").With(BodyMeasurement.HipGirth, "hip");
/// using StreamReader file = File.OpenText("bodies.csv");
/// foreach (Trial trial in Batch.Draft(columns.Read(file), body => SkirtBlock.For(body).Draft()))
/// {
///     Console.WriteLine(trial);
/// }
/// </code></example>
public static class Batch
{
    // For each worker one part under way, one waiting, and one that is done before its turn has come.
    private const int PartsPerWorker = 3;

    /// <summary>Drafts every body by a method, every setting as usual.</summary>
    /// <inheritdoc cref="Draft(IEnumerable{BodyRow}, Func{BodyMeasurements, Block}, BatchOptions, IProgress{int}, CancellationToken)"/>
    /// <param name="rows">The bodies; read on the caller's thread, and no further than a few parts ahead of what was asked for.</param>
    /// <param name="method">The method.</param>
    /// <param name="options">How many at a time; null for the defaults.</param>
    /// <param name="progress">Told how many bodies are done, part by part.</param>
    /// <param name="cancellation">Stops the batch at the next part.</param>
    [Pure]
    public static IEnumerable<Trial> Draft(
        IEnumerable<BodyRow> rows, DraftingMethod method, BatchOptions? options = null, IProgress<int>? progress = null, CancellationToken cancellation = default)
    {
        Guard.NotNull(method, nameof(method));
        return Draft(rows, body => method.For(body).Draft(), options, progress, cancellation);
    }

    /// <summary>Drafts every body.</summary>
    /// <remarks>What a draft throws becomes its outcome, as in <see cref="Trial.Of(BodyRow, Func{BodyMeasurements, Block})"/>: one bad body never stops the rest. Only the end of memory and a draft that cancels itself do. A million bodies take no more
    /// room than a thousand. Nothing is drafted before the first trial is asked for; who stops asking stops the batch.</remarks>
    /// <param name="rows">The bodies; read on the caller's thread, and no further than a few parts ahead of what was asked for.</param>
    /// <param name="draft">Drafts a block for a body. It is called by several workers at the same time.</param>
    /// <param name="options">How many at a time; null for the defaults.</param>
    /// <param name="progress">Told how many bodies are done, part by part.</param>
    /// <param name="cancellation">Stops the batch at the next part.</param>
    /// <returns>One trial for each row, in order.</returns>
    /// <exception cref="OperationCanceledException">The batch was cancelled, while one goes through the trials.</exception>
    /// <exception cref="ArgumentNullException">A row is null, when one comes to it.</exception>
    [Pure]
    public static IEnumerable<Trial> Draft(
        IEnumerable<BodyRow> rows, Func<BodyMeasurements, Block> draft, BatchOptions? options = null, IProgress<int>? progress = null, CancellationToken cancellation = default)
        => Trials(Guard.NotNull(rows, nameof(rows)), Guard.NotNull(draft, nameof(draft)), options ?? new BatchOptions(), progress, cancellation);

    private static IEnumerable<Trial> Trials(
        IEnumerable<BodyRow> rows, Func<BodyMeasurements, Block> draft, BatchOptions options, IProgress<int>? progress, CancellationToken cancellation)
    {
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        using var waiting = new BlockingCollection<Part>();
        var parts = new Queue<Part>();
        var workers = new Task[options.Workers];
        CancellationToken token = stop.Token;
        for (int i = 0; i < workers.Length; i++)
        {
            workers[i] = Task.Factory.StartNew(() => Work(waiting, draft, token), CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
        }

        try
        {
            using IEnumerator<BodyRow> source = rows.GetEnumerator();
            bool isMore = true;
            int done = 0;
            while (true)
            {
                while (isMore && parts.Count < PartsPerWorker * options.Workers)
                {
                    cancellation.ThrowIfCancellationRequested();
                    BodyRow[] next = Next(source, options.BodiesAtOnce);
                    isMore = next.Length == options.BodiesAtOnce;
                    if (next.Length > 0)
                    {
                        var part = new Part(next);
                        parts.Enqueue(part);
                        waiting.Add(part, CancellationToken.None);
                    }
                }

                if (parts.Count == 0)
                {
                    yield break;
                }

                Trial[] trials = parts.Dequeue().Done.Task.GetAwaiter().GetResult();
                done += trials.Length;
                progress?.Report(done);
                foreach (Trial trial in trials)
                {
                    yield return trial;
                }

                cancellation.ThrowIfCancellationRequested();
            }
        }
        finally
        {
            stop.Cancel();
            waiting.CompleteAdding();
            Task.WaitAll(workers);
        }
    }

    private static BodyRow[] Next(IEnumerator<BodyRow> source, int most)
    {
        var rows = new List<BodyRow>(most);
        while (rows.Count < most && source.MoveNext())
        {
            rows.Add(Guard.NotNull(source.Current, nameof(rows)));
        }

        return rows.ToArray();
    }

    private static void Work(BlockingCollection<Part> waiting, Func<BodyMeasurements, Block> draft, CancellationToken stop)
    {
        foreach (Part part in waiting.GetConsumingEnumerable())
        {
            try
            {
                part.Done.SetResult(Array.ConvertAll(part.Rows, row =>
                {
                    stop.ThrowIfCancellationRequested();
                    return Trial.Of(row, draft);
                }));
            }
            catch (OperationCanceledException) when (stop.IsCancellationRequested)
            {
                part.Done.SetCanceled();
            }
            catch (Exception thrown)
            {
                // No outcome of a draft, as in a trial: the caller has to know, and is waiting for the part.
                part.Done.SetException(thrown);
            }
        }
    }

    private sealed class Part(BodyRow[] rows)
    {
        internal BodyRow[] Rows { get; } = rows;

        internal TaskCompletionSource<Trial[]> Done { get; } = new(TaskCreationOptions.RunContinuationsAsynchronously);
    }
}
