using System.Globalization;

namespace TopLayout.Tests.Drawing;

/// <summary>Runs a piece of a test under another culture.</summary>
internal static class InCulture
{
    public static void Run(string name, Action action)
    {
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(name);
        try
        {
            action();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
