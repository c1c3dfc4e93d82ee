using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Plans.Sheets;

/// <summary>The template of the tongue, to cut out and draw round: seen from inside, the block's outline beside it.</summary>
internal static class TongueSheet
{
    /// <summary>The template; null when the design has no tongue.</summary>
    public static Sheet? Draw(ReviewedTop top)
    {
        var layout = top.Layout;
        if (layout.Find(Tongue.Name) is not { } tongue || layout.Find(Block.Neck.Name) is not { } block)
        {
            return null;
        }

        var board = new SheetBoard();
        var view = new FaceView(TopFace.Inside, layout.Design.Get(Identity.Handed).Value);
        var outline = view.Map(tongue.Footprint.Outer);
        var isOnePiece = IsOnePiece(tongue, block);
        board.Draw(Tongue.Name, Role.Cut, isOnePiece ? view.Map(tongue.Footprint.Union(block.Footprint).Outer) : outline);
        GlueAreas.Draw(board, layout, tongue, view);
        board.Write(Block.Neck.Name, Block.Neck.Name, view.Map(block.Footprint.Bounds.Center) + new Vec2(-block.Footprint.Bounds.Width / 4, 0), alignment: Alignment.Centre);
        if (!isOnePiece)
        {
            BlockBehind(board, tongue, block, view);
        }

        if (layout.FindMark(TrussRod.Name) is { } slot)
        {
            board.Draw(slot.Name, Role.Hidden, view.Map(slot.Line));
        }

        var body = outline.Bounds.Union(view.Map(block.Footprint.Outer).Bounds);
        board.Line("centre line", Role.Centre, new Point2(0, body.Max.Y + 5), new Point2(0, body.Min.Y - 6));
        FaceMarks.Draw(board, view, body);
        Measures(board, layout, body);
        Grain(board, tongue, block, view, new Point2(body.Center.X, body.Min.Y - 12));
        var left = board.Extents.Min.X;
        foreach (var (i, member) in new[] { tongue, block }.Index())
        {
            board.Write("places", $"place of the {member.Name}: {PartMeasures.Place(member, layout.Design.Units)}", new Point2(left, board.Extents.Min.Y - (i == 0 ? 8 : 5)));
        }

        board.Write("places", Joint(tongue, block), new Point2(left, board.Extents.Min.Y - 5));
        var drawn = board.Extents;
        board.Write(Cautions.Part, Cautions.Cutting, new Point2(drawn.Min.X, drawn.Min.Y - 7));
        var foot = TitleBlock.Draw(board, top, "Tongue: template, full size", FaceMarks.Reading(view), new Point2(drawn.Min.X, drawn.Min.Y - 12), board.Extents.Width);
        Legend.Draw(board, new Point2(drawn.Min.X, foot - 4));
        return board.Finish("tongue", $"Tongue template - {layout.Design[Identity.Name].Value}", "The tongue of the neck block at full size, to cut out.");
    }

    /// <summary>Whether block and tongue may be one piece: of one wood, sawn alike, their grain one way.</summary>
    public static bool IsOnePiece(Member tongue, Member block) => tongue.Material == block.Material && AreAlongOneGrain(tongue, block);

    private static bool AreAlongOneGrain(Member tongue, Member block) =>
        tongue.Material!.Lie == block.Material!.Lie && (tongue.Material.Lie == GrainLie.Upright || tongue.Grain == block.Grain);

    /// <summary>How the two hang together.</summary>
    public static string Joint(Member tongue, Member block) =>
        IsOnePiece(tongue, block) ? "tongue and block are one piece, sawn out in one" : "tongue and block are two pieces, jointed at the block's face";

    private static void BlockBehind(SheetBoard board, Member tongue, Member block, FaceView view)
    {
        foreach (var edge in block.Footprint.Outer.Segments.Where(e => e.Label != Block.FaceEdge))
        {
            board.Draw(Block.Neck.Name, Role.Mark, view.Map(new Contour([new Vertex(edge.Start, edge.Bulge), new Vertex(edge.End)], isClosed: false)));
        }

        Face(board, tongue, block, view);
    }

