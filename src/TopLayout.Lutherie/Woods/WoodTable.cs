using System.Collections.Immutable;
using System.Globalization;

namespace TopLayout.Lutherie.Woods;

/// <summary>
/// The built-in woods, in the order of the embedded table: softwoods, domestic hardwoods, imported ones. Numbers of the Wood
/// Handbook, FPL-GTR-190 (2010), each with its table and how it was read.
/// </summary>
public static class WoodTable
{
    /// <summary>
    /// G_RT over E_L where Table 5-1 prints a dash: between birch 0.017, walnut and khaya 0.021 and mahogany 0.028 of that table.
    /// </summary>
    private static readonly WoodValue RollingOverAlong =
        new(0.020, Provenance.Assumed, "no value in Table 5-1; 0.020 E_L assumed, as of birch 0.017 and walnut 0.021");

    private static readonly Lazy<ImmutableArray<Wood>> Table = new(Read);

    /// <summary>Every wood, in the order of the table.</summary>
    public static ImmutableArray<Wood> All => Table.Value;

    /// <summary>Every key, in the order of the table.</summary>
    public static IEnumerable<string> Keys => All.Select(w => w.Key);

    /// <summary>The wood with a key, upper or lower case; null when there is none.</summary>
    public static Wood? Find(string key) => All.FirstOrDefault(w => string.Equals(w.Key, key, StringComparison.OrdinalIgnoreCase));

    private static ImmutableArray<Wood> Read()
    {
        using var stream = typeof(WoodTable).Assembly.GetManifestResourceStream("species.csv")!;
        using var reader = new StreamReader(stream);
        var records = CsvText.Records(reader.ReadToEnd()).ToList();
        return [.. records.Skip(1).Select(fields => ToWood(new Row(records[0], fields)))];
    }

    private static Wood ToWood(Row row)
    {
        var along = row.Value("EL_GPa", "EL_source") is { } gpa ? gpa with { Value = gpa.Value * 1000 } : (WoodValue?)null;
        return new Wood(row.Text("key"), row.Text("common_name"))
        {
            ScientificName = row.Text("scientific_name"),
            MovementRadial = row.Value("C_R", "movement_source"),
            MovementTangential = row.Value("C_T", "movement_source"),
            ShrinkageRadialPercent = row.Value("S_R_pct", "shrinkage_source"),
            ShrinkageTangentialPercent = row.Value("S_T_pct", "shrinkage_source"),
            SpecificGravity = row.Value("SG12", "strength_source"),
            ModulusAlongMPa = along,
            ModulusRadialMPa = row.Ratio("ER_over_EL")?.Times(along!.Value),
            ModulusTangentialMPa = row.Ratio("ET_over_EL")?.Times(along!.Value),
            ShearModulusLongitudinalRadialMPa = row.Ratio("GLR_over_EL")?.Times(along!.Value),
            ShearModulusLongitudinalTangentialMPa = row.Ratio("GLT_over_EL")?.Times(along!.Value),
            ShearModulusRollingMPa = RollingShear(row)?.Times(along!.Value),
            PoissonLongitudinalRadial = row.Ratio("nuLR"),
            PoissonLongitudinalTangential = row.Ratio("nuLT"),
            TensionAcrossMPa = row.Value("tension_perp_MPa", "strength_source"),
            ShearStrengthMPa = row.Value("shear_par_MPa", "strength_source"),
        };
    }

    // Assumed only where the rest of the wood's row of Table 5-1 is known.
    private static WoodValue? RollingShear(Row row) =>
        row.Ratio("GRT_over_EL") ?? (row.Ratio("ER_over_EL") is null ? null : RollingOverAlong);

    private readonly struct Row(IReadOnlyList<string> header, IReadOnlyList<string> fields)
    {
        public string Text(string column)
        {
            var i = header.Index().First(h => h.Item == column).Index;
            return i < fields.Count ? fields[i] : "";
        }

        public WoodValue? Ratio(string column) => Value(column, "ratio_source");

        public WoodValue? Value(string column, string sourceColumn) => Text(column) is { Length: > 0 } text
            ? new WoodValue(double.Parse(text, CultureInfo.InvariantCulture), ProvenanceOf(column), SourceOf(Text(sourceColumn)))
            : null;

        private Provenance ProvenanceOf(string column) =>
            Text("memory").Split(' ').Contains(column) ? Provenance.Memory
            : Text("derived").Split(' ').Contains(column) ? Provenance.Derived
            : Provenance.Found;

        private static string SourceOf(string text) =>
            text.Contains("Table", StringComparison.Ordinal) && !text.StartsWith("species", StringComparison.Ordinal)
                ? $"Wood Handbook, FPL-GTR-190 (2010), {text}"
                : text;
    }
}
