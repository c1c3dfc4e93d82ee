using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Designs;

/// <summary>A design's text without byte-order mark, and where its lines begin. Turns offsets into places a user can find.</summary>
internal sealed class SourceText
{
    private readonly List<int> _lineStarts = [0];

    public SourceText(string text, string file)
    {
        (Text, File) = (text.StartsWith('\uFEFF') ? text[1..] : text, file);
        for (var i = 0; i < Text.Length; i++)
        {
            if (Text[i] == '\n')
            {
                _lineStarts.Add(i + 1);
            }
        }
    }

    public string Text { get; }

    public string File { get; }

    /// <summary>The first line, before anything on it.</summary>
    public SourcePlace Start => new(File, 1, 1, 0);

    /// <summary>The stretch from one offset up to, not including, another; offsets in UTF-16 units, columns in characters.</summary>
    public SourcePlace Place(int from, int to)
    {
        from = Math.Clamp(from, 0, Text.Length);
        to = Math.Clamp(to, from, Text.Length);
        var line = LineOf(from);
        return new SourcePlace(File, line, Characters(_lineStarts[line - 1], from) + 1, Characters(from, to));
    }

    /// <summary>The line of an offset, counted from 1.</summary>
    public int LineOf(int offset)
    {
        var found = _lineStarts.BinarySearch(offset);
        return found >= 0 ? found + 1 : ~found;
    }

    /// <summary>A line, counted from 1, without its line end.</summary>
    public string LineAt(int line)
    {
        var end = line < _lineStarts.Count ? _lineStarts[line] : Text.Length;
        return Text[_lineStarts[line - 1]..end].TrimEnd('\r', '\n');
    }

    private int Characters(int from, int to)
    {
        var count = 0;
        foreach (var _ in Text.AsSpan(from, to - from).EnumerateRunes())
        {
            count++;
        }

        return count;
    }
}
