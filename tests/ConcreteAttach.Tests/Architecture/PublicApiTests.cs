using System.Collections;
using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Tests.Architecture;

/// <summary>The conventions of the public surface.</summary>
public sealed partial class PublicApiTests
{
    private const BindingFlags PublicDeclared = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    /// <summary>Public numbers without a unit type, each with why it may be one.</summary>
    private static readonly Dictionary<string, string> PlainNumbers = new(StringComparer.Ordinal)
    {
        ["AnchorSteel.Elongation"] = "a fraction",
        ["AnchorSteel.ReductionOfArea"] = "a fraction",
        ["BasePlate.ModularRatio"] = "a ratio",
        ["LoadCase.WeightedLoadFactor"] = "a factor",
        ["EarthquakeDesign.Overstrength"] = "a factor",
        ["BasePlate.PryingAllowance"] = "a fraction",
        ["BreakoutCoefficient..ctor(cracked)"] = "in the units of BreakoutCoefficient.System: no quantity of UnitsNet has lbf/(in^1.5 √psi)",
        ["BreakoutCoefficient..ctor(uncracked)"] = "in the units of BreakoutCoefficient.System",
        ["BreakoutCoefficient.Cracked"] = "in the units of BreakoutCoefficient.System",
        ["BreakoutCoefficient.Uncracked"] = "in the units of BreakoutCoefficient.System",
        ["CalculationSheet.Find"] = "in the unit of the line, which stands beside it",
        ["EarthquakeOption..ctor(Utilization)"] = "a ratio",
        ["EarthquakeOption.Utilization"] = "a ratio",
        ["Component2016..ctor(amplification)"] = "a factor",
        ["Component2016..ctor(designAcceleration)"] = "in g, as the standard maps it",
        ["Component2016..ctor(responseModification)"] = "a factor",
        ["Component2016.Amplification"] = "a factor",
        ["Component2016.ResponseModification"] = "a factor",
        ["Component2022..ctor(designAcceleration)"] = "in g, as the standard maps it",
        ["Component2022..ctor(reserve)"] = "a factor",
        ["Component2022..ctor(resonance)"] = "a factor",
        ["Component2022.Reserve"] = "a factor",
        ["Component2022.Resonance"] = "a factor",
        ["EquivalentLateralForce..ctor(designAcceleration)"] = "in g, as the standard maps it",
        ["EquivalentLateralForce..ctor(responseModification)"] = "a factor",
        ["EquivalentLateralForce.DesignAcceleration"] = "in g, as the standard maps it",
        ["EquivalentLateralForce.ImportanceFactor"] = "a factor",
        ["EquivalentLateralForce.MappedOneSecond"] = "in g, as the standard maps it",
        ["EquivalentLateralForce.OneSecondAcceleration"] = "in g, as the standard maps it",
        ["EquivalentLateralForce.ResponseModification"] = "a factor",
        ["EquivalentLateralForce.StoryShear(share)"] = "a part of a force",
        ["LoadCombinations.AllowableStress(weightedLoadFactor)"] = "a factor",
        ["LoadCombinations.CompanionLive"] = "a factor",
        ["LoadCombinations.DesignAcceleration"] = "in g, as the standard maps it",
        ["LoadCombinations.Redundancy"] = "a factor",
        ["NonstructuralComponent.DesignAcceleration"] = "in g, as the standard maps it",
        ["NonstructuralComponent.HeightRatio"] = "a ratio",
        ["NonstructuralComponent.ImportanceFactor"] = "a factor",
        ["NonstructuralComponent.Overstrength"] = "a factor",
        ["SeismicSystem..ctor(ImportanceFactor)"] = "a factor",
        ["SeismicSystem..ctor(Overstrength)"] = "a factor",
        ["SeismicSystem..ctor(ResponseModification)"] = "a factor",
        ["SeismicSystem.ImportanceFactor"] = "a factor",
        ["SeismicSystem.Overstrength"] = "a factor",
        ["SeismicSystem.ResponseModification"] = "a factor",
        ["WallAnchorage..ctor(designAcceleration)"] = "in g, as the standard maps it",
        ["WallAnchorage.DesignAcceleration"] = "in g, as the standard maps it",
        ["WallAnchorage.ImportanceFactor"] = "a factor",
        ["FailureMode.Factor"] = "a factor",
        ["FailureMode.Utilization"] = "a ratio",
        ["FastenerLayout.Circle(firstAngleDegrees)"] = "an angle, with its unit in the name",
        ["ModeResult.Factor"] = "a factor",
        ["ModeResult.Utilization"] = "a ratio",
        ["PreparedActions.Scaled(factor)"] = "a factor",
        ["PulloutStrength.Exponent"] = "an exponent",
        ["CombinedLoad.Strength(toSurfaceDegrees)"] = "an angle, with its unit in the name",
        ["FastenerPlacement.ShearAreaRatio"] = "a ratio",
        ["TestedMember..ctor(loadToGrainDegrees)"] = "an angle, with its unit in the name",
        ["TestedMember.LoadToGrainDegrees"] = "an angle, with its unit in the name",
        ["WoodMember..ctor(loadToGrainDegrees)"] = "an angle, with its unit in the name",
        ["VerificationResult.LoadFactor"] = "a factor",
        ["WoodMember.LoadToGrainDegrees"] = "an angle, with its unit in the name",
        ["WoodSpecies..ctor(specificGravity)"] = "a ratio of densities",
        ["WoodSpecies.SpecificGravity"] = "a ratio of densities",
        ["ValueLine.Value"] = "in ValueLine.Unit",
    };

