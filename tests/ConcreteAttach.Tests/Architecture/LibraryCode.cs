using System.Reflection;
using System.Reflection.Emit;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Tests.Architecture;

/// <summary>The library as sources and as compiled code.</summary>
internal static class LibraryCode
{
    private const BindingFlags Declared = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    private static readonly Dictionary<short, OpCode> OpCodesByValue = typeof(OpCodes).GetFields(BindingFlags.Public | BindingFlags.Static)
        .Select(f => (OpCode)f.GetValue(null)!).ToDictionary(o => o.Value);

    public static Assembly Assembly { get; } = typeof(InputException).Assembly;

    public static string SourceRoot { get; } = Path.Combine(
        typeof(LibraryCode).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(a => a.Key == "RepositoryRoot").Value!, "src", "ConcreteAttach");

    /// <summary>Every source file of the library.</summary>
    public static IEnumerable<string> Files => Directory.EnumerateFiles(SourceRoot, "*.cs", SearchOption.AllDirectories)
        .Where(f => !Path.GetRelativePath(SourceRoot, f).Split(Path.DirectorySeparatorChar).Any(part => part is "bin" or "obj" or "artifacts"));

    /// <summary>Every type of the library, also nested ones and those that the compiler made of lambdas.</summary>
    public static IEnumerable<Type> Types => Assembly.GetTypes().Where(t => RoomOf(t) is not null);

    /// <summary>The first part of the namespace below ConcreteAttach; null for another library's type.</summary>
    public static string? RoomOf(Type type) =>
        type.Namespace is { } name && name.StartsWith("ConcreteAttach.", StringComparison.Ordinal) && type.Assembly == Assembly ? name.Split('.')[1] : null;

    /// <summary>A source text without comments and without what stands between quotes.</summary>
    public static string Code(string source)
    {
        var code = new System.Text.StringBuilder(source.Length);
        for (int i = 0; i < source.Length; i++)
        {
            if (source[i] == '/' && i + 1 < source.Length && source[i + 1] == '/')
            {
                i = source.IndexOf('\n', i) is >= 0 and var end ? end : source.Length - 1;
                code.Append('\n');
            }
            else if (source[i] == '/' && i + 1 < source.Length && source[i + 1] == '*')
            {
                i = source.IndexOf("*/", i, StringComparison.Ordinal) + 1;
            }
            else if (source[i] == '\'' && i + 2 < source.Length && (source[i + 2] == '\'' || source[i + 1] == '\\'))
            {
                i = source.IndexOf('\'', i + 2);
            }
            else
            {
                code.Append(source[i]);
            }
        }

        return code.ToString();
    }

    /// <summary>Every type that a type names: what it derives from, its members' signatures, and what its method bodies use.</summary>
    public static IEnumerable<Type> Uses(Type type)
    {
        IEnumerable<Type?> named =
        [
            type.BaseType,
            .. type.GetInterfaces(),
            .. type.GetFields(Declared).Select(f => f.FieldType),
            .. type.GetCustomAttributesData().Select(a => a.AttributeType),
            .. Methods(type).SelectMany(m => m.GetParameters().Select(p => p.ParameterType).Append((m as MethodInfo)?.ReturnType!)),
            .. Methods(type).SelectMany(m => m.GetMethodBody()?.LocalVariables.Select(l => l.LocalType) ?? []),
            .. Methods(type).SelectMany(MembersUsed).SelectMany(m => m is Type t ? [t] : new[] { m.DeclaringType }.Concat(m is MethodInfo { IsGenericMethod: true } g ? g.GetGenericArguments() : [])),
        ];
        return named.OfType<Type>().SelectMany(Parts).Distinct();
    }

    /// <summary>The methods, types and fields whose tokens stand in a method's body.</summary>
    public static IEnumerable<MemberInfo> MembersUsed(MethodBase method)
    {
        if (method.GetMethodBody()?.GetILAsByteArray() is not { } code)
        {
            yield break;
        }

        Type[]? typeArguments = method.DeclaringType is { IsGenericType: true } declaring ? declaring.GetGenericArguments() : null;
        Type[]? methodArguments = method.IsGenericMethod ? method.GetGenericArguments() : null;
        for (int at = 0; at < code.Length;)
        {
            short value = code[at++];
            if (value == 0xFE)
            {
                value = (short)(0xFE00 | code[at++]);
            }

            OpCode instruction = OpCodesByValue[value];
            if (instruction.OperandType is OperandType.InlineMethod or OperandType.InlineField or OperandType.InlineType or OperandType.InlineTok)
            {
                yield return method.Module.ResolveMember(BitConverter.ToInt32(code, at), typeArguments, methodArguments)!;
            }

            at += instruction.OperandType switch
            {
                OperandType.InlineNone => 0,
                OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar => 1,
                OperandType.InlineVar => 2,
                OperandType.InlineI8 or OperandType.InlineR => 8,
                OperandType.InlineSwitch => 4 + (4 * BitConverter.ToInt32(code, at)),
                _ => 4,
            };
        }
    }

    public static IEnumerable<MethodBase> Methods(Type type) => [.. type.GetMethods(Declared), .. type.GetConstructors(Declared)];

    /// <summary>A type and what it is made of: element of an array or reference, generic arguments.</summary>
    private static IEnumerable<Type> Parts(Type type)
    {
        if (type.HasElementType)
        {
            return Parts(type.GetElementType()!);
        }

        return type.IsGenericType ? type.GetGenericArguments().SelectMany(Parts).Append(type) : [type];
    }
}
