using BrewDeck.Core.Recipes;
using BrewDeck.Deck.Screens;
using BrewDeck.Profiles;
using static BrewDeck.SystemTests.Sessions.AtTheKeys;

namespace BrewDeck.SystemTests.Sessions;

/// <summary>Recipes made and changed by keys only.</summary>
public sealed class RecipeMakingTests : IDisposable
{
    private readonly AtTheKeys _at = new();

    public void Dispose() => _at.Dispose();

    [Fact]
    public void A_recipe_from_nothing_is_saved_and_planned()
    {
        Recipes().Strike("n");
        Assert.Contains("Add malt", _at.Text, StringComparison.Ordinal);
        _at.Pick("name").Line(string.Concat(Enumerable.Repeat("\u007f", "New recipe".Length)) + "Pier Bitter");
        Malt("pale ale", "7 kg");
        Malt("caramel malt 120", "350 g");
        Hop("Challenger", "30 g", "60");
        Hop("Fuggle", "40 g", "whirlpool 20");
        _at.MoveTo("into the fermenter").Line("40 L");
        var before = Gives();
        _at.MoveTo("pale ale malt").Line("8 kg");
        Assert.True(Gives().Gravity > before.Gravity + 0.004, _at.Text);
        Assert.True(Gives().Ibu < before.Ibu, _at.Text);
        _at.Strike("s");
        Assert.StartsWith("Saved to ", _at.Session.Screen.Notice!.ToString(), StringComparison.Ordinal);
        _at.Strike(Space).Strike(Space);
        Assert.Equal("The plan", _at.Session.Screen.Title);
        Assert.Contains("Pier Bitter, 40.0 L on Quayside 65", _at.Text, StringComparison.Ordinal);

        var recipe = Read("pier-bitter.toml");
        Assert.Equal([("pale ale malt", 8.0), ("caramel malt 120", 0.35)], recipe.Grist.Select(g => (g.Name, g.MassKg)));
        Assert.Equal([(HopUse.Boil, 60.0), (HopUse.Whirlpool, 20.0)], recipe.Hops.Select(h => (h.Use, h.Minutes)));
    }

