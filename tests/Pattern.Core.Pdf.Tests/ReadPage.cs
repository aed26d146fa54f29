using System;
using System.Collections.Generic;
using System.Linq;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Graphics;
using UglyToad.PdfPig.Graphics.Operations.MarkedContent;

namespace Pattern.Core.Pdf.Tests;

/// <summary>A page as an independent reader sees it, in millimetres from its lower left corner.</summary>
internal sealed class ReadPage
{
    private const double MmPerPoint = 25.4 / 72;

    private ReadPage(Page page)
    {
        WidthMm = page.Width * MmPerPoint;
        HeightMm = page.Height * MmPerPoint;
        Text = page.Text;
        Letters = page.Letters;
        Lines = page.Paths.Where(path => path.IsStroked).SelectMany(ReadLine.Of).ToArray();
        Fills = page.Paths.Where(path => path.IsFilled).SelectMany(ReadLine.Of).ToArray();
        Layers = page.GetOptionalContents().ToDictionary(layer => layer.Key, layer => layer.Value.Sum(part => part.MarkedContent.Paths.Count + part.MarkedContent.Letters.Count));
        Beginnings = page.Operations.OfType<BeginMarkedContentWithProperties>().Count();
        Ends = page.Operations.OfType<EndMarkedContent>().Count();
    }

    internal double WidthMm { get; }

    internal double HeightMm { get; }

    internal string Text { get; }

    internal IReadOnlyList<Letter> Letters { get; }

    internal IReadOnlyList<ReadLine> Lines { get; }

    internal IReadOnlyList<ReadLine> Fills { get; }

    /// <summary>How many lines and letters each layer has on this page.</summary>
    internal IReadOnlyDictionary<string, int> Layers { get; }

    internal int Beginnings { get; }

    internal int Ends { get; }

    internal static IReadOnlyList<ReadPage> All(byte[] pdf)
    {
        using PdfDocument document = Open(pdf);
        return document.GetPages().Select(page => new ReadPage(page)).ToArray();
    }

    // Clipping by the reader would flatten the curves; and it shall not overlook what is wrong.
    internal static PdfDocument Open(byte[] pdf) => PdfDocument.Open(pdf, new ParsingOptions { ClipPaths = false, UseLenientParsing = false });

    /// <summary>One stretch of line: its control points in order, lines with two and curves with four for each segment.</summary>
    internal sealed record ReadLine(IReadOnlyList<IReadOnlyList<(double X, double Y)>> Segments, double WeightMm)
    {
        internal static IEnumerable<ReadLine> Of(PdfPath path)
        {
            foreach (PdfSubpath part in path)
            {
                var segments = new List<IReadOnlyList<(double X, double Y)>>();
                (double X, double Y) start = default;
                (double X, double Y) last = default;
                foreach (PdfSubpath.IPathCommand command in part.Commands)
                {
                    switch (command)
                    {
                        case PdfSubpath.Move move:
                            start = last = Mm(move.Location);
                            break;
                        case PdfSubpath.Line line:
                            segments.Add([Mm(line.From), Mm(line.To)]);
                            last = Mm(line.To);
                            break;
                        case PdfSubpath.CubicBezierCurve curve:
                            segments.Add([Mm(curve.StartPoint), Mm(curve.FirstControlPoint), Mm(curve.SecondControlPoint), Mm(curve.EndPoint)]);
                            last = Mm(curve.EndPoint);
                            break;
                        case PdfSubpath.Close:
                            if (Math.Abs(start.X - last.X) + Math.Abs(start.Y - last.Y) > 1e-3)
                            {
                                segments.Add([last, start]);
                            }

                            last = start;
                            break;
                        default:
                            throw new InvalidOperationException(command.GetType().Name);
                    }
                }

                yield return new ReadLine(segments, path.LineWidth * MmPerPoint);
            }
        }

        private static (double X, double Y) Mm(PdfPoint point) => (point.X * MmPerPoint, point.Y * MmPerPoint);
    }
}
