using System.Globalization;

namespace TopLayout.Cli;

/// <summary>How far a long run is: one line written over and over on a terminal, a line for each step where it goes to a file.</summary>
internal sealed class Progress(TextWriter to, bool isPlain)
{
    private const int BarWidth = 20;
    private int _width;

    /// <summary>A step begins: what is done ("drawing"), with what, its number and of how many.</summary>
    public void Begin(string doing, string what, int number, int of)
    {
        if (isPlain)
        {
            to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{doing} {what} ({number} of {of})"));
            return;
        }

        var done = BarWidth * (number - 1) / of;
        var line = $"[{new string('#', done)}{new string('.', BarWidth - done)}] {doing} {what}";
        to.Write('\r' + line.PadRight(_width));
        _width = line.Length;
    }

    /// <summary>All steps are done: the line is wiped.</summary>
    public void End()
    {
        if (!isPlain)
        {
            to.Write('\r' + new string(' ', _width) + '\r');
        }
    }
}
