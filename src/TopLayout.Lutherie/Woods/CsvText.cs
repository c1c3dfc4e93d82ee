using System.Text;

namespace TopLayout.Lutherie.Woods;

/// <summary>Comma-separated text (RFC 4180): fields may stand in double quotes, a doubled quote in them is one quote.</summary>
internal static class CsvText
{
    /// <summary>The records in order, blank lines left out. Line ends may be LF or CRLF, also inside quotes.</summary>
    public static IEnumerable<IReadOnlyList<string>> Records(string text)
    {
        var record = new List<string>();
        for (var at = 0; at < text.Length;)
        {
            record.Add(Field(text, ref at));
            if (at < text.Length && text[at] == ',')
            {
                at++;
                if (at == text.Length)
                {
                    record.Add("");
                }

                continue;
            }

            SkipLineEnd(text, ref at);
            if (record.Count > 1 || record[0].Length > 0)
            {
                yield return record;
            }

            record = [];
        }

        if (record.Count > 0)
        {
            yield return record;
        }
    }

    private static string Field(string text, ref int at)
    {
        var field = new StringBuilder();
        var quoted = at < text.Length && text[at] == '"';
        for (at += quoted ? 1 : 0; at < text.Length; at++)
        {
            var c = text[at];
            if (quoted && c == '"')
            {
                if (at + 1 >= text.Length || text[at + 1] != '"')
                {
                    at++;
                    break;
                }

                at++;
            }
            else if (!quoted && c is ',' or '\r' or '\n')
            {
                break;
            }

            field.Append(c);
        }

        return field.ToString();
    }

    private static void SkipLineEnd(string text, ref int at)
    {
        while (at < text.Length && text[at] != '\n')
        {
            at++;
        }

        at++;
    }
}
