using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using Pattern.Core.Tests.Blocks;

namespace Pattern.Core.Tests.Drafting;

/// <summary>The log of a draft is the draft: followed again, it gives the same.</summary>
public class StepReplayTests
{
    private static readonly Arbitrary<(BodyMeasurements Body, SkirtAsked Asked)> Case = (from body in Bodies.Any from asked in Bodies.Options select (body, asked)).ToArbitrary();

    private static SkirtBlock? Draft((BodyMeasurements Body, SkirtAsked Asked) c)
    {
        try
        {
            return c.Asked.Apply(SkirtBlock.For(c.Body)).Draft();
        }
        catch (ConstructionException e) when (SkirtRefused.IsDraft(e))
        {
            return null;
        }
    }

    // Everything that the block says of how it was drafted, put into a builder again: panels, landmarks, lines and steps are the same to the last bit.
    [Property(MaxTest = 200)]
    public Property WhatABlockRecords_DraftedAgain_IsTheSameToTheLastBit() => Prop.ForAll(Case, c =>
    {
        if (Draft(c) is not { } block)
        {
            return true;
        }

        Block again = ((Block)block).ToBuilder().Draft();
        return SkirtBlockTests.Points(block).SequenceEqual(SkirtBlockTests.Points((SkirtBlock)again))
            && block.Drafted.Landmarks.Select(mark => mark.Position).SequenceEqual(again.Drafted.Landmarks.Select(mark => mark.Position))
            && block.Trued.Landmarks.Select(mark => mark.Position).SequenceEqual(again.Trued.Landmarks.Select(mark => mark.Position))
            && block.Steps.Select(step => step.Describe(TapeStep.SixtyFourth)).SequenceEqual(again.Steps.Select(step => step.Describe(TapeStep.SixtyFourth)));
    });

    // Only by the sentences and their words, on an empty sheet, as a student does it: each landmark lies where the draft has it, and each line is as long. Not to the last bit, for a heading
    // that a sentence says as "square to the side seam" is found again from the line.
    [Property(MaxTest = 100)]
    public Property Steps_FollowedByTheirWords_DrawTheSameDraft() => Prop.ForAll(Case, c =>
    {
        if (Draft(c) is not { } block)
        {
            return true.ToProperty();
        }

        var replay = new Replay(block);
        foreach (Step step in block.Steps.Where(step => step.Marked.Any() || step.Drew.Any()))
        {
            replay.Follow(step);
        }

        string off = string.Join("; ", block.Drafted.Landmarks.Where(mark => replay.Sheet.Find(mark.Name).Position.DistanceMm(mark.Position) > 1e-7).Select(mark => mark.Name + " " + replay.Sheet.Find(mark.Name).Position + " not " + mark.Position)
            .Concat(block.Drafted.Lines.Where(line => Math.Abs(replay.Sheet.FindLine(line.Name).Length.Millimeters - line.Path.Length.Millimeters) > 1e-6).Select(line => line.Name.Text)));
        return (off.Length == 0 && replay.Sheet.Landmarks.Count == block.Drafted.Landmarks.Count && replay.Sheet.Lines.Count == block.Drafted.Lines.Count).Label(off);
    });

    private sealed class Replay(Block block)
    {
        internal DraftingSheet Sheet { get; } = new();

        internal void Follow(Step step)
        {
            StepWord[] words = [.. step.Words];
            LineName? draws = step.Drew.SingleOrDefault()?.Name;
            Landmark From(int place) => Sheet.Find(words[place].Landmark!);
            string template = step.Template;
            if (template == "Mark {0}.")
            {
                Sheet.Mark(words[0].Landmark!, block.Drafted.Find(words[0].Landmark!).Position);
            }
            else if (template.StartsWith("Square across to the right from {0}", StringComparison.Ordinal) || template.StartsWith("Square across to the left from {0}", StringComparison.Ordinal))
            {
                Sheet.SquareAcross(From(0), template.Contains("right", StringComparison.Ordinal) ? Across.Right : Across.Left, words[1].Length!, words[2].Landmark!, draws);
            }
            else if (template.StartsWith("Square down from {0}", StringComparison.Ordinal))
            {
                Sheet.SquareDown(From(0), words[1].Length!, words[2].Landmark!, draws);
            }
            else if (template.StartsWith("Square up from {0}", StringComparison.Ordinal))
            {
                Sheet.SquareUp(From(0), words[1].Length!, words[2].Landmark!, draws);
            }
            else if (template.StartsWith("Join {0} to {1}", StringComparison.Ordinal))
            {
                Sheet.Join(From(0), From(1), draws!);
            }
            else if (template.Contains("a hip curve that leaves", StringComparison.Ordinal))
            {
                Sheet.HipCurve(From(0), From(1), draws!);
            }
            else if (template.StartsWith("Carry the {3} on beyond {0}", StringComparison.Ordinal))
            {
                Sheet.GoOnAlong(Sheet.FindLine(words[3].Line!), From(0), words[1].Length!, words[2].Landmark!, draws);
            }
            else if (template.StartsWith("Draw the {2} from {0} to {1}, square to the {3} and to the {4}", StringComparison.Ordinal))
            {
                Point2D towards = From(1).Position;
                Sheet.Curve(From(0), Square(words[3], From(0), towards - From(0).Position), From(1), Square(words[4], From(1), towards - From(0).Position), draws!);
            }
            else if (template.StartsWith("From {0} measure level to the ", StringComparison.Ordinal))
            {
                Sheet.MarkOnto(Sheet.FindLine(words[3].Line!), From(0), template.Contains("right", StringComparison.Ordinal) ? Across.Right : Across.Left, words[1].Length!, words[2].Landmark!);
            }
            else
            {
                Assert.Fail("Nobody can follow: " + template);
            }
        }

        // Square to a line at a landmark that it ends in, or that it was carried on to, and on toward the other end.
        private Direction Square(StepWord word, Landmark at, Vector2D way)
        {
            DraftedLine line = Sheet.FindLine(word.Line!);
            CurvePath path = line.Path;
            if (path.End.DistanceMm(at.Position) > 1e-9 && path.Start.DistanceMm(at.Position) > 1e-9 && path.Segments[0].Kind == PathSegmentKind.Cubic)
            {
                var scratch = new DraftingSheet();
                path = scratch.HipCurve(scratch.Mark("foot", path.Start), scratch.Mark("end", at.Position), "carried on").Path;
            }

            Direction along = path.End.DistanceMm(at.Position) <= path.Start.DistanceMm(at.Position) ? path.EndDirection : path.StartDirection;
            return along.TurnedLeft.TimesMm(1).DotMm2(way) > 0 ? along.TurnedLeft : along.TurnedRight;
        }
    }
}
