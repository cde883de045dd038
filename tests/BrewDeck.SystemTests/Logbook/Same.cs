using System.Collections;
using System.Reflection;

namespace BrewDeck.SystemTests.Logbook;

/// <summary>Equality by content: records with immutable arrays in them compare those by reference.</summary>
internal static class Same
{
    /// <returns>Null when equal; otherwise the path of the first difference.</returns>
    public static string? Difference(object? a, object? b, string path = "$")
    {
        if (a is null || b is null)
            return a is null && b is null ? null : path;
        if (a.GetType() != b.GetType())
            return path;
        if (a is IDictionary map)
            return OfMaps(map, (IDictionary)b, path);
        if (a is string || a.GetType().IsPrimitive || a.GetType().IsEnum || a is DateTimeOffset)
            return a.Equals(b) ? null : path;
        return a is IEnumerable list
            ? OfLists([.. list.Cast<object?>()], [.. ((IEnumerable)b).Cast<object?>()], path)
            : OfMembers(a, b, path);
    }

    private static string? OfMaps(IDictionary a, IDictionary b, string path) =>
        a.Count != b.Count
            ? path
            : a.Keys.Cast<object>().Select(k => Difference(a[k], b[k], $"{path}[{k}]")).FirstOrDefault(d => d is not null);

    private static string? OfLists(object?[] a, object?[] b, string path) =>
        a.Length != b.Length
            ? path
            : a.Select((x, i) => Difference(x, b[i], $"{path}[{i}]")).FirstOrDefault(d => d is not null);

    private static string? OfMembers(object a, object b, string path) =>
        a.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(p => p.GetIndexParameters().Length == 0)
            .Select(p => Difference(p.GetValue(a), p.GetValue(b), $"{path}.{p.Name}"))
            .FirstOrDefault(d => d is not null);
}
