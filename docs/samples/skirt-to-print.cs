#:project ../../src/Pattern.Core.Pdf/Pattern.Core.Pdf.csproj
#:property PublishAot=false

// Prints a skirt block at full size and hands its pieces on to other programs.
//
//   dotnet run docs/samples/skirt-to-print.cs
//
// Writes to out: skirt-a4.pdf (sheets to join, a map first), skirt-roll.pdf (one sheet on a roll 36 in wide) and skirt.dxf (pieces with allowances).

using System;
using System.IO;
using Pattern.Core.Blocks;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using Pattern.Core.Pdf;
using Pattern.Core.Pieces;
using UnitsNet.Units;

var rosalind = BodyMeasurements.In(LengthUnit.Inch)
    .Named("Rosalind")
    .With(BodyMeasurement.WaistGirth, "29 1/2")
    .With(BodyMeasurement.HipGirth, "39 3/4");

SkirtBlock block = SkirtBlock.For(rosalind).WithLength(Tape.Inches("26")).Draft();
block.Report.ThrowIfFailed();

PatternPiece[] pieces =
[
    PatternPiece.From(block.Front)
        .WithAllowance(Tape.Inches("1/2"))
        .WithAllowance(EdgeName.Hem, Tape.Inches("1 1/2"))
        .CutOnFold(EdgeName.Centre),
    PatternPiece.From(block.Back)
        .WithAllowance(Tape.Inches("1/2"))
        .WithAllowance(EdgeName.Hem, Tape.Inches("1 1/2"))
        .WithAllowance(EdgeName.Centre, Tape.Inches("1")),
];

Directory.CreateDirectory("out");
Drawing drawing = block.Draw();
drawing.SavePdf("out/skirt-a4.pdf", SheetLayout.TiledOn(PaperSize.A4));
drawing.SavePdf("out/skirt-roll.pdf", SheetLayout.OnRoll(Tape.Inches("36")));
pieces.SaveDxf("out/skirt.dxf");
Console.WriteLine("Written: out/skirt-a4.pdf, out/skirt-roll.pdf, out/skirt.dxf");
