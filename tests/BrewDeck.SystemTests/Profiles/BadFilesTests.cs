using BrewDeck.Deck;
using BrewDeck.Profiles;

namespace BrewDeck.SystemTests.Profiles;

/// <summary>One change to a good file, and the one clear line that it must give.</summary>
public sealed class BadFilesTests
{
    [Theory]
    [InlineData("name = \"Quayside 65\"", "", "b.toml:1: name is missing; write name = \"Quayside 65\"")]
    [InlineData("name = \"Quayside 65\"", "name = \"\"", "b.toml:3: name is empty; write name = \"Quayside 65\"")]
    [InlineData("name = \"Quayside 65\"", "name = 65", "b.toml:3: name is a number; write name = \"Quayside 65\"")]
    [InlineData("name = \"Quayside 65\"", "name = \"a\"\nname = \"b\"", "b.toml:4: name was given on line 3 already; keep one")]
    [InlineData("name = \"Quayside 65\"", "name = \"Quay", "b.toml:3: a text is not closed on its line; end it with \"")]
    [InlineData("name = \"Quayside 65\"", "nam = \"Quayside\"", "b.toml:3: unknown key nam; did you mean name?")]
    [InlineData("name = \"Quayside 65\"", "colour_of_the_walls = \"green\"", "b.toml:3: unknown key colour_of_the_walls; known are name, batch, vessel, circuit, pump, hose, coil, chiller, fermenter, habits, spread")]
    [InlineData("headroom = \"3 L\"              # water", "headrom = \"3 L\"  # water", "b.toml:11: unknown key vessel.headrom; did you mean headroom?")]
    [InlineData("power = \"5.5 kW\"\n  net = \"97 %\"                # immersed", "pwoer = \"5.5 kW\"\n  net = \"97 %\"  # immersed", "b.toml:18: unknown key vessel.element.pwoer; did you mean power?")]
    [InlineData("capacity = \"65 L\"             # to", "capacity = \"65 kg\"             # to", "b.toml:10: vessel.capacity: 'kg' is no unit of volume; write a volume such as 65 L or 6.5 gal")]
    [InlineData("capacity = \"65 L\"             # to", "capacity = \"9000 L\"             # to", "b.toml:10: vessel.capacity is 9000 L; it must be 1 to 5000 L")]
    [InlineData("capacity = \"65 L\"             # to", "capacity = [65]             # to", "b.toml:10: vessel.capacity is a list; write capacity = \"65 L\"")]
    [InlineData("capacity = \"65 L\"             # to", "capacity = 65 L", "b.toml:10: not TOML (Unexpected token found `L` while expecting token `newline`); write key = \"value\", quantities in quotes")]
    [InlineData("capacity = \"65 L\"             # to", "capacity = nan # to", "b.toml:10: vessel.capacity: 'NaN' does not begin with a number; write a volume such as 65 L or 6.5 gal")]
    [InlineData("capacity = \"65 L\"             # to", "capacity = 1e400 # to", "b.toml:10: vessel.capacity: 'Infinity' does not begin with a number; write a volume such as 65 L or 6.5 gal")]
    [InlineData("capacity = \"65 L\"             # to", "capacity = \"1,500 L\" # to", "b.toml:10: vessel.capacity: '1,500 L' may be read in two ways: leave thousands unseparated and mark decimals with a point; write a volume such as 65 L or 6.5 gal")]
    [InlineData("capacity = \"65 L\"             # to", "capacity = \"2 L\" # to", "b.toml:10: capacity of liquor is 2 L, not above its headroom of 3 L; give the volume to the brim")]
    [InlineData("dead_space = \"1.2 L\"", "dead_space = \"-1.2 L\"", "b.toml:12: vessel.dead_space: '-1.2 L' cannot be right; write a volume such as 65 L or 6.5 gal")]
    [InlineData("dead_space = \"1.2 L\"", "dead_space = \"64 L\"", "b.toml:12: dead_space of liquor is 64 L of 62 L to work with; it is what stays below the outlet")]
    [InlineData("roles = [\"liquor\"]", "roles = [\"likor\"]", "b.toml:9: vessel.roles is 'likor'; it must be liquor, mash, lauter, boil, whirlpool (did you mean liquor?)")]
    [InlineData("roles = [\"liquor\"]", "roles = [\"liquor\", \"boil\"]", "b.toml:47: vessels liquor and kettle both have the role boil; leave it to one")]
    [InlineData("roles = [\"boil\"]", "roles = [\"mash\"]", "b.toml:47: vessels tun and kettle both have the role mash; leave it to one")]
    [InlineData("roles = [\"boil\"]", "", "b.toml:44: vessel.roles is missing; write roles = [\"liquor\"], of liquor, mash, lauter, boil, whirlpool")]
    [InlineData("id = \"tun\"", "id = \"liquor\"", "b.toml:24: vessel.id 'liquor' is on line 7 already; give each vessel its own")]
    [InlineData("id = \"B\"", "id = \"A\"", "b.toml:71: circuit.id 'A' is on line 65 already; give each circuit its own")]
    [InlineData("circuit = \"B\"", "", "b.toml:34: vessel.element.circuit is missing; write circuit = \"A\"")]
    [InlineData("circuit = \"B\"", "circuit = \"D\"", "b.toml:38: circuit 'D' is not in this file; the circuits are A, B, C")]
    [InlineData("breaker = \"20 A\"", "breaker = \"16 A\"", "b.toml:35: power is 3500 W, but circuit B carries 3072 W for hours (240 V x 16 A x 0.8); a smaller element or a larger circuit is needed")]
    [InlineData("covered_at = \"6 L\"", "covered_at = \"70 L\"", "b.toml:37: covered_at is 70 L, more than the 62 L that tun may hold")]
    [InlineData("headspace = \"9 L\"", "headspace = \"90 L\"", "b.toml:104: fermenter.headspace leaves no room below it; it must be less than capacity")]
    [InlineData("id = \"liquor\"\n", "id = \"liquor\"\npiped_to = \"cellar\"\n", "b.toml:8: piped_to is 'cellar', which is not in this file; the vessels are liquor, tun, kettle")]
    [InlineData("id = \"tun\"\n", "id = \"tun\"\npiped_to = \"tun\"\n", "b.toml:25: the pipes go round: tun to tun; what is in there never gets on, so leave out piped_to of one")]
    [InlineData("flow = \"12 L/min\"", "flow = \"12 L/min\"\nfree_flow = \"10 L/min\"", "b.toml:87: free_flow is 10 L/min, not above flow of 12 L/min; it is what the pump gives without hoses")]
    [InlineData("flow = \"12 L/min\"", "flow = \"12 L/min\"\nfree_flow = \"12.1 L/min\"", "b.toml:86: pump liquor cannot give 12 L/min through that hose; give a wider bore, a shorter length or the flow as measured")]
    [InlineData("kind = \"counterflow\"", "kind = \"contraflow\"", "b.toml:96: chiller.kind is 'contraflow'; it must be counterflow, immersion (did you mean counterflow?)")]
    [InlineData("[chiller]", "[[chiller]]", "b.toml:95: chiller is a list of tables; begin it with [chiller]")]
    [InlineData("[chiller]", "[chiler]", "b.toml:95: unknown key chiler; did you mean chiller?")]
    [InlineData("conversion_yield = \"96 %\"", "conversion_yield = \"96\"", "b.toml:110: habits.conversion_yield: '96' cannot be right; write a share such as 75 % or 0.75")]
    [InlineData("sparge_temperature = \"76 °C\"", "sparge_temperature = \"96 °C\"", "b.toml:118: habits.sparge_temperature is 96 °C; it must be 15 to 82 °C")]
    [InlineData("sparge_temperature = \"76 °C\"", "sparge_temperature = 1979-05-27", "b.toml:118: habits.sparge_temperature is a date; write sparge_temperature = \"76 °C\"")]
    public void Brewhouse(string good, string bad, string line) =>
        Assert.Equal(line, Assert.Throws<ProfileException>(() => BrewhouseFile.Read(Changed("brewhouse.toml", good, bad), "b.toml")).Message);

