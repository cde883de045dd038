using System.Globalization;
using BrewDeck.Core.Learning;
using BrewDeck.Deck;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Profiles;

/// <summary>Writes accepted lessons into the brewer's own file; of a bundled one an own copy is made, which counts before it.</summary>
/// <param name="ownFolder">Holds brewhouses/; made when missing.</param>
public sealed class ProfileKeeper(string ownFolder, string bundledFolder) : IProfileKeeper
{
    public ProfileEntry Accept(ProfileEntry entry, Lesson lesson, DateTimeOffset now)
    {
        var bytes = ProfileText.Bytes(entry.Path);
        var before = ProfileText.Decoded(bytes, entry.Path);
        var house = BrewhouseFile.Read(before, entry.Path);
        var after = TomlEdit.Replace(before, entry.Path, LessonKey.Of(lesson, house), Note(lesson, house, now));
        // what is written must read back to its four digits, whatever stood around it
        var read = lesson.Parameter.Get(BrewhouseFile.Read(after, entry.Path));
        if (!(Math.Abs(read - lesson.Proposed) < Math.Max(Math.Abs(lesson.Proposed - lesson.Current), 1e-3 * Math.Abs(lesson.Proposed))))
            throw new ProfileException($"{entry.Path}: the changed file does not read back; change it by hand");
        var path = ProfileText.IsBundled(entry.Path, bundledFolder) ? Path.Combine(ownFolder, "brewhouses", ProfileText.FileName(entry.Path)) : entry.Path;
        ProfileDisk.Write(path, bytes, after, now);
        return entry with { Path = path };
    }

    private static string Batches(Lesson lesson) => lesson.Rehearsed == 0 ? $"{lesson.Band.Batches} batches"
        : lesson.Rehearsed == lesson.Band.Batches ? $"{lesson.Band.Batches} rehearsed batches"
        : $"{lesson.Band.Batches} batches ({lesson.Rehearsed} rehearsed)";

    private static string Note(Lesson lesson, Core.Brewhouses.Brewhouse house, DateTimeOffset now) => string.Create(
        CultureInfo.InvariantCulture,
        $"{now:yyyy-MM-dd}: lesson from {Batches(lesson)}, {LessonWords.Name(lesson.Parameter, house, Notation.Metric)} was {LessonWords.Value(lesson.Parameter, lesson.Current, Notation.Metric)}{(lesson.Moves ? "" : " and stays, its spread was wider")}, 80 % band {LessonWords.Band(lesson, Notation.Metric)}");
}
