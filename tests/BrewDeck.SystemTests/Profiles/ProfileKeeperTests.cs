using System.Collections.Immutable;
using BrewDeck.Core.Learning;
using BrewDeck.Deck;
using BrewDeck.Profiles;
using BrewDeck.SystemTests.Logbook;

namespace BrewDeck.SystemTests.Profiles;

public sealed class ProfileKeeperTests : IDisposable
{
    private static readonly DateTimeOffset Now = new(2026, 6, 1, 18, 0, 0, TimeSpan.Zero);

    private readonly TempFolder _folder = new();
    private readonly string _path;
    private readonly string _before;

    public ProfileKeeperTests()
    {
        Directory.CreateDirectory(Path.Combine(_folder.Path, "brewhouses"));
        _path = Path.Combine(_folder.Path, "brewhouses", "mine.toml");
        _before = ProfileText.Of(ProfileText.Bundled + "brewhouses/quayside-65.toml");
        File.WriteAllText(_path, _before);
    }

    public void Dispose() => _folder.Dispose();

    public static TheoryData<string> Parameters =>
        [.. LessonParameters.For(Bundled).Where(p => p.With is not null).Select(p => p.Id)];

    private static Core.Brewhouses.Brewhouse Bundled => BrewhouseFile.Read(ProfileText.Of(ProfileText.Bundled + "brewhouses/quayside-65.toml"), "x");

    [Theory]
    [MemberData(nameof(Parameters))]
    public void Every_lesson_goes_into_its_own_line_and_nothing_else_changes(string id)
    {
        var lesson = Learned(id);
        Keeper().Accept(new ProfileEntry("mine", _path), lesson, Now);

        var after = File.ReadAllText(_path);
        var house = BrewhouseFile.Read(after, _path);
        Assert.Equal(lesson.Proposed, lesson.Parameter.Get(house), 1e-3 * lesson.Proposed);
        Assert.Equal(_before, File.ReadAllText(Path.Combine(_folder.Path, "brewhouses", "mine.2026-06-01.toml")));
        var old = _before.Split('\n');
        var fresh = after.Split('\n').Where(l => !l.Contains("2026-06-01: lesson from 5 batches", StringComparison.Ordinal)).ToArray();
        // how far a day is off stands in a table of its own at the end: an empty line, its head and the one key
        Assert.Equal(old.Length + (lesson.ProposedSpread is null ? 0 : 3), fresh.Length);
        if (lesson.ProposedSpread is { } spread)
        {
            Assert.Equal("[spread]", fresh[^3]);
            Assert.Equal(spread, lesson.Parameter.Spread!.Get(house.Spreads!)!.Value, 1e-3);
        }
        var changed = old.Zip(fresh).Where(p => p.First != p.Second).ToList();
        Assert.Single(changed);
        // the comment at the end of the changed line stays
        Assert.Equal(Comment(changed[0].First), Comment(changed[0].Second));
    }