    [Fact]
    public void A_circle_of_pipes_is_refused_by_name()
    {
        var text = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Profiles", "Files", "brewhouse.toml"));
        foreach (var (vessel, next) in new[] { ("liquor", "tun"), ("tun", "kettle"), ("kettle", "liquor") })
            text = text.Replace($"id = \"{vessel}\"\nname", $"id = \"{vessel}\"\npiped_to = \"{next}\"\nname", StringComparison.Ordinal);
        Assert.Equal(
            "b.toml:8: the pipes go round: liquor to tun to kettle to liquor; what is in there never gets on, so leave out piped_to of one",
            Assert.Throws<ProfileException>(() => BrewhouseFile.Read(text, "b.toml")).Message);
    }

    [Theory]
    [InlineData("batch = \"40 L\"", "batch = \"0 L\"", "r.toml:7: batch is 0 L; it must be 1 to 2000 L")]
    [InlineData("original_gravity = \"1.048\"", "original_gravity = \"12\"", "r.toml:8: original_gravity: '12' cannot be right; write a gravity such as 1.048 or 12 °P")]
    [InlineData("boil = \"60 min\"", "boil = \"30 min\"", "r.toml:36: hop 'Northern Brewer' is to boil 60 min, but the boil lasts 30 min; lengthen boil or shorten it")]
    [InlineData("amount = \"7.2 kg\"", "amount = \"lots\"", "r.toml:16: grist.amount: 'lots' does not begin with a number; write a mass such as 5.2 kg, 450 g or 11 lb 4 oz")]
    [InlineData("name = \"pale ale malt\"", "name = \"pale aal malt\"", "r.toml:15: 'pale aal malt' is not in the catalogue, so its line needs extract, moisture, colour; or did you mean pale ale malt?")]
    [InlineData("name = \"english ale yeast\"", "name = \"bread\"", "r.toml:59: 'bread' is not in the catalogue, so its line needs attenuation, pitch_rate")]
    [InlineData("use = \"boil\"\ntime = \"60 min\"", "use = \"boil\"", "r.toml:31: hop.time is missing for 'Northern Brewer'; write time = \"60 min\"")]
    [InlineData("use = \"boil\"\ntime = \"60 min\"", "use = \"boiling\"", "r.toml:35: hop.use is 'boiling'; it must be first wort, boil, whirlpool, dry hop (did you mean boil?)")]
    [InlineData("amount = \"5 g\"", "amount = \"5 stone\"", "r.toml:54: addition.amount is '5 stone'; write amount = \"5 g\", in g, mL, each")]
    [InlineData("amount = \"5 g\"", "amount = \"0 g\"", "r.toml:54: addition.amount is '0 g'; it must be above 0 and at most 100000")]
    [InlineData("temperature = \"66.5 °C\"", "temperature = \"93 °C\"", "r.toml:28: rest.temperature is 93 °C; it must be 20 to 85 °C")]
    public void Recipe(string good, string bad, string line) =>
        Assert.Equal(line, Assert.Throws<ProfileException>(() => Read(Changed("recipe.toml", good, bad))).Message);

