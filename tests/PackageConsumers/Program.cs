// The program of someone who installed the package: .ci/run builds it against the packed .nupkg in three ways, runs each
// and compares what it prints with expected.txt. Numbers are printed with fewer digits than a double has, so that
// the last bit of a mathematical function of another runtime does not matter.
using System.Globalization;
using ConcreteAttach.Quantities;
using UnitsNet;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;

var embedment = Length.FromInches(8);
Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"h_ef = {embedment.Millimeters:F1} mm"));

try
{
    throw new InputException("effectiveEmbedment", "-3 in", "above 0 in");
}
catch (InputException error)
{
    Console.WriteLine(error.Message);
}
