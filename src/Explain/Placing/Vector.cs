namespace Explain;

/// <summary>A displacement in the plane, in metres, each part between proved bounds.</summary>
internal readonly record struct Vector(Enclosure X, Enclosure Y)
{
    public static Vector operator +(Vector first, Vector second) => new(first.X + second.X, first.Y + second.Y);

    public static Vector operator -(Vector first, Vector second) => new(first.X - second.X, first.Y - second.Y);

    public static Vector operator *(Vector vector, Enclosure by) => new(vector.X * by, vector.Y * by);

    public static Enclosure Dot(Vector first, Vector second) => first.X * second.X + first.Y * second.Y;

    public static Enclosure Cross(Vector first, Vector second) => first.X * second.Y - first.Y * second.X;

    public Enclosure Square => Enclosure.Power(X, 2) + Enclosure.Power(Y, 2);

    /// <summary>Null when the bounds do not keep the length from zero.</summary>
    public Enclosure? Length => Square.Sign > 0 ? Enclosure.Sqrt(Square) : null;
}