    private static IEnumerable<Type> PublicTypes => LibraryCode.Assembly.GetExportedTypes();

    [Fact]
    public void Every_public_class_is_sealed_static_or_abstract() =>
        Assert.Empty(PublicTypes.Where(t => t.IsClass && !t.IsSealed && !t.IsAbstract).Select(t => t.FullName));

    /// <summary>An abstract class has no constructor that another library could call: the kinds are those of this library.</summary>
    [Fact]
    public void No_public_class_can_be_derived_from_outside() =>
        Assert.Empty(PublicTypes.Where(t => t.IsClass && t.IsAbstract && !t.IsSealed)
            .Where(t => t.GetConstructors(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic).Any(c => !IsCopy(c, t) && (c.IsPublic || c.IsFamily || c.IsFamilyOrAssembly)))
            .Select(t => t.FullName));

    [Fact]
    public void No_public_property_can_be_set_after_construction() =>
        Assert.Empty(from type in PublicTypes
                     from property in type.GetProperties(PublicDeclared)
                     where property.SetMethod is { IsPublic: true } setter && !setter.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit))
                     select $"{type.Name}.{property.Name}");

    [Fact]
    public void Public_fields_are_constants() =>
        Assert.Empty(from type in PublicTypes
                     where !type.IsEnum
                     from field in type.GetFields(PublicDeclared)
                     where !field.IsLiteral && !(field.IsStatic && field.IsInitOnly)
                     select $"{type.Name}.{field.Name}");

    [Fact]
    public void Public_structs_are_readonly() =>
        Assert.Empty(PublicTypes.Where(t => t.IsValueType && !t.IsEnum && !t.IsDefined(typeof(IsReadOnlyAttribute))).Select(t => t.FullName));

    [Fact]
    public void No_public_property_hands_out_an_array_or_a_list_that_could_be_changed() =>
        Assert.Empty(from type in PublicTypes
                     from property in type.GetProperties(PublicDeclared)
                     where property.PropertyType.IsArray || (typeof(IList).IsAssignableFrom(property.PropertyType) && property.PropertyType.IsClass)
                     select $"{type.Name}.{property.Name}");

    /// <summary>What has a unit is a UnitsNet quantity. A new plain number needs its reason in the list; one that is gone must leave it.</summary>
    [Fact]
    public void Every_public_plain_number_has_its_reason()
    {
        IEnumerable<string> properties = from type in PublicTypes
                                         from property in type.GetProperties(PublicDeclared)
                                         where IsPlain(property.PropertyType)
                                         select $"{type.Name}.{property.Name}";
        IEnumerable<string> results = from type in PublicTypes
                                      from method in type.GetMethods(PublicDeclared)
                                      where !method.IsSpecialName && !IsMadeByCompiler(method) && IsPlain(method.ReturnType)
                                      select $"{type.Name}.{method.Name}";
        IEnumerable<string> parameters = from type in PublicTypes
                                         from method in type.GetMethods(PublicDeclared).Concat<MethodBase>(type.GetConstructors(PublicDeclared))
                                         where !method.IsSpecialName || method is ConstructorInfo
                                         where !IsMadeByCompiler(method)
                                         from parameter in method.GetParameters()
                                         where IsPlain(parameter.ParameterType)
                                         select $"{type.Name}.{method.Name}({parameter.Name})";

        string[] found = [.. properties.Concat(results).Concat(parameters).Distinct().Order(StringComparer.Ordinal)];
        Assert.Equal(PlainNumbers.Keys.Order(StringComparer.Ordinal), found);

        static bool IsPlain(Type type) => (Nullable.GetUnderlyingType(type) ?? type) is var t && (t == typeof(double) || t == typeof(float) || t == typeof(decimal));
    }

    [Fact]
    public void The_library_has_one_exception() =>
        Assert.Equal([typeof(InputException)], LibraryCode.Types.Where(t => typeof(Exception).IsAssignableFrom(t)));

    /// <summary>Bad input is an <see cref="InputException"/>, a null an <see cref="ArgumentNullException"/>. What else is thrown is a mistake in the caller's code or in ours.</summary>
    [Fact]
    public void Only_the_one_exception_is_thrown_for_input()
    {
        string[] permitted = ["InputException", "ArgumentNullException", "InvalidOperationException", "ArgumentOutOfRangeException", "UnreachableException"];
        string[] thrown = [.. LibraryCode.Files.SelectMany(f => Thrown().Matches(LibraryCode.Code(File.ReadAllText(f))).Select(m => m.Groups[1].Value)).Distinct()];

        Assert.Contains("InputException", thrown);
        Assert.Empty(thrown.Except(permitted));

        // Where a caller could see one, it is documented.
        Assert.All(LibraryCode.Files.Where(f => LibraryCode.Code(File.ReadAllText(f)).Contains("public sealed class", StringComparison.Ordinal)), f =>
            Assert.DoesNotContain("new ArgumentOutOfRangeException", File.ReadAllText(f), StringComparison.Ordinal));
    }

    /// <summary>UnitsNet's text depends on the culture and is slow; a record would call it to print its members.</summary>
    [Fact]
    public void No_public_record_prints_quantities_through_UnitsNet() =>
        Assert.Empty(PublicTypes
            .Where(t => t.GetProperties(BindingFlags.Public | BindingFlags.Instance).Any(p => IsQuantity(p.PropertyType)))
            .Where(t => t.GetMethod("ToString", BindingFlags.Public | BindingFlags.Instance, []) is { } print && IsMadeByCompiler(print))
            .Select(t => t.Name).Order(StringComparer.Ordinal));

    /// <summary>Of UnitsNet the library uses typed constructors, values and units; never what depends on culture, on a set-up or on tolerance.</summary>
    [Fact]
    public void The_library_calls_nothing_of_UnitsNet_that_it_should_not()
    {
        string[] banned = ["Parse", "TryParse", "ToString", "Equals", "op_Equality", "op_Inequality", "GetHashCode", "CompareTo"];
        var wrong = new SortedSet<string>(StringComparer.Ordinal);
        int calls = 0;
        foreach (Type type in LibraryCode.Types)
        {
            foreach (MethodBase method in LibraryCode.Methods(type).Where(m => !IsMadeByCompiler(m)))
            {
                foreach (MethodBase used in LibraryCode.MembersUsed(method).OfType<MethodBase>().Where(m => m.DeclaringType?.Namespace?.StartsWith("UnitsNet", StringComparison.Ordinal) == true))
                {
                    calls++;
                    if (banned.Contains(used.Name) || used.DeclaringType!.Name is "UnitsNetSetup" or "UnitConverter" or "Quantity" or "UnitParser" or "UnitAbbreviationsCache")
                    {
                        wrong.Add($"{type.Name}.{method.Name} calls {used.DeclaringType!.Name}.{used.Name}");
                    }
                }
            }
        }

        Assert.Empty(wrong);
        Assert.InRange(calls, 50, int.MaxValue);
    }

    private static bool IsQuantity(Type type) =>
        (Nullable.GetUnderlyingType(type) ?? type).Namespace == "UnitsNet" || type == typeof(ConcreteAttach.Geometry.FastenerPosition);

    private static bool IsCopy(ConstructorInfo constructor, Type type) => constructor.GetParameters() is [var only] && only.ParameterType == type;

    private static bool IsMadeByCompiler(MemberInfo member) => member.IsDefined(typeof(CompilerGeneratedAttribute));

    [GeneratedRegex(@"\bnew (\w*Exception)\(")]
    private static partial Regex Thrown();
}
