using System.Text.RegularExpressions;

namespace ConcreteAttach.Tests.Architecture;

/// <summary>
/// One direction: a room of the library uses only what stands above it, and the methods never use each other. Read twice, from the sources and
/// from the compiled code, so that neither an alias nor a fully qualified name gets past.
/// </summary>
public sealed partial class RoomTests
{
    /// <summary>The rooms from the ground up. A step is one room, or rooms that do not know of each other.</summary>
    private static readonly string[][] Order =
    [
        ["Quantities"], ["Calculation"], ["Geometry"], ["Materials"], ["Fasteners"], ["Attached"], ["Actions"], ["Distribution"], ["Verification"],
        ["Aci318", "En1992", "Tms402", "Nds", "En1995", "Aisc360", "En1993", "TestBased"], ["Connections"], ["Installation"], ["Comparison"], ["Presentation"],
    ];

    private static int Level(string room) => Array.FindIndex(Order, step => step.Contains(room));

    private static bool MayUse(string room, string other) => room == other || Level(other) < Level(room);

    [Fact]
    public void Every_folder_is_a_room_with_its_place()
    {
        string[] folders = [.. Directory.EnumerateDirectories(LibraryCode.SourceRoot).Select(d => Path.GetFileName(d)!).Where(f => f is not ("bin" or "obj" or "Properties"))];

        Assert.NotEmpty(folders);
        Assert.All(folders, f => Assert.True(Level(f) >= 0, $"the folder {f} has no place in the order"));
        Assert.All(LibraryCode.Files, f => Assert.NotEqual(LibraryCode.SourceRoot, Path.GetDirectoryName(f)));
    }

    [Fact]
    public void The_namespace_is_the_folder() => Assert.All(LibraryCode.Files, file =>
    {
        string folder = Path.GetDirectoryName(Path.GetRelativePath(LibraryCode.SourceRoot, file))!.Replace(Path.DirectorySeparatorChar, '.');
        Match match = NamespaceLine().Match(File.ReadAllText(file));
        Assert.True(match.Success && match.Groups[1].Value == $"ConcreteAttach.{folder}", $"{file}: {match.Value}");
    });

    [Fact]
    public void No_source_names_a_room_that_stands_below()
    {
        string[] wrong =
        [
            .. from file in LibraryCode.Files
               let room = Path.GetRelativePath(LibraryCode.SourceRoot, file).Split(Path.DirectorySeparatorChar)[0]
               let code = LibraryCode.Code(File.ReadAllText(file))
               from Match match in RoomName().Matches(code)
               let other = match.Groups[1].Value
               where Level(other) >= 0 && !MayUse(room, other)
               select $"{Path.GetRelativePath(LibraryCode.SourceRoot, file)} names {match.Value}",
        ];

        Assert.Empty(wrong.Distinct());
    }

    [Fact]
    public void No_compiled_type_uses_a_room_that_stands_below()
    {
        int uses = 0;
        var wrong = new SortedSet<string>(StringComparer.Ordinal);
        foreach (Type type in LibraryCode.Types)
        {
            string room = LibraryCode.RoomOf(type)!;
            foreach (Type used in LibraryCode.Uses(type))
            {
                if (LibraryCode.RoomOf(used) is { } other)
                {
                    uses++;
                    if (!MayUse(room, other))
                    {
                        wrong.Add($"{type.FullName} uses {used.FullName}");
                    }
                }
            }
        }

        Assert.Empty(wrong);
        Assert.InRange(uses, 500, int.MaxValue);
    }

    /// <summary>The reading of compiled code sees a use that stands in a method's body alone.</summary>
    [Fact]
    public void Uses_inside_method_bodies_are_seen()
    {
        Assert.Contains(typeof(Path), LibraryCode.Uses(typeof(Probe)));
        Assert.Contains(typeof(Random), LibraryCode.Uses(typeof(Probe)));
        Assert.DoesNotContain(typeof(File), LibraryCode.Uses(typeof(Probe)));
    }

    [Theory]
    [InlineData("Aci318", "Distribution", true)]
    [InlineData("Aci318", "Nds", false)]
    [InlineData("Quantities", "Calculation", false)]
    [InlineData("Presentation", "Aci318", true)]
    [InlineData("Verification", "Presentation", false)]
    public void The_arrows(string room, string other, bool may) => Assert.Equal(may, MayUse(room, other));

    [Fact]
    public void Comments_and_character_literals_are_not_code() =>
        Assert.Equal("a = ; \n b", LibraryCode.Code("a = '\"'; // Presentation.TextReport\n/* Presentation.X */ b"));

    /// <summary>An alias, a using line or a name in code: <c>ConcreteAttach.Aci318</c>, or <c>Aci318.Aci318Method</c> from within.</summary>
    [GeneratedRegex(@"(?:ConcreteAttach\.|(?<![\w.]))([A-Z][A-Za-z0-9]+)(?=\.[A-Z]|;)")]
    private static partial Regex RoomName();

    [GeneratedRegex(@"^namespace ([\w.]+);", RegexOptions.Multiline)]
    private static partial Regex NamespaceLine();

    private static class Probe
    {
        public static string Use(int seed) => seed > 0 ? Path.GetTempPath() : new Random(seed).Next().ToString(System.Globalization.CultureInfo.InvariantCulture);
    }
}
