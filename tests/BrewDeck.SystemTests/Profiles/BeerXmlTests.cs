using System.Text;
using BrewDeck.Core.Recipes;
using BrewDeck.Deck;
using BrewDeck.Profiles;

namespace BrewDeck.SystemTests.Profiles;

public sealed class BeerXmlTests
{
    private static readonly string Document = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Profiles", "Files", "recipe.xml"));

    [Fact]
    public void A_recipe_is_carried_over()
    {
        var recipe = Assert.Single(BeerXmlReader.Read(Document).Recipes);
        Assert.Equal(("Harbour Wall Bitter & Friends", "Quayside, Second hand", "bitter"), (recipe.Name, recipe.Author, recipe.Style));
        Assert.Equal((23, 75, 1.046), (recipe.BatchL, recipe.BoilMin, recipe.OriginalGravitySg));
        Assert.Equal(new GristLine("Pale malt", 4.2, 0.805, 0.04, 6.5, GristUse.Mash), recipe.Grist[0] with { ColourEbc = 6.5 });
        Assert.Equal(6.5035, recipe.Grist[0].ColourEbc, 1e-4);
        Assert.Equal(new GristLine("Cane sugar", 0.3, 1, 0.01, 0, GristUse.Kettle), recipe.Grist[1]);
        Assert.Equal(7.874, recipe.Grist[2].ColourEbc, 1e-3);
        Assert.Equal([new("Saccharification", 66, 60), new MashRest("Mash-out", 76, 10)], recipe.Rests);
        Assert.Equal(
        [
            new("Fuggle", 30, 0.045, HopForm.Cone, HopUse.FirstWort, 75),
            new("Target", 25, 0.11, HopForm.Pellet, HopUse.Boil, 60),
            new("Fuggle", 20, 0.045, HopForm.Cone, HopUse.Whirlpool, 15),
            new HopAddition("Fuggle", 40, 0.045, HopForm.Cone, HopUse.DryHop, 4320),
        ], recipe.Hops);
        Assert.Equal(
        [
            new("Carrageen", 5, "g", AdditionUse.Boil, 10),
            new("Lactic acid", 4, "mL", AdditionUse.Mash, 0),
            new OtherAddition("Oak", 20, "g", AdditionUse.Fermenter, 10080),
        ], recipe.Others);
        Assert.Equal(new Yeast("House ale", 0.74, 19, 0.75), recipe.Yeast);
    }

    [Fact]
    public void A_hop_without_its_form_is_told_to_be_pellets()
    {
        var at = Document.IndexOf("<FORM>", StringComparison.Ordinal);
        var without = Document.Remove(at, Document.IndexOf("</FORM>", at, StringComparison.Ordinal) + "</FORM>".Length - at);
        var told = BeerXmlReader.Read(without).Notes.Where(n => n.Contains("says no FORM", StringComparison.Ordinal)).ToList();
        Assert.Equal(1 + BeerXmlReader.Read(Document).Notes.Count(n => n.Contains("says no FORM", StringComparison.Ordinal)), told.Count);
    }

    [Fact]
    public void What_was_not_carried_over_is_told_line_by_line() => Assert.Equal(
    [
        "/RECIPES/RECIPE/HOPS/HOP[5]: 'Hop for the mash' not carried over: no hops go into the mash here",
        "/RECIPES/RECIPE/STYLE/CATEGORY: 'Own' not carried over",
        "/RECIPES/RECIPE/BOIL_SIZE: '28' not carried over: it follows from the brewhouse",
        "/RECIPES/RECIPE/EFFICIENCY: '72' not carried over: it follows from the brewhouse",
        "/RECIPES/RECIPE/FERMENTABLES/FERMENTABLE[1]/ORIGIN: 'UK' not carried over",
        "/RECIPES/RECIPE/MISCS/MISC[2]/TIME: '60' not carried over",
        "/RECIPES/RECIPE/YEASTS/YEAST[1]/AMOUNT: '0.1' not carried over",
        "/RECIPES/RECIPE/YEASTS/YEAST[2]: NAME, TYPE not carried over",
        "/RECIPES/RECIPE/MASH/NAME: 'Two steps' not carried over",
        "/RECIPES/RECIPE/MASH/GRAIN_TEMP: '18' not carried over: it is chosen on the day",
        "/RECIPES/RECIPE/MASH/MASH_STEPS/MASH_STEP[1]/INFUSE_AMOUNT: '14' not carried over: it follows from the brewhouse",
        "/RECIPES/RECIPE/ODD: @attribute, text() not carried over",
    ], BeerXmlReader.Read(Document).Notes);

    [Fact]
    public void The_declared_encoding_counts()
    {
        var latin = Document.Replace("UTF-8", "ISO-8859-1", StringComparison.Ordinal).Replace("Saccharification", "Maischeführung", StringComparison.Ordinal);
        var read = BeerXmlReader.Read(new MemoryStream(Encoding.Latin1.GetBytes(latin)));
        Assert.Equal("Maischeführung", read.Recipes[0].Rests[0].Name);
    }

