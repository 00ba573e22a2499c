namespace Explain;

/// <summary>Writes the names of objects as plain text.</summary>
internal static class NameText
{
    /// <summary>A, AB, ABC; an angle with its word or sign; a circle by its centre.</summary>
    public static string Write(Named named, English english) => named switch
    {
        Point p => p.Name,
        Line l => l.From.Name + l.To.Name,
        Polygon p => string.Concat(p.Corners.Select(c => c.Name)),
        Corner c => (english == English.UnitedStates ? "∠" : "angle ") + c.First.Name + c.Vertex.Name + c.Second.Name,
        Circle c => c.Centre.Name,
        _ => throw new ArgumentException(named.GetType().Name, nameof(named)),
    };
}
