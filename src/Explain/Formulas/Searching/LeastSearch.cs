using Fractions;

namespace Explain;

/// <summary>
/// The places where a formula may be least in a box. A measurement with which it only rises or falls is put to that end, again and again; then all faces
/// of what is left are searched: their corners, and the places on edges, faces and inside where derivatives are 0.
/// </summary>
internal sealed class LeastSearch(Landscape landscape, Items<BoxSide> whole, BoxCount count)
{
    private Fraction? best;

    /// <summary>All places that may be it, the corners first; null when they could not be found.</summary>
    public Items<Spot>? Find()
    {
        List<Spot> spots = [];
        Items<BoxSide>[] faces = [.. Faces(Reduced(), 0).OrderBy(face => face.Count(s => !s.IsPoint))];
        foreach (Items<BoxSide> face in faces)
        {
            if (face.All(s => s.IsPoint)) Add(spots, Corner(face));
            else if (new StationarySearch(landscape, face, count).Find(ref best) is not { } narrow) return null;
            else foreach (Items<BoxSide> box in narrow) Add(spots, Inside(box, face));
        }

        return [.. spots.Where(s => s.Value.Low <= best)];
    }

    private void Add(List<Spot> spots, Spot spot)
    {
        if (spots.Any(spot.IsAt)) return;
        spots.Add(spot);
        if (best is null || spot.Value.High < best) best = spot.Value.High;
    }

    private Items<BoxSide> Reduced()
    {
        Items<BoxSide> box = whole;
        for (int i = 0; i < box.Count; i++)
        {
            if (box[i].IsPoint || new Covering(box, count).Direction(landscape.First(box[i].Of)) is var direction && direction == Direction.Neither) continue;
            box = Halving.With(box, i, box[i].At(direction == Direction.Rises ? box[i].Low : box[i].High));
            i = -1;
        }

        return box;
    }

    private static IEnumerable<Items<BoxSide>> Faces(Items<BoxSide> box, int from)
    {
        if (from == box.Count) return [box];
        BoxSide side = box[from];
        BoxSide[] choices = side.IsPoint ? [side] : [side.At(side.Low), side.At(side.High), side];
        return choices.SelectMany(c => Faces(Halving.With(box, from, c), from + 1));
    }

    private Spot Corner(Items<BoxSide> face) => new([.. face.Select(s => new Located(s.Of, Value.Of(Exact.Of(s.Low), s.Unit)))], Over(face));

    private Spot Inside(Items<BoxSide> narrow, Items<BoxSide> face) => new(
        Pinning.Exactly(landscape, narrow, face) ?? [.. narrow.Select(s => new Located(s.Of, new(s.IsPoint ? Exact.Of(s.Low) : null, Enclosure.Between(s.Low, s.High, OverBox.Bits), s.Unit)))],
        Over(narrow));

    private Enclosure Over(Items<BoxSide> box) => new OverBox(box).Of(landscape.Formula)!.Value;
}
