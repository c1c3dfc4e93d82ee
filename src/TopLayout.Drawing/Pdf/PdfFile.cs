using System.Buffers;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace TopLayout.Drawing.Pdf;

/// <summary>
/// The objects of a PDF file over one buffer: each is reserved, then written once. Streams are not compressed, so the same content gives the
/// same bytes and a reader of diffs sees lines. PDF 1.7; the file's identity is a hash of its content, and no date is written.
/// </summary>
internal sealed class PdfFile
{
    private readonly ArrayBufferWriter<byte> _buffer = new();
    private readonly List<int> _offsets = [];

    /// <summary>An empty file.</summary>
    public PdfFile() => Raw("%PDF-1.7\n%\u00b5\u00b6\u00b7\u00b8\n");

    /// <summary>A number for an object to be written later; numbers start at 1.</summary>
    public int Reserve()
    {
        _offsets.Add(-1);
        return _offsets.Count;
    }

    /// <summary>Writes an object under a reserved number.</summary>
    /// <exception cref="InvalidOperationException">It is written already.</exception>
    public void Write(int number, string content)
    {
        Begin(number);
        Raw(content);
        Raw("\nendobj\n");
    }

    /// <summary>Writes a stream under a reserved number; the dictionary's entries come without its brackets and without the length.</summary>
    /// <exception cref="InvalidOperationException">It is written already.</exception>
    public void WriteStream(int number, string entries, string content)
    {
        Begin(number);
        Raw($"<< {entries}{(entries.Length > 0 ? " " : "")}/Length {NumberFormat.Whole(content.Length)} >>\nstream\n");
        Raw(content);
        Raw("\nendstream\nendobj\n");
    }

    /// <summary>The whole file.</summary>
    /// <param name="catalog">Number of the catalogue.</param>
    /// <param name="info">Number of the document's information.</param>
    /// <exception cref="InvalidOperationException">A reserved object was not written.</exception>
    public byte[] Finish(int catalog, int info)
    {
        var unwritten = _offsets.IndexOf(-1);
        if (unwritten >= 0)
        {
            throw new InvalidOperationException($"object {unwritten + 1} is reserved and not written");
        }

        var identity = Convert.ToHexString(SHA256.HashData(_buffer.WrittenSpan))[..32];
        var table = _buffer.WrittenCount;
        var size = NumberFormat.Whole(_offsets.Count + 1);
        Raw($"xref\n0 {size}\n0000000000 65535 f \n");
        foreach (var offset in _offsets)
        {
            Raw($"{offset.ToString("D10", CultureInfo.InvariantCulture)} 00000 n \n");
        }

        Raw($"trailer\n<< /Size {size} /Root {NumberFormat.Whole(catalog)} 0 R /Info {NumberFormat.Whole(info)} 0 R /ID [<{identity}> <{identity}>] >>\n");
        Raw($"startxref\n{NumberFormat.Whole(table)}\n%%EOF\n");
        return _buffer.WrittenSpan.ToArray();
    }

    /// <summary>A text as a PDF string: UTF-16 with its mark where it is not plain ASCII.</summary>
    public static string Text(string text) => text.All(c => c is >= ' ' and <= '~')
        ? $"({text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("(", "\\(", StringComparison.Ordinal).Replace(")", "\\)", StringComparison.Ordinal)})"
        : $"<FEFF{Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(text))}>";

    private void Begin(int number)
    {
        if (_offsets[number - 1] >= 0)
        {
            throw new InvalidOperationException($"object {number} is written already");
        }

        _offsets[number - 1] = _buffer.WrittenCount;
        Raw($"{NumberFormat.Whole(number)} 0 obj\n");
    }

    private void Raw(string text) => Encoding.Latin1.GetBytes(text, _buffer);
}
