namespace Explain.Tests.Verifying;

/// <summary>Problems about areas, perimeters, heights, circles and the number of triangles, one for each kind of working.</summary>
internal static class MeasureCast
{
    public static readonly (string Name, Problem Of)[] Problems =
    [
        ("area by two sides", Of(["AB = 8 m", "CA = 5 m", "angle CAB = 60°"], "area of ABC", "perimeter of ABC")),
        ("area by three sides", Of(["AB = 8 m", "CA = 5 m", "BC = 7 m"], "area of ABC", "distance from C to AB")),
        ("circles of three sides", Of(["AB = 8 m", "CA = 5 m", "BC = 6 m"], "radius of the inscribed circle of ABC", "diameter of the circle through ABC")),
        ("circles of two angles", Of(["AB = 8 m", "angle CAB = 50°", "angle ABC = 71°"], "radius of the circle through ABC", "radius of the inscribed circle of ABC")),
        ("half the perimeter", Of(["AB = 8 m", "CA = 5 m", "BC = 6 m"], "perimeter of ABC", "area of ABC")),
        ("area by legs", Of(["AB = 8 m", "BC = 5 m", "angle ABC = 90°"], "area of ABC", "perimeter of ABC")),
        ("heights inside and outside", Of(["AB = 8 m", "CA = 5 m", "angle CAB = 130°"], "distance from C to AB", "distance from A to BC")),
        ("area in two triangles", Of(["angle BAC = 38°", "AC = 2.5 m", "CB = 1.8 m"], "area of ABC", "distance from B to AC", "number of triangles")),
        ("the triangle", Of(["AB = 12 m", "AC = 5 m", "angle CAB = 30°"], "number of triangles", "the triangle")),
        ("one from three sides", Of(["AB = 12 m", "AC = 5 m", "BC = 9 m"], "number of triangles")),
        ("none from three sides", Of(["AB = 12 m", "AC = 5 m", "BC = 7 m"], "number of triangles")),
        ("one from two angles", Of(["angle CAB = 30°", "angle ABC = 100°", "AB = 7 m"], "number of triangles")),
        ("one from two angles and a side opposite", Of(["angle CAB = 30°", "angle ABC = 100°", "BC = 7 m"], "number of triangles")),
        ("none from two angles", Of(["angle CAB = 80°", "angle ABC = 100°", "AB = 7 m"], "number of triangles")),
        ("none that reaches", Of(["angle BAC = 38°", "AC = 2.5 m", "CB = 1.5 m"], "number of triangles")),
        ("an area given", Of(["area of ABC = 12 m²", "AB = 6 m", "CA = 5 m"], "BC", "number of triangles")),
        ("an area and two angles", Of(["area of ABC = 12 m²", "angle BAC = 46°", "angle ABC = 75°"], "AB")),
        ("a perimeter and two angles", Of(["perimeter of ABC = 30 m", "angle BAC = 40°", "angle ABC = 70°"], "BC", "CA")),
        ("a perimeter, a side and an angle", Of(["perimeter of ABC = 30 m", "AB = 12 m", "angle BAC = 40°"], "CA", "angle ABC")),
        ("a perimeter of equal sides", Of("ABC is a triangle, isosceles with AB = AC", ["perimeter of ABC = 18 m", "BC = 4 m"], "AB", "area of ABC")),
        ("a perimeter of three equal sides", Of("ABC is an equilateral triangle", ["perimeter of ABC = 18 m"], "AB", "area of ABC")),
        ("a height given", Of(["distance from C to AB = 3 m", "CA = 5 m", "BC = 4 m"], "AB")),
        ("a circle through the corners given", Of(["radius of the circle through ABC = 5 m", "AB = 6 m", "BC = 8 m"], "CA")),
        ("an inscribed circle given", Of(["radius of the inscribed circle of ABC = 2 m", "area of ABC = 24 m²", "AB = 10 m", "BC = 8 m"], "CA")),
        ("an inscribed circle and two angles", Of(["radius of the inscribed circle of ABC = 2 m", "angle BAC = 46°", "angle ABC = 75°"], "AB")),
        ("none with a large angle", Of(["angle BAC = 100°", "AC = 2.5 m", "CB = 2.5 m"], "number of triangles")),
    ];

    private static Problem Of(string[] given, params string[] find) => Of("ABC is a triangle", given, find);

    private static Problem Of(string figure, string[] given, params string[] find) => Cast.Of("solve a triangle", figure, given, find);
}
