using System.Globalization;

namespace TopLayout.EndToEnd.Tests;

/// <summary>A picture in grey, as the portable grey map format (P5) holds it: a byte a pixel, 255 is white. All that is not white is ink.</summary>
internal sealed class Bitmap(int width, int height, byte[] rows)
{
    public int Width { get; } = width;

    public int Height { get; } = height;

    public static Bitmap Read(string file)
    {
        var bytes = File.ReadAllBytes(file);
        var (at, words) = (0, new List<string>());
        while (words.Count < 4)
        {
            var start = at;
            while (!char.IsWhiteSpace((char)bytes[at]))
            {
                at++;
            }

            words.Add(System.Text.Encoding.ASCII.GetString(bytes, start, at - start));
            at++;
        }

        Assert.Equal("P5", words[0]);
        return new Bitmap(int.Parse(words[1], CultureInfo.InvariantCulture), int.Parse(words[2], CultureInfo.InvariantCulture), bytes[at..]);
    }

    /// <summary>True for ink; false outside the picture.</summary>
    public bool IsInk(int x, int y) => x >= 0 && y >= 0 && x < Width && y < Height && rows[(y * Width) + x] != 255;

    /// <summary>True when ink lies within a pixel.</summary>
    public bool IsNearInk(int x, int y)
    {
        for (var dy = -1; dy <= 1; dy++)
        {
            for (var dx = -1; dx <= 1; dx++)
            {
                if (IsInk(x + dx, y + dy))
                {
                    return true;
                }
            }
        }

        return false;
    }
}
