using System.Reflection;
using System.Reflection.Emit;

namespace Driveline.Tests.Consistency.Rules;

/// <summary>Reads compiled methods for what they throw.</summary>
internal static class Throwing
{
    private const int Deepest = 2;

    private static readonly Dictionary<short, OpCode> Codes = typeof(OpCodes).GetFields(BindingFlags.Public | BindingFlags.Static)
        .Select(f => (OpCode)f.GetValue(null)!).ToDictionary(c => c.Value);

    /// <summary>Whether the method, or a helper of its package that is not public, throws for an argument that is not null.</summary>
    public static bool ForArguments(MethodBase method) => ForArguments(method, 0);

    private static bool ForArguments(MethodBase method, int depth) => Calls(method).Any(called =>
        called.IsConstructor
            ? typeof(ArgumentException).IsAssignableFrom(called.DeclaringType) && called.DeclaringType != typeof(ArgumentNullException)
            : depth < Deepest && called.Module == method.Module && IsHelper(called) && ForArguments(called, depth + 1));

    private static bool IsHelper(MethodBase called) => called.IsStatic && !(called.IsPublic && called.DeclaringType!.IsPublic);

    private static IEnumerable<MethodBase> Calls(MethodBase method)
    {
        byte[] code = method.GetMethodBody()?.GetILAsByteArray() ?? [];
        for (int i = 0; i < code.Length;)
        {
            short value = code[i++];
            if (value == 0xFE)
            {
                value = unchecked((short)(0xFE00 | code[i++]));
            }

            OpCode operation = Codes[value];
            if (operation.OperandType == OperandType.InlineMethod && Resolve(method, BitConverter.ToInt32(code, i)) is { } called)
            {
                yield return called;
            }

            i += operation.OperandType switch
            {
                OperandType.InlineNone => 0,
                OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar => 1,
                OperandType.InlineVar => 2,
                OperandType.InlineI8 or OperandType.InlineR => 8,
                OperandType.InlineSwitch => 4 + 4 * BitConverter.ToInt32(code, i),
                _ => 4,
            };
        }
    }

    private static MethodBase? Resolve(MethodBase method, int token)
    {
        Type[]? ofMethod = method.IsGenericMethod ? method.GetGenericArguments() : null;
        Type[]? ofType = method.DeclaringType!.IsGenericType ? method.DeclaringType.GetGenericArguments() : null;
        return method.Module.ResolveMethod(token, ofType, ofMethod);
    }
}
