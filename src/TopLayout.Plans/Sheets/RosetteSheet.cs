using TopLayout.Drawing;
using TopLayout.Drawing.Labels;
using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Sheets;

/// <summary>The soundhole and the channel round it at full size, with the radii to set a cutter by.</summary>
internal static class RosetteSheet
{
    private const string LinerPart = "soundhole liner";
    private const double CrossMm = 4;

    /// <summary>The sheet.</summary>
    public static Sheet Draw(ReviewedTop top)
    {
        var (layout, hole) = (top.Layout, top.Layout.Hole);
        var board = new SheetBoard();
        var view = new FaceView(TopFace.Outside, layout.Design.Get(Identity.Handed).Value);
        board.Draw("soundhole", Role.Cut, view.Map(hole.Edge));
        if (layout.HoleLiner is { } liner)
        {
            board.Draw(LinerPart, Role.Mark, view.Map(liner));
        }

        var body = view.Map(hole.Edge).Bounds;
        foreach (var (channel, wall) in ChannelWalls.Of(layout))
        {
            board.Draw(channel.Name, Role.Pocket, view.Map(wall));
            body = body.Union(view.Map(wall).Bounds);
        }

        foreach (var ring in Rosette.Channels(layout.Design, hole.Radius).SelectMany(c => c.Rings.Skip(1)))
        {
            board.Draw(ring.Name, Role.Mark, view.Map(hole.LineOutside(ring.InnerMm, ring.Name)));
        }

        foreach (var (ring, tile) in TileJoints.Rows(layout))
        {
            foreach (var (inner, outer) in TileJoints.Of(tile, hole.Center))
            {
                board.Line(ring.Name, Role.Mark, view.Map(inner), view.Map(outer));
            }
        }

        FretboardOver(board, layout, view, body);
        var centre = view.Map(hole.Center);
        board.Line("hole centre", Role.Centre, centre - new Vec2(CrossMm, 0), centre + new Vec2(CrossMm, 0));
        foreach (var (from, to) in TileJoints.AxisOffTiles(layout, body.Max.Y + 5, body.Min.Y - 6, centre.Y))
        {
            board.Line("centre line", Role.Centre, new Point2(0, from), new Point2(0, to));
        }

        FaceMarks.Draw(board, view, body);
        Measures(board, layout, view, body);
        var drawn = board.Extents;
        board.Write(Cautions.Part, Cautions.Cutting, new Point2(drawn.Min.X, drawn.Min.Y - 7));
        TitleBlock.Draw(board, top, "Rosette and soundhole, full size", FaceMarks.Reading(view), new Point2(drawn.Min.X, drawn.Min.Y - 12), board.Extents.Width);
        return board.Finish("rosette", $"Rosette and soundhole - {layout.Design[Identity.Name].Value}", "The soundhole and the channel for its rosette at full size.");
    }

    /// <summary>How deep a channel is: below the face as it is in the end, and when cut, where a layer is levelled off later.</summary>
    public static string Deep(RingChannel channel, Design design)
    {
        var off = design[Rosette.Levelling].Value;
        var whenCut = off > 0 ? $", {LengthText.Of(channel.DepthMm + off, design.Units)} when cut" : "";
        return $"{LengthText.WithUnit(channel.DepthMm, design.Units)} below the finished face{whenCut}";
    }

    // What of the fretboard will lie over the rosette, dashed; its name at the middle of the longest piece across.
    private static void FretboardOver(SheetBoard board, Layout layout, FaceView view, Box2 body)
    {
        var pieces = (layout.Find(Fretboard.Name)?.Footprint.Edges ?? [])
            .SelectMany(edge => Inside(view.Map(new Contour([new Vertex(edge.Start, edge.Bulge), new Vertex(edge.End)], isClosed: false)), body)).ToList();
        pieces.ForEach(p => board.Draw(Fretboard.Name, Role.Hidden, p));
        if (pieces.MaxBy(p => p.Bounds.Width) is { } end)
        {
            Point2[] places = [.. ((double[])[0.3, 0.7, 0.2, 0.8]).Select(end.Segments[0].PointAt)];
            board.Name(new LabelRequest(Fretboard.Name, Role.Text, "end of the fretboard", SheetBoard.TextMm, places[0]) { Elsewhere = [.. places], WantsLeader = true });
        }
    }

    private static IReadOnlyList<Contour> Inside(Contour line, Box2 body) => Region.Inside(Contour.Rectangle(body)).Clip(line);

    private static void Measures(SheetBoard board, Layout layout, FaceView view, Box2 body)
    {
        var (design, hole) = (layout.Design, layout.Hole);
        string Of(double mm) => LengthText.WithUnit(mm, design.Units);
        var ladder = new Ladder("rosette measures", body.Max.X + 8, outward: 1);
        var centre = view.Map(hole.Center).Y;
        ladder.Add(centre, $"centre {Of(-hole.Center.Y)} from neck edge");
        ladder.Add(
            centre - hole.HalfLength, hole.Radius is { } radius ? $"hole: radius {Of(radius)}" : $"hole: {Of(2 * hole.HalfWidth)} x {Of(2 * hole.HalfLength)}");
        if (layout.HoleLiner is { } liner)
        {
            ladder.Add(view.Map(liner).Bounds.Min.Y, $"{LinerPart}: {Of(design[Soundhole.Liner].Value)} thick, inside the hole's edge");
        }

        var channels = Rosette.Channels(design, hole.Radius);
        var (from, word) = hole.Radius is { } r ? (r, "radius") : (0, "from the hole's edge");
        foreach (var (i, channel) in channels.Index())
        {
            var (name, depth) = (channels.Length == 1 ? "channel" : $"channel {NumberFormat.Whole(i + 1)}", Deep(channel, design));
            var last = $"; {depth}{(i == channels.Length - 1 ? "; cut it before the hole" : "")}";
            if (i == 0 || channels[i - 1].OuterMm != channel.InnerMm)
            {
                ladder.Add(centre - hole.HalfLength - channel.InnerMm, $"{name}: inner wall, {word} {Of(from + channel.InnerMm)}");
            }

            foreach (var ring in channel.Rings)
            {
                ladder.Add(centre - hole.HalfLength - ((ring.InnerMm + ring.OuterMm) / 2), $"{ring.Name}, {Of(ring.WidthMm)} wide");
            }

            ladder.Add(centre - hole.HalfLength - channel.OuterMm, $"{name}: outer wall, {word} {Of(from + channel.OuterMm)}{last}");
        }

        ladder.Draw(board);
    }
}
