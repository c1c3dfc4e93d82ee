using System.Text.RegularExpressions;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Tests.Findings;

public partial class RulesTests
{
    [Fact]
    public void All_Codes_AreWellFormedUniqueAndInOrder()
    {
        var codes = Rules.All.Select(r => r.Code).ToList();

        Assert.All(codes, code => Assert.Matches("^TL[01239][0-9]{3}$", code));
        Assert.Equal(codes.Distinct().Order(StringComparer.Ordinal), codes);
    }

    [Fact]
    public void All_PublicRules_AreListed() => Assert.Equal(
        typeof(Rules).GetProperties().Where(p => p.PropertyType == typeof(Rule)).Select(p => ((Rule)p.GetValue(null)!).Code).Order(StringComparer.Ordinal),
        Rules.All.Select(r => r.Code));

    [Fact]
    public void All_Explanations_AreAFewSentencesOfPlainText() => Assert.All(Rules.All, rule =>
    {
        Assert.InRange(SentenceEnd().Count(rule.Explanation), 3, 16);
        Assert.All(rule.Explanation.Split('\n'), line => Assert.True(line.Length <= 130, $"{rule.Code}: {line}"));
    });

    [Fact]
    public void All_Names_AreDefectsInLowerCaseWithoutFullStop() =>
        Assert.All(Rules.All, rule => Assert.Matches("^[a-z][^.]*[a-zA-Z]$", rule.Name));

    [Theory]
    [InlineData("TL1002")]
    [InlineData("tl1002")]
    public void Find_KnownCode_GivesTheRule(string code) => Assert.Same(Rules.OutOfRange, Rules.Find(code));

    [Fact]
    public void Find_UnknownCode_GivesNothing() => Assert.Null(Rules.Find("TL0000"));

    [GeneratedRegex(@"[a-z`)][.](\s|$)")]
    private static partial Regex SentenceEnd();
}
