using System.Collections.Immutable;
using BrewDeck.Commands;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Simulator.Mishaps;

namespace BrewDeck.Rehearsals;

/// <summary>Mishaps as they are written on the command line: <c>NAME[:mild|plain|severe][@STEP]</c>.</summary>
internal static class MishapText
{
    public static string Name(Answer answer) => answer switch
    {
        { Act: { } act } => SnakeName.Of(act),
        { Remedy: { } remedy } => SnakeName.Of(remedy),
        _ => "go_on",
    };

    /// <summary>With the step that each begins in.</summary>
    /// <exception cref="UsageException">A name is not known, or the day has no place for it.</exception>
    public static ImmutableArray<Mishap> Read(IEnumerable<string> texts, Plan plan)
    {
        ImmutableArray<Mishap> all = [.. texts.Select(Read)];
        foreach (var mishap in all.Where(m => MishapPlaces.In(plan, m) is null))
            throw new UsageException($"--mishap: {SnakeName.Of(mishap.Kind)} has no place in {(mishap.StepId is { } id ? $"step '{id}'" : "this day")}; it begins in {Places(plan, mishap.Kind)}");
        if (all.GroupBy(m => m.Kind).FirstOrDefault(g => g.Count() > 1) is { } twice)
            throw new UsageException($"--mishap: {SnakeName.Of(twice.Key)} is given twice; give each kind once");
        return MishapPlaces.Placed(plan, all);
    }

    private static Mishap Read(string text)
    {
        var (rest, step) = Cut(text, '@');
        var (name, severity) = Cut(rest, ':');
        return new Mishap(
            Find<MishapKind>(name) ?? throw Unknown(name, Enum.GetValues<MishapKind>().Select(SnakeName.Of)),
            severity is null ? Severity.Plain : Find<Severity>(severity) ?? throw Unknown(severity, Enum.GetValues<Severity>().Select(SnakeName.Of)),
            step);
    }

    private static T? Find<T>(string name)
        where T : struct, Enum
    {
        var plain = name.Trim().Replace('-', '_');
        foreach (var value in Enum.GetValues<T>())
        {
            if (SnakeName.Of(value).Equals(plain, StringComparison.OrdinalIgnoreCase))
                return value;
        }
        return null;
    }

    private static string Places(Plan plan, MishapKind kind)
    {
        var fits = plan.Steps.Where(s => MishapPlaces.Fits(kind, s.Spec.Kind)).Select(s => s.Spec.Id).ToList();
        return fits.Count == 0 ? "no step of it" : string.Join(", ", fits);
    }

    private static UsageException Unknown(string name, IEnumerable<string> known) => new($"--mishap: '{name}' is not known; write {string.Join(", ", known)}");

    private static (string Before, string? After) Cut(string text, char at) =>
        text.IndexOf(at, StringComparison.Ordinal) is >= 0 and var i ? (text[..i], text[(i + 1)..]) : (text, null);
}
