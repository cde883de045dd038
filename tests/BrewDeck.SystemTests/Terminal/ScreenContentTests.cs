using System.Drawing;
using BrewDeck.Core.Planning;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;
using BrewDeck.Terminal.Panes.Layouts;
using BrewDeck.Terminal.Stills;
using CsCheck;
using Size = System.Drawing.Size;

namespace BrewDeck.SystemTests.Terminal;

public sealed class ScreenContentTests
{
    private static readonly DeckScreen[] Decks = [SampleScreens.Rest, SampleScreens.Overdue, SampleScreens.LongHeat];

    /// <summary>At the smallest full size nothing that matters on the day may be missing.</summary>
    [Theory]
    [InlineData(80, 24)]
    [InlineData(100, 30)]
    [InlineData(120, 40)]
    [InlineData(200, 60)]
    public void The_deck_shows_all_that_matters(int columns, int rows)
    {
        var text = StillScreen.Of(SampleScreens.Rest, columns, rows).ToText();
        string[] wanted =
        [
            "Mash · rest 2 of 3", "14:32:07", "left of rest 2", "HOLD 66 °C", "Keep the pump running.", "scalds", "hands needed in 23 min",
            "14:55  ramp to 76 °C", "15:10  vorlauf", "sparge water heats", "41 L  71.9 °C  heat on", "44 L  65.8 °C  pump on", "empty",
            "14.9 of 15 A", "0 of 15 A", "1.048", "1.046..1.050", "40.2 L", "32 IBU", "18:25", "mash", "●", "rest 2 begun at 66.0 °C",
            "space go on", "w wipe lock",
        ];
        Assert.All(wanted, part => Assert.Contains(part, text, StringComparison.Ordinal));
    }

    [Fact]
    public void Cautions_are_whole_even_on_the_fullest_small_screen()
    {
        var text = StillScreen.Of(SampleScreens.Overdue, 80, 24).ToText();
        Assert.Contains("Keep the spray bottle at hand.", text, StringComparison.Ordinal);
        Assert.Contains("do not lean over it.", text, StringComparison.Ordinal);
        Assert.Contains("rim.", text, StringComparison.Ordinal);
    }

    /// <summary>Beside a step with many dangers the time left to what runs by itself gave way; now a caution says its danger without its words.</summary>
    [Fact]
    public void What_runs_by_itself_keeps_its_row_beside_a_step_with_cautions()
    {
        var cautions = CautionWords.Of(Cautions.Scald | Cautions.MainsNearWater | Cautions.DryFire | Cautions.Steam, Notation.Metric).Select(c => Line.Of(c, Tone.Warning));
        var screen = SampleScreens.Rest with
        {
            Sentences = [.. Enumerable.Range(1, 7).Select(i => Line.Of($"Order {i} of this step."))],
            CautionLines = [.. cautions],
        };

        var text = StillScreen.Of(screen, 80, 24).ToText();

        Assert.Contains("sparge water heats", text, StringComparison.Ordinal);
        Assert.All(new[] { "Scalds", "Mains near water", "Dry fire", "Steam" }, danger => Assert.Contains(danger, text, StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void A_very_small_screen_shows_the_step_the_countdown_and_the_key()
    {
        var text = StillScreen.Of(SampleScreens.Overdue with { Notice = null }, 30, 6).ToText();
        Assert.Contains("ADD 45 g Perle NOW", text, StringComparison.Ordinal);
        Assert.Contains("+02:13", text, StringComparison.Ordinal);
        Assert.Contains("space go on", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_question_leaves_the_countdown_in_sight()
    {
        var rows = StillScreen.Of(SampleScreens.Offered, 80, 24).ToText().Split('\n');
        var plain = StillScreen.Of(SampleScreens.Rest, 80, 24).ToText().Split('\n');
        Assert.Equal(plain[..9], rows[..9]);
        Assert.Contains(rows, row => row.Contains("▸ add 1.8 L of boiling water", StringComparison.Ordinal));
    }

    /// <summary>Any size draws, and no part of the deck lies on another or outside.</summary>
    [Fact]
    public void Parts_of_the_deck_never_overlap() =>
        Gen.Select(Gen.Int[1, 220], Gen.Int[1, 70], Gen.Int[0, 2].Select(i => Decks[i]))
            .Sample((columns, rows, screen) =>
            {
                var body = new Rectangle(0, 0, columns, rows);
                var places = DeckLayout.Of(screen, new Size(columns, rows), body)
                    .Select(part => part.Where).Where(where => where is { Width: > 0, Height: > 0 }).ToList();
                return places.All(body.Contains)
                    && places.SelectMany((one, i) => places.Skip(i + 1).Select(one.IntersectsWith)).All(hit => !hit);
            });

    [Fact]
    public void Every_screen_draws_at_every_size() =>
        Gen.Select(Gen.Int[1, 220], Gen.Int[1, 70], Gen.Int[0, SampleScreens.All.Length - 1])
            .Sample(
                (columns, rows, which) =>
                {
                    var still = StillScreen.Of(SampleScreens.All[which].Screen, columns, rows);
                    return still.ToText().Split('\n').Length == rows + 1;
                },
                iter: 200);

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(9_999)]
    [InlineData(19_999)]
    public void The_chosen_row_is_in_sight(int selected)
    {
        var text = StillScreen.Of(SampleScreens.LongList with { Selected = selected }, 80, 24).ToText();
        Assert.Contains($"▸ batch {selected + 1} ", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Text_is_never_scrolled_past_its_end()
    {
        var text = StillScreen.Of(SampleScreens.Sheet with { Offset = 10_000 }, 120, 40).ToText();
        Assert.Contains("step 60:", text, StringComparison.Ordinal);
        Assert.Contains("step 40:", text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_abnormal_has_a_mark_and_not_colour_alone()
    {
        var text = StillScreen.Of(SampleScreens.Overdue, 120, 40).ToText();
        Assert.Contains("circuit A !", text, StringComparison.Ordinal);
        Assert.Contains("kettle    !!", text, StringComparison.Ordinal);
        Assert.Contains("! 1.051", text, StringComparison.Ordinal);
        Assert.Contains("! too much power", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Control_characters_of_a_name_do_not_reach_the_terminal()
    {
        var screen = SampleScreens.Rest with { Title = "a\e[2Jb\r\nc\u009bd\a" };
        var text = StillScreen.Of(screen, 80, 24).ToText();
        Assert.DoesNotContain(text.Replace("\n", "", StringComparison.Ordinal), char.IsControl);
    }
}
