using System;
using System.Linq;
using Pattern.Core.Measurement;
using UnitsNet;

namespace Pattern.Core.Tests.Measurement;

public class WorkedLengthTests
{
    private static readonly WorkedLength Hip = WorkedLength.Measured("hip girth", Tape.Inches("39 3/4"));
    private static readonly WorkedLength Ease = WorkedLength.Given("hip ease", Tape.Inches("1"));

    // Common practice, no source: half the hip and half the ease make the box.
    [Fact]
    public void Describe_BoxWidthInEighths_PrintsWorkingAndValue()
        => Assert.Equal("1/2 of hip girth 39 3/4 + 1/2 of hip ease 1 = 20 3/8 in", (Hip.Half() + Ease.Half()).Named("box width").Describe(TapeStep.Eighth));

    [Fact]
    public void Describe_InTypographicStyle_SetsFractionsAndSigns()
        => Assert.Equal("½ of hip girth 39¾ − ½ of hip ease 1 = 19⅜″", (Hip.Half() - Ease.Half()).Describe(TapeStep.Eighth, TapeStyle.Typographic));

    [Fact]
    public void Describe_InMillimetres_MarksWhatTheStepCannotShow()
    {
        WorkedLength hip = WorkedLength.Measured("hip girth", Length.FromCentimeters(101));
        WorkedLength ease = WorkedLength.Given("hip ease", Length.FromCentimeters(2.5));

        Assert.Equal("~10.1 cm", WorkedLength.Given(Length.FromCentimeters(10.123)).Describe(TapeStep.Millimeter));
        Assert.Equal("1/2 of hip girth 101.0 + 1/2 of hip ease 2.5 = 51.75 cm", (hip.Half() + ease.Half()).Describe(TapeStep.Millimeter));
        Assert.Equal("1/2 of hip girth 101.0 + 1/2 of hip ease 2.5 = 51.75 cm", (hip.Half() + ease.Half()).Describe(TapeStep.HalfMillimeter));
    }

    [Fact]
    public void Describe_NamedPart_PrintsItsValueAndNotItsWorking()
    {
        WorkedLength box = (Hip.Half() + Ease.Half()).Named("box width");
        WorkedLength wider = WorkedLength.Given("back wider by", Tape.Inches("1/2"));

        Assert.Equal("1/2 of (box width 20 3/8 - back wider by 1/2) = 9 15/16 in", (box - wider).Half().Describe(TapeStep.Eighth));
        Assert.Equal("1/2 of (box width 20 3/8 - back wider by 1/2) = 9 15/16 in", (box - wider).Half().Describe(TapeStep.Sixteenth));
    }

    [Fact]
    public void Describe_NestedWorking_KeepsItsMeaningWithBrackets()
    {
        WorkedLength a = WorkedLength.Given("a", Length.FromInches(8));
        WorkedLength b = WorkedLength.Given("b", Length.FromInches(2));
        WorkedLength limit = WorkedLength.Given(Length.FromInches(1.25));

        Assert.Equal("a 8 - (b 2 + b 2) = 4 in", (a - (b + b)).Describe(TapeStep.Eighth));
        Assert.Equal("a 8 - b 2 - b 2 = 4 in", (a - b - b).Describe(TapeStep.Eighth));
        Assert.Equal("1 1/2 × (a 8 + b 2) = 15 in", (a + b).Times(1.5).Describe(TapeStep.Eighth));
        Assert.Equal("1/2 of 1/4 of a 8 = 1 in", a.Quarter().Half().Describe(TapeStep.Eighth));
        Assert.Equal("1/8 of a 8, at most 1 1/4 = 1 in", a.DividedBy(8).AtMost(limit).Describe(TapeStep.Eighth));
        Assert.Equal("(1/4 of a 8, at most 1 1/4) + b 2 = 3 1/4 in", (a.Quarter().AtMost(limit) + b).Describe(TapeStep.Eighth));
        Assert.Equal("a 8 - b 2, at least b 2 + b 2 = 6 in", (a - b).AtLeast(b + b).Describe(TapeStep.Eighth));
        Assert.Equal("b 2 - a 8 = -6 in", (b - a).Describe(TapeStep.Eighth));
    }

    [Fact]
    public void Describe_Leaf_PrintsNameAndValue()
    {
        Assert.Equal("hip girth 39 3/4 in", Hip.Describe(TapeStep.Eighth));
        Assert.Equal("hip girth ~101.0 cm", Hip.Describe(TapeStep.Millimeter));
        Assert.Equal("1 1/4 in", WorkedLength.Given(Length.FromInches(1.25)).Describe(TapeStep.Eighth));
    }

    [Fact]
    public void Describe_WorkingOfAMillionSteps_DoesNotExhaustTheStack()
    {
        WorkedLength part = WorkedLength.Given("part", Length.FromMillimeters(1));
        WorkedLength sum = part;
        for (int i = 0; i < 1_000_000; i++)
        {
            sum += part;
        }

        // The hundred steps that were worked last are printed, what they started from by its value.
        string text = sum.Describe(TapeStep.Millimeter);
        Assert.StartsWith("99990.0 + part 0.1 + ", text);
        Assert.EndsWith(" + part 0.1 = 100000.1 cm", text);
    }

    // A hundred doublings have 2^100 parts; nobody reads more than a few lines of them.
    [Theory]
    [InlineData(0.0)]
    [InlineData(1.0)]
    [InlineData(0.001)]
    public void Describe_SumOfItselfAHundredDeep_IsBounded(double partMm)
    {
        WorkedLength sum = WorkedLength.Given("part", Length.FromMillimeters(partMm));
        for (int i = 0; i < 100; i++)
        {
            sum += sum;
        }

        foreach (TapeStep step in new[] { TapeStep.Millimeter, TapeStep.Eighth })
        {
            Assert.InRange(sum.Describe(step).Length, 1, 4_000);
        }
    }

    [Fact]
    public void Operands_OfASum_AreWhatItWasWorkedFrom()
    {
        WorkedLength sum = (Hip.Half() + Ease).Named("sum");

        Assert.Equal(WorkedOperation.Sum, sum.Operation);
        Assert.Equal(2, sum.Operands.Count);
        Assert.Equal(WorkedOperation.Quotient, sum.Operands[0].Operation);
        Assert.Equal(2.0, sum.Operands[0].Factor);
        Assert.Same(Hip, sum.Operands[0].Operands.Single());
        Assert.Same(Ease, sum.Operands[1]);
        Assert.Empty(Ease.Operands);
        Assert.Equal("sum", sum.Name);
    }

    [Fact]
    public void Named_LeavesTheOriginalUnnamed()
    {
        WorkedLength half = Hip.Half();

        Assert.Equal("half hip", half.Named("half hip").Name);
        Assert.Null(half.Name);
    }

    [Fact]
    public void Make_WithBadInput_IsRefused()
    {
        Assert.Throws<ArgumentException>(() => WorkedLength.Measured(" ", Length.Zero));
        Assert.Throws<ArgumentNullException>(() => WorkedLength.Measured(null!, Length.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => Hip.DividedBy(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Hip.Times(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => Hip.Times(double.MaxValue));
        Assert.Throws<ArgumentNullException>(() => Hip.AtMost(null!));
    }

    [Property]
    public bool Value_OfTwoHalves_IsTheWhole(short sixtyFourths)
    {
        WorkedLength whole = WorkedLength.Given("whole", Length.FromInches(sixtyFourths / 64.0));
        return (whole.Half() + whole.Half()).Value.Millimeters == whole.Value.Millimeters;
    }
}