    [Fact]
    public void A_second_lesson_of_the_day_keeps_both_old_versions_and_lists_neither()
    {
        var keeper = Keeper();
        var entry = keeper.Accept(new ProfileEntry("mine", _path), Learned("evaporation"), Now);
        keeper.Accept(entry, Learned("runoff"), Now);

        Assert.Equal(["mine.2026-06-01-2.toml", "mine.2026-06-01.toml", "mine.toml"], Directory.GetFiles(Path.Combine(_folder.Path, "brewhouses")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        var listed = new ProfileFolder(Path.Combine(_folder.Path, "none"), _folder.Path).Brewhouses().Select(b => Path.GetFileName(b.Path)).ToList();
        Assert.Contains("mine.toml", listed);
        Assert.DoesNotContain(listed, l => l.Contains("2026-06-01", StringComparison.Ordinal));
    }

    [Fact]
    public void Spreads_of_several_lessons_share_one_table_and_are_replaced_by_the_next()
    {
        var keeper = Keeper();
        var entry = new ProfileEntry("mine", _path);
        foreach (var id in new[] { "evaporation", "chiller", "evaporation" })
            entry = keeper.Accept(entry, Learned(id), Now);

        var text = File.ReadAllText(_path);
        Assert.Single(text.Split('\n'), l => l.Trim() == "[spread]");
        var own = BrewhouseFile.Read(text, _path).Spreads!;
        Assert.Equal(Learned("evaporation").ProposedSpread!.Value, own.Evaporation!.Value, 1e-3);
        Assert.Equal(Learned("chiller").ProposedSpread!.Value, own.ChillerTransfer!.Value, 1e-3);
        Assert.Null(own.ConversionYield);
    }

    /// <summary>Days that differ less than was thought: their spread is written, the number stays to the letter.</summary>
    [Fact]
    public void A_number_that_the_band_holds_is_not_written_again()
    {
        var learned = Learned("evaporation");
        var lesson = learned with { Band = learned.Band with { Mean = learned.Current * 1.001 } };
        Assert.True(lesson.CanBeAccepted);
        Keeper().Accept(new ProfileEntry("mine", _path), lesson, Now);

        var after = File.ReadAllText(_path);
        Assert.StartsWith(_before.TrimEnd(), after, StringComparison.Ordinal);
        Assert.Equal(lesson.ProposedSpread!.Value, BrewhouseFile.Read(after, _path).Spreads!.Evaporation!.Value, 1e-3);
    }

    [Fact]
    public void A_bundled_profile_becomes_the_brewers_own()
    {
        var entry = Keeper().Accept(new ProfileEntry("Quayside 65", ProfileText.Bundled + "brewhouses/quayside-65.toml"), Learned("runoff"), Now);

        Assert.Equal(Path.Combine(_folder.Path, "brewhouses", "quayside-65.toml"), entry.Path);
        Assert.Equal(Learned("runoff").Proposed, BrewhouseFile.Read(File.ReadAllText(entry.Path), entry.Path).Habits.RunoffLPerMin, 1e-3);
    }

    [Fact]
    public void A_file_written_in_another_way_is_left_alone()
    {
        var inline = _before.Replace("[habits]", "[ habits ]", StringComparison.Ordinal).Replace("runoff = ", "\"runoff\" = ", StringComparison.Ordinal);
        File.WriteAllText(_path, inline);

        var e = Assert.Throws<ProfileException>(() => Keeper().Accept(new ProfileEntry("mine", _path), Learned("runoff"), Now));
        Assert.Contains("by hand", e.Message, StringComparison.Ordinal);
        Assert.Equal(inline, File.ReadAllText(_path));
        Assert.Single(Directory.GetFiles(Path.Combine(_folder.Path, "brewhouses")));
    }

    [Theory]
    [InlineData(0, "lesson from 5 batches, ")]
    [InlineData(2, "lesson from 5 batches (2 rehearsed), ")]
    [InlineData(5, "lesson from 5 rehearsed batches, ")]
    public void The_dated_note_says_how_many_batches_were_rehearsed(int rehearsed, string note)
    {
        var lesson = Learned("runoff");
        var evidence = Enumerable.Range(1, 5).Select(b => new Evidence(lesson.Parameter.Id, b, 1, 0.1, 0.1, []) { Rehearsed = b <= rehearsed });
        Keeper().Accept(new ProfileEntry("mine", _path), lesson with { Evidence = [.. evidence] }, Now);
        Assert.Contains("2026-06-01: " + note, File.ReadAllText(_path), StringComparison.Ordinal);
    }

    private ProfileKeeper Keeper() => new(_folder.Path, Path.Combine(_folder.Path, "none"));

    private static Lesson Learned(string id)
    {
        var parameter = LessonParameters.Find(Bundled, id)!;
        var now = parameter.Get(Bundled);
        return new Lesson(parameter, now, new Estimate(Math.Min(now * 0.97, parameter.Most), 0.01 * Math.Max(now, 1e-3), 5), ImmutableArray<Evidence>.Empty);
    }

    private static string Comment(string line) => line.IndexOf('#', StringComparison.Ordinal) is >= 0 and var at ? line[at..].Trim() : "";
}
