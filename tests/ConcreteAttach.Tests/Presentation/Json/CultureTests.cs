using System.Globalization;
using ConcreteAttach.Presentation.Json;

namespace ConcreteAttach.Tests.Presentation.Json;

/// <summary>The same text under cultures that write numbers and letters otherwise.</summary>
public sealed class CultureTests
{
    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("fr-FR")]
    public void Results_and_errors_do_not_depend_on_the_culture(string culture)
    {
        string[] inputs =
        [
            ContractExample.Input,
            ContractExample.With(("/constants", "\"SI\""), ("/loadCases/0/Mx", "\"12.75 kip-in\""), ("/concrete/edges/+x", "\"10.25 in\"")),
            ContractExample.With(("/concrete/thickness", "\"14,5 in\"")),
            ContractExample.With(("/fastener/effectiveEmbedment", "\"-8.5 in\"")),
            ContractExample.With(("/concrete/edges/+x", "\"2.5 in\"")),
            "{ \"title\": }",
        ];
        string[] invariant = Under(CultureInfo.InvariantCulture, () => inputs.Select(i => VerificationJson.Verify(i)).ToArray());

        string[] local = Under(CultureInfo.GetCultureInfo(culture), () =>
        {
            // The culture must really be in force, or the test would say nothing.
            Assert.Equal("1,5", 1.5.ToString());
#pragma warning disable CA1304, CA1311 // on purpose: the culture of the thread
            Assert.Equal(culture == "tr-TR" ? "ı" : "i", "I".ToLower());
#pragma warning restore CA1304, CA1311
            return inputs.Select(i => VerificationJson.Verify(i)).ToArray();
        });

        Assert.Equal(invariant, local);
        Assert.Contains("\"error\"", invariant[2], StringComparison.Ordinal);
    }

    private static T Under<T>(CultureInfo culture, Func<T> run)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo beforeUi = CultureInfo.CurrentUICulture;
        try
        {
            CultureInfo.CurrentCulture = culture;
            CultureInfo.CurrentUICulture = culture;
            return run();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
            CultureInfo.CurrentUICulture = beforeUi;
        }
    }
}