    [Fact]
    public void A_recipe_without_grist_is_refused_by_name()
    {
        const string Bare = "name = \"x\"\nbatch = \"20 L\"\nboil = \"60 min\"\n[[rest]]\nname = \"r\"\ntemperature = \"66 °C\"\ntime = \"60 min\"\n[yeast]\nname = \"lager yeast\"\n";
        Assert.Equal("r.toml:1: grist is missing; begin each with [[grist]]", Refusal(Bare));
        Assert.Equal("r.toml:4: grist is empty; begin each with [[grist]]", Refusal(Bare.Replace("[[rest]]", "grist = []\n[[rest]]", StringComparison.Ordinal)));
        Assert.Equal(
            "r.toml:10: grist has nothing for the mash; give at least one line use = \"mash\"",
            Refusal(Bare + "[[grist]]\nname = \"cane sugar\"\namount = \"1 kg\"\n"));
    }

    [Fact]
    public void Rests_that_fall_are_refused() => Assert.Equal(
        "r.toml:32: rest 'maltose' is cooler than the one before (50 after 52 °C); list the rests as the mash rises",
        Assert.Throws<ProfileException>(() => Read(Changed("lager.toml", "temperature = \"63 °C\"", "temperature = \"50 °C\""))).Message);

    [Fact]
    public void A_catalogue_that_does_not_know_or_knows_twice_is_refused()
    {
        const string Hop = "[[hop]]\nname = \"A\"\nalpha = \"5 %\"\n";
        Assert.Equal("c.toml:5: hop 'a' is on line 1 already; give each one name", CatalogueRefusal(Hop + Hop.Replace("\"A\"", "\"B\"\nalso = [\"a\"]", StringComparison.Ordinal)));
        Assert.Equal("c.toml:1: 'A' has no alpha; the catalogue must know it", CatalogueRefusal("[[hop]]\nname = \"A\"\n"));
    }

    private static string Refusal(string text) => Assert.Throws<ProfileException>(() => Read(text)).Message;

    private static string CatalogueRefusal(string text) => Assert.Throws<ProfileException>(() => CatalogueFile.Read(text, "c.toml")).Message;

    private static BrewDeck.Core.Recipes.Recipe Read(string text) =>
        RecipeFile.Read(text, "r.toml", ProfileFolder.BesideProgram("/nowhere").Catalogue);

    private static string Changed(string file, string good, string bad)
    {
        var text = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Profiles", "Files", file));
        var at = text.IndexOf(good, StringComparison.Ordinal);
        Assert.True(at >= 0, good);
        return text[..at] + bad + text[(at + good.Length)..];
    }
}