    // The block's face to both sides of the tongue's root.
    private static void Face(SheetBoard board, Member tongue, Member block, FaceView view)
    {
        var face = block.Footprint.Outer.Segments.First(e => e.Label == Block.FaceEdge);
        var ends = new[] { face.Start, face.End }.OrderBy(p => p.X).ToArray();
        var root = tongue.Footprint.Outer.Vertices.Select(v => v.Position).Where(p => Math.Abs(p.Y - ends[0].Y) <= Tolerances.ShortestMm).Select(p => p.X).ToList();
        foreach (var (from, to) in (ReadOnlySpan<(double, double)>)[(ends[0].X, root.DefaultIfEmpty(ends[1].X).Min()), (root.DefaultIfEmpty(ends[1].X).Max(), ends[1].X)])
        {
            if (to - from > Tolerances.ShortestMm)
            {
                board.Draw(Block.Neck.Name, Role.Mark, view.Map(new Contour([new Vertex(new Point2(from, ends[0].Y)), new Vertex(new Point2(to, ends[0].Y))], isClosed: false)));
            }
        }
    }

    // One arrow where both lie alike, as when they are one piece.
    private static void Grain(SheetBoard board, Member tongue, Member block, FaceView view, Point2 at)
    {
        if (AreAlongOneGrain(tongue, block))
        {
            GrainArrow.Draw(board, tongue, view, at, " of tongue and block");
            return;
        }

        var foot = GrainArrow.Draw(board, tongue, view, at, " of the tongue");
        GrainArrow.Draw(board, block, view, new Point2(at.X, foot - 6), " of the block");
    }

    private static void Measures(SheetBoard board, Layout layout, Box2 body)
    {
        var design = layout.Design;
        string Of(double mm) => LengthText.WithUnit(mm, design.Units);
        var face = Block.Neck.FaceY(design, layout.InsideOfSides);
        var stock = PartMeasures.Stuff(layout.Find(Tongue.Name)!, design.Units);
        var ladder = new Ladder("tongue measures", body.Max.X + 8, outward: 1);
        var length = design[Tongue.Length].Value;
        if (design.Get(Tongue.Shape).Value is TongueShape.Straight or TongueShape.StraightRound)
        {
            ladder.Add(face, $"{Of(design[Tongue.RootWidth].Value)} wide, block face {Of(-face)} from neck edge");
            if (layout.Find(Tongue.Name)!.Footprint.Outer.Segments.First(s => s.Label == TongueRecipe.Tip) is { IsArc: true } tip)
            {
                ladder.Add(face - length + (Math.Min(length, tip.Radius) / 2), $"tip of radius {Of(tip.Radius)}");
            }

            ladder.Add(face - length, $"{Of(length)} long, {stock}");
        }
        else
        {
            var recipe = Tongue.Recipe(design);
            length = recipe.Length;
            ladder.Add(face, $"{Of(2 * recipe.FaceHalf)} wide at block face, {Of(-face)} from neck edge");
            if (recipe.Fillet > 0)
            {
                ladder.Add(face, $"root {Of(2 * recipe.RootHalf)} wide, where the flanks drawn on meet the block face");
            }

            if (recipe.HasFlank && recipe.Fillet > 0)
            {
                ladder.Add(face - (length / 4), $"hollows of radius {Of(recipe.Fillet)}");
            }

            if (recipe.HasFlank)
            {
                ladder.Add(face - (length / 2), $"flanks {LengthText.Of(recipe.Flank)} to the centre line");
            }

            ladder.Add(face - (3 * length / 4), $"tip of radius {Of(recipe.TipRadius)}");
            ladder.Add(face - length, $"{Of(length)} long, {stock}");
        }

        if (layout.FindMark(TrussRod.Name) is { } slot)
        {
            var end = TrussRod.EndY(layout);
            ladder.Add(end, $"truss-rod slot {Of(design[TrussRod.Width].Value)} wide, {Of(slot.ThicknessMm)} deep, in the face glued to the top, ends {Of(face - end)} past the block face");
        }

        ladder.Draw(board);
    }
}
