namespace Explain;

/// <summary>The kinds of statement about where things are; the comment gives the objects, in order.</summary>
public enum PlaceKind
{
    /// <summary>Polygon: three corners named in order round the shape.</summary>
    Triangle,

    /// <summary>Polygon, point: a triangle with its right angle at the point.</summary>
    RightAngledTriangle,

    /// <summary>Polygon, line, line: a triangle with these two sides equal.</summary>
    IsoscelesTriangle,

    /// <summary>Polygon.</summary>
    EquilateralTriangle,

    /// <summary>Polygon.</summary>
    Square,

    /// <summary>Polygon.</summary>
    Rectangle,

    /// <summary>Polygon.</summary>
    Rhombus,

    /// <summary>Polygon.</summary>
    Parallelogram,

    /// <summary>Polygon, symmetrical about the diagonal from its first corner.</summary>
    Kite,

    /// <summary>Polygon, the first side parallel to the third.</summary>
    Trapezium,

    /// <summary>Polygon of four corners, convex.</summary>
    Quadrilateral,

    /// <summary>Polygon, convex.</summary>
    ConvexPolygon,

    /// <summary>Polygon, then the corners that point inwards.</summary>
    ReflexPolygon,

    /// <summary>Polygon with equal sides and equal angles.</summary>
    RegularPolygon,

    /// <summary>Points on one straight line, in that order.</summary>
    InLine,

    /// <summary>Point, line: the point is between the two ends.</summary>
    Between,

    /// <summary>Point, line: the point is on the line beyond its second end.</summary>
    OnProduced,

    /// <summary>Point, line: the point is on the straight line, anywhere.</summary>
    OnLine,

    /// <summary>Point, polygon.</summary>
    Inside,

    /// <summary>Line, line, point: the point is between the ends of both.</summary>
    Meet,

    /// <summary>Line, line, point: the point may be on either produced.</summary>
    LinesMeet,

    /// <summary>Line, line: parallel and in the same direction.</summary>
    Parallel,

    /// <summary>Line, line.</summary>
    Perpendicular,

    /// <summary>Point, line.</summary>
    Midpoint,

    /// <summary>Line, corner: the line bisects the angle.</summary>
    Bisects,

    /// <summary>Point, point, line: the first is the foot of the perpendicular from the second to the line.</summary>
    Foot,

    /// <summary>Points on one circle in that order round it, last the circle.</summary>
    OnCircle,

    /// <summary>Line: a diameter of the circle.</summary>
    Diameter,

    /// <summary>Line, point: the line touches the circle at the point.</summary>
    Touches,

    /// <summary>Lines that the circle touches.</summary>
    CircleTouches,

    /// <summary>Point, point, line.</summary>
    OppositeSides,

    /// <summary>Point, point, line.</summary>
    SameSide,

    /// <summary>Corner.</summary>
    Acute,

    /// <summary>Corner.</summary>
    Obtuse,

    /// <summary>Corner.</summary>
    ReflexAngle,

    /// <summary>Corner.</summary>
    RightAngle,

    /// <summary>Polygon.</summary>
    Clockwise,

    /// <summary>Polygon.</summary>
    Anticlockwise,

    /// <summary>Point, polygon: a tether fixed at the point, outside the shape.</summary>
    TetherOutside,

    /// <summary>Point, polygon: a tether fixed at the point, inside the shape.</summary>
    TetherInside,

    /// <summary>Point: a tether in the open.</summary>
    TetherFree,

    /// <summary>Point: a tether fixed to the outside of the circle of the figure.</summary>
    TetherRound,
}
