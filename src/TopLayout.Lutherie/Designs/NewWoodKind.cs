using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Designs;

/// <summary>The key that a file gives to a wood it describes itself: one that no other wood has.</summary>
internal sealed class NewWoodKind(Func<IEnumerable<string>> known) : TextKind(Longest)
{
    private const int Longest = 40;

    protected override bool TryRead(Parameter parameter, RawEntry entry, ReadingContext context, out string value)
    {
        if (!base.TryRead(parameter, entry, context, out value))
        {
            return false;
        }

        var key = value;
        if (known().Contains(key, StringComparer.OrdinalIgnoreCase))
        {
            Taken($"the wood `{ValueText.Quotable(key)}` is described here, and the built-in table already has it");
            return false;
        }

        var earlier = context.EntriesOf(parameter).TakeWhile(e => e.Place != entry.Place).FirstOrDefault(e => ReadingContext.TextOf(e) == key);
        if (earlier is not null)
        {
            Taken($"the wood `{ValueText.Quotable(key)}` is described twice", earlier.Place);
            return false;
        }

        return true;

        void Taken(string sentence, params SourcePlace[] others) => context.Error(
            Rules.WoodTaken, parameter.Path, sentence, entry.Place, $"give it a key of its own, such as {ValueText.Quoted("my_" + ValueText.Quotable(key))}", others);
    }
}