    [Fact]
    public void A_hop_whose_time_is_left_open_is_not_in_the_recipe()
    {
        Recipes().Strike("n");
        Malt("pale ale", "4 kg");
        _at.Pick("+ hop").Pick("Find it by name").Line("Saaz");
        _at.Strike(Enter).Line("30 g").Line("whirlpool 20 80c");
        Assert.Contains("Write only the minutes of the stand", Assert.IsType<EntryOverlay>(_at.Session.Screen.Overlay).Fault!.ToString(), StringComparison.Ordinal);
        _at.Strike(Escape);
        Assert.DoesNotContain("Saaz", _at.Text, StringComparison.Ordinal);
        Assert.Contains("No hops yet.", _at.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_hop_that_stands_longer_than_the_recipe_says_is_told_beside_its_stand()
    {
        Recipes().Strike("n");
        Malt("pale ale", "4 kg");
        Hop("Saaz", "30 g", "whirlpool");
        Assert.Equal(["whirlpool stand", "15 min", ""], Row("whirlpool stand"));
        Assert.StartsWith("stand 15 min", Row("Saaz")[2], StringComparison.Ordinal);
        Hop("Fuggle", "30 g", "stand 20");
        Assert.Equal(["whirlpool stand", "15 min", "20 min for hops"], Row("whirlpool stand"));
        _at.MoveTo("whirlpool stand").Line("25");
        Assert.Equal(["whirlpool stand", "25 min", ""], Row("whirlpool stand"));
    }

    [Fact]
    public void Salt_goes_into_the_mash_and_nutrient_into_the_fermenter()
    {
        Recipes().MoveTo("Quayside Amber").Strike("e");
        _at.Pick("+ finings").Line("10g gypsum mash");
        _at.Pick("+ finings").Line("2 g yeast nutrient fermenter");
        _at.Pick("+ finings").Line("3 each orange boil 10");
        _at.Pick("+ finings").Line("1 g coriander 5 min");
        _at.Pick("coriander").Strike(Down).Strike(Enter).Line("later");
        Assert.Contains("or mash, or fermenter", Assert.IsType<EntryOverlay>(_at.Session.Screen.Overlay).Fault!.ToString(), StringComparison.Ordinal);
        _at.Line("mash").Strike("s");

        Assert.Equal(
            [("gypsum", "g", AdditionUse.Mash, 0.0), ("yeast nutrient", "g", AdditionUse.Fermenter, 0.0), ("orange", "each", AdditionUse.Boil, 10.0), ("coriander", "g", AdditionUse.Mash, 0.0)],
            Read("quayside-amber.toml").Others.TakeLast(4).Select(o => (o.Name, o.Unit, o.Use, o.Minutes)));
    }

    [Fact]
    public void A_file_that_must_be_converted_first_is_told_on_the_list_until_it_is()
    {
        var folder = Path.Combine(_at.Folder, "recipes");
        Directory.CreateDirectory(folder);
        File.WriteAllText(Path.Combine(folder, "stout.xml"), "<RECIPES/>");
        Recipes();
        Assert.StartsWith("stout.xml is no recipe yet. ", _at.Session.Screen.Notice!.ToString(), StringComparison.Ordinal);
        Assert.EndsWith("brewdeck convert stout.xml stout.toml", _at.Session.Screen.Notice!.ToString(), StringComparison.Ordinal);
        _at.Strike(Escape);
        File.WriteAllText(Path.Combine(folder, "stout.toml"), "name = \"Stout\"");
        Recipes();
        Assert.Null(_at.Session.Screen.Notice);
    }

    [Fact]
    public void A_recipe_is_read_without_a_brewhouse_and_asks_for_one_only_to_be_brewed()
    {
        Recipes().MoveTo("Quayside Amber");
        Assert.Contains("munich malt", _at.Text, StringComparison.Ordinal);
        _at.Strike(Enter);
        Assert.Equal("Which brewhouse?", _at.Session.Screen.Title);
        _at.Pick("Quayside 65");
        Assert.Equal("Quayside Amber on Quayside 65: the day", _at.Session.Screen.Title);
    }

    [Fact]
    public void A_letter_begins_to_type_the_name_of_a_malt()
    {
        Recipes().Strike("n").Pick("+ malt or sugar").Strike("m");
        _at.Line("unich");
        Assert.Equal("munich malt", Assert.IsType<ListScreen>(_at.Session.Screen) is var list ? list.Rows[list.Selected].Cells[0] : "");
        _at.Strike(Enter).Line("999 kg");
        Assert.Contains("munich malt", _at.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Too_much_of_a_hop_is_told_in_kilograms_and_an_unnamed_recipe_asks_for_its_name()
    {
        Recipes().Strike("n");
        Malt("pale ale", "4 kg");
        Assert.Contains("No hops yet.", _at.Text, StringComparison.Ordinal);
        _at.Pick("+ hop").Pick("Find it by name").Line("Saaz");
        _at.Strike(Enter).Line("999 kg");
        Assert.Matches("999 kg is outside 0.01 g to [0-9.]+ kg", Assert.IsType<EntryOverlay>(_at.Session.Screen.Overlay).Fault!.ToString());
        _at.Strike(Escape).Strike("s");
        Assert.Equal("Name", _at.Session.Screen.Overlay!.Question);
        _at.Line("Jetty");
        Assert.StartsWith("Saved to ", _at.Session.Screen.Notice!.ToString(), StringComparison.Ordinal);
        Assert.Equal("Jetty", Read("jetty.toml").Name);
    }

    [Fact]
    public void What_is_typed_takes_the_place_of_the_name_and_an_arrow_keeps_it()
    {
        Recipes().MoveTo("Quayside Amber").Strike("c");
        _at.Pick("name").Line("Pier Bitter");
        Assert.Contains("Pier Bitter on", _at.Text, StringComparison.Ordinal);
        _at.Pick("name").Strike(Left, null).Line("X");
        Assert.Matches("Pier Bitte?Xr? on", _at.Text);
    }

    [Fact]
    public void A_changed_recipe_keeps_its_comments_and_its_old_version()
    {
        Recipes().MoveTo("Quayside Amber").Strike("e");
        _at.MoveTo("munich malt").Line("900 g");
        _at.MoveTo("caramel malt 120").Strike("d");
        _at.MoveTo("rest: conversion").Line("68");
        _at.Pick("+ rest").Line("76 10 mash-out");
        Hop("Saaz", "25 g", "5");
        _at.Strike("s");

        var text = File.ReadAllText(Path.Combine(_at.Folder, "recipes", "quayside-amber.toml"));
        Assert.Contains("amount = \"0.9 kg\"", text, StringComparison.Ordinal);
        Assert.Contains("# bread crust", text, StringComparison.Ordinal);
        Assert.Contains("# in the middle: neither thin nor sweet", text, StringComparison.Ordinal);
        Assert.Contains("# Names are those of the catalogue", text, StringComparison.Ordinal);
        Assert.DoesNotContain("caramel malt", text, StringComparison.Ordinal);
        Assert.Contains("amount = \"6.6 kg\"", text, StringComparison.Ordinal);
        var recipe = Read("quayside-amber.toml");
        Assert.Equal([68, 76], recipe.Rests.Select(r => r.TempC));
        Assert.Equal(["Northern Brewer", "East Kent Golding", "East Kent Golding", "Saaz"], recipe.Hops.Select(h => h.Name));
        Assert.Contains("caramel malt", File.ReadAllText(Path.Combine(_at.Folder, "recipes", "quayside-amber.2026-05-30.toml")), StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_left_unsaved_unasked_and_undo_takes_back()
    {
        Recipes().MoveTo("Quayside Amber").Strike("c");
        _at.MoveTo("munich malt").Strike("d");
        Assert.DoesNotContain("munich", _at.Text, StringComparison.Ordinal);
        _at.Strike(Escape);
        Assert.Equal("Leave this recipe?", _at.Session.Screen.Overlay!.Question);
        _at.Strike(Down).Strike(Enter).Strike("u");
        Assert.Contains("munich", _at.Text, StringComparison.Ordinal);
        _at.Strike(Escape);
        Assert.StartsWith("Recipes", _at.Session.Screen.Title, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("boil", "20", "would boil 60 min, but the boil lasts 20 min")]
    [InlineData("munich malt", "9 L", "is no unit of mass")]
    [InlineData("wanted gravity", "2.5", "1.048")]
    public void A_bad_entry_gets_one_clear_line(string row, string typed, string why)
    {
        Recipes().MoveTo("Quayside Amber").Strike("e");
        _at.MoveTo(row).Line(typed);

        Assert.Contains(why, Assert.IsType<EntryOverlay>(_at.Session.Screen.Overlay).Fault!.ToString(), StringComparison.Ordinal);
    }

    private AtTheKeys Recipes() => _at.Pick("Recipes");

    private void Malt(string name, string amount)
    {
        _at.Pick("+ malt or sugar").Pick("Find it by name").Line(name);
        _at.Strike(Enter).Line(amount);
    }

    private void Hop(string name, string amount, string when)
    {
        _at.Pick("+ hop").Pick("Find it by name").Line(name);
        _at.Strike(Enter).Line(amount).Line(when);
    }

    private string[] Row(string name) => [.. Assert.IsType<ListScreen>(_at.Session.Screen).Rows.First(r => r.Cells[0].StartsWith(name, StringComparison.Ordinal)).Cells];

    private (double Gravity, double Ibu) Gives()
    {
        var words = Assert.IsType<ListScreen>(_at.Session.Screen).Details[0].ToString().Split(' ', ',');
        return (double.Parse(words[3], System.Globalization.CultureInfo.InvariantCulture), double.Parse(words[5], System.Globalization.CultureInfo.InvariantCulture));
    }

    private Recipe Read(string file)
    {
        var path = Path.Combine(_at.Folder, "recipes", file);
        return RecipeFile.Read(File.ReadAllText(path), path, ProfileFolder.BesideProgram(_at.Folder).Catalogue);
    }
}