    [Fact]
    public void Without_a_gravity_the_efficiency_gives_it()
    {
        var converted = BeerXmlReader.Read(Document.Replace("<OG>1.046 SG</OG>", "", StringComparison.Ordinal));
        // 4.7 kg of malt and sugar: (4.2 x 0.96 x 0.805 + 0.2 x 0.96 x 0.75) x 0.72 + 0.297 kg in 23 L is 11.4 °P
        Assert.Equal(1.0459, Assert.Single(converted.Recipes).OriginalGravitySg!.Value, 0.0002);
        Assert.Contains(converted.Notes, n => n.StartsWith("/RECIPES/RECIPE/EFFICIENCY: carried over", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("<BATCH_SIZE>23</BATCH_SIZE>", "", "d.xml:3: /RECIPES/RECIPE has no BATCH_SIZE; BeerXML requires it")]
    [InlineData("<BATCH_SIZE>23</BATCH_SIZE>", "<BATCH_SIZE>lots</BATCH_SIZE>", "d.xml:10: /RECIPES/RECIPE/BATCH_SIZE is 'lots'; it must be a number")]
    [InlineData("<BATCH_SIZE>23</BATCH_SIZE>", "<BATCH_SIZE>-23</BATCH_SIZE>", "d.xml:10: /RECIPES/RECIPE/BATCH_SIZE is '-23' L; it must be 1 to 2000 L")]
    [InlineData("<BOIL_TIME>75</BOIL_TIME>", "<BOIL_TIME>7500</BOIL_TIME>", "d.xml:12: /RECIPES/RECIPE/BOIL_TIME is '7500' min; it must be 1 to 480 min")]
    [InlineData("<OG>1.046 SG</OG>", "<OG>1.205 SG</OG>", "d.xml:14: /RECIPES/RECIPE/OG is '1.205 SG'; it must be 1.005 to 1.2 SG")]
    [InlineData("<AMOUNT>0.025</AMOUNT>", "<AMOUNT>45</AMOUNT>", "d.xml:19: /RECIPES/RECIPE/HOPS/HOP[2]/AMOUNT is '45' kg in a batch of 23 L; it must be at most 2.3 kg")]
    [InlineData("<ALPHA>11</ALPHA>", "<ALPHA>450</ALPHA>", "d.xml:19: /RECIPES/RECIPE/HOPS/HOP[2]/ALPHA is '450' %; it must be 0 to 30 %")]
    [InlineData("<AMOUNT>4.2</AMOUNT>", "<AMOUNT>-3.2</AMOUNT>", "d.xml:28: /RECIPES/RECIPE/FERMENTABLES/FERMENTABLE[1]/AMOUNT is '-3.2' kg; it must be 0.001 to 1000 kg")]
    [InlineData("<AMOUNT>4.2</AMOUNT>", "<AMOUNT>420</AMOUNT>", "d.xml:28: /RECIPES/RECIPE/FERMENTABLES/FERMENTABLE[1]/AMOUNT is '420' kg in a batch of 23 L; it must be at most 46 kg")]
    [InlineData("<YIELD>80.5</YIELD>", "<YIELD>805</YIELD>", "d.xml:28: /RECIPES/RECIPE/FERMENTABLES/FERMENTABLE[1]/YIELD is '805' %; it must be 0 to 100 %")]
    [InlineData("<AMOUNT>0.005</AMOUNT>", "<AMOUNT>-0.005</AMOUNT>", "d.xml:35: /RECIPES/RECIPE/MISCS/MISC[1]/AMOUNT is '-0.005' kg; it must be above 0 and at most 100000 g, mL, each")]
    [InlineData("<STEP_TEMP>66</STEP_TEMP>", "<STEP_TEMP>152</STEP_TEMP>", "d.xml:44: /RECIPES/RECIPE/MASH/MASH_STEPS/MASH_STEP[1]/STEP_TEMP is '152' °C; it must be 20 to 85 °C")]
    [InlineData("<ATTENUATION>74</ATTENUATION>", "<ATTENUATION>0.74</ATTENUATION>", "d.xml:40: /RECIPES/RECIPE/YEASTS/YEAST[1]/ATTENUATION is '0.74' %; it must be 10 to 100 %")]
    [InlineData("<USE>Aroma</USE>", "<USE>Sniff</USE>", "d.xml:22: /RECIPES/RECIPE/HOPS/HOP[3]/USE is 'Sniff'; it must be one of Boil, Dry Hop, Mash, First Wort, Aroma")]
    [InlineData("</RECIPES>", "", "d.xml:51: is not XML (Unexpected end of file has occurred. The following elements …)")]
    [InlineData("<RECIPES>", "<!DOCTYPE r [<!ENTITY a \"b\">]><RECIPES>", "d.xml:1: declares a document type; BeerXML has none, remove it")]
    public void Bad_documents_give_one_clear_line(string good, string bad, string line)
    {
        Assert.Contains(good, Document, StringComparison.Ordinal);
        Assert.Equal(line, Refusal(Document.Replace(good, bad, StringComparison.Ordinal)));
    }

    [Fact]
    public void A_document_of_something_else_is_refused() =>
        Assert.Equal("d.xml:1: no recipe in it; a document with a list of recipes is wanted", Refusal("<HOPS><HOP><NAME>x</NAME></HOP></HOPS>"));

    private static string Refusal(string xml) => Assert.Throws<ProfileException>(() => BeerXmlReader.Read(xml, "d.xml")).Message;
}
