using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>A piece of line on a panel: a segment of a stretch, or a line of a dart.</summary>
/// <param name="Panel">Which panel.</param>
/// <param name="Edge">Which edge.</param>
/// <param name="Stretch">Which stretch; the dart's number less one where <paramref name="Dart"/> is not none.</param>
/// <param name="Index">Which segment of the stretch.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Dart">Which line of a dart, if any.</param>
/// <param name="Start">The spot where it begins.</param>
/// <param name="StartControl">The spot of its first handle; none for a line.</param>
/// <param name="EndControl">The spot of its second handle.</param>
/// <param name="End">The spot where it ends.</param>
internal readonly record struct TruingPiece(
    int Panel, int Edge, int Stretch, int Index, PathSegmentKind Kind, DartLine Dart, int Start, int StartControl, int EndControl, int End)
{
    internal int Spot(int point) => point switch { 0 => Start, 1 => StartControl, 2 => EndControl, _ => End };
}

/// <summary>A line of a dart.</summary>
internal enum DartLine
{
    None,
    StartLeg,
    EndLeg,
    Intake,
}

/// <summary>How a spot goes with an unknown.</summary>
/// <param name="Spot">The spot.</param>
/// <param name="Unknown">The unknown.</param>
/// <param name="Way">In which direction.</param>
/// <param name="Piece">Whose handle or leg gives the direction, where it does.</param>
internal readonly record struct TruingFollow(int Spot, int Unknown, FollowWay Way, int Piece);

/// <summary>The direction in which a spot follows an unknown.</summary>
internal enum FollowWay
{
    Across,
    Up,
    AlongLine,
    AlongPath,
    AlongStartHandle,
    AlongEndHandle,
    AlongLeg,
    Swept,
}

/// <summary>One summand of an equation.</summary>
/// <param name="Kind">What is measured.</param>
/// <param name="Factor">How often it counts.</param>
/// <param name="Index">The piece or the notch; the panel of an outline's sense.</param>
/// <param name="Panel">The panel whose sense gives the sign; less than zero for none.</param>
internal readonly record struct TruingTerm(TermKind Kind, double Factor, int Index, int Panel = -1);

/// <summary>What a summand measures.</summary>
internal enum TermKind
{
    Length,
    StartAngle,
    EndAngle,
    Notch,
    Fixed,
}

/// <summary>One equation.</summary>
/// <param name="Condition">Which condition it belongs to.</param>
/// <param name="Name">What it is called.</param>
/// <param name="IsAngle">Whether it is an angle and not a length.</param>
/// <param name="Terms">What is summed up.</param>
/// <param name="Eased">The stretch that the ease of a seam is shared by.</param>
/// <param name="EasedWhole">The whole of it.</param>
/// <param name="Stretch">Which stretch of a seam.</param>
internal sealed record TruingEquation(
    int Condition, string Name, bool IsAngle, TruingTerm[] Terms, TruingTerm[]? Eased = null, TruingTerm[]? EasedWhole = null, int Stretch = 0)
{
    public override string ToString() => Name;
}

/// <summary>One unknown.</summary>
/// <param name="Movable">What it moves.</param>
/// <param name="Axis">0 across or along, 1 up.</param>
internal readonly record struct TruingUnknown(int Movable, int Axis);

/// <summary>A notch that an equation speaks of.</summary>
internal readonly record struct TruingNotch(int Panel, int Edge, int Number, int Unknown);

/// <summary>An edge that is drawn in one sweep.</summary>
/// <param name="Panel">Which panel.</param>
/// <param name="Edge">Which edge.</param>
/// <param name="Movable">Which movable.</param>
/// <param name="Pieces">The piece of each stretch.</param>
/// <param name="ApexPieces">A leg of each dart: it begins at the apex.</param>
/// <param name="Apexes">The spot of each apex.</param>
/// <param name="Leaving">The unknown of the turn at its beginning; less than zero where it keeps its direction.</param>
/// <param name="Arriving">The unknown of the turn at its end.</param>
/// <param name="Unknowns">All unknowns that it follows, its own and those of its corners and darts.</param>
internal sealed record TruingSweep(int Panel, int Edge, int Movable, int[] Pieces, int[] ApexPieces, int[] Apexes, int Leaving, int Arriving, int[] Unknowns);

/// <summary>Two segments that run smoothly into each other inside a stretch.</summary>
internal readonly record struct TruingJoint(int First, int Second, bool IsSmooth);
