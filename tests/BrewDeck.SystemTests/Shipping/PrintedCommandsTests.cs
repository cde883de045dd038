using BrewDeck.Commands;
using BrewDeck.SystemTests.Logbook;
using BrewDeck.SystemTests.Reports;

namespace BrewDeck.SystemTests.Shipping;

/// <summary>What the commands without a screen print, and what they refuse.</summary>
[Collection(nameof(RehearsedLogbook))]
public sealed class PrintedCommandsTests(RehearsedLogbook logbook)
{
    [Theory]
    [InlineData("--grain: 300 °C cannot be right; write -10 °C to 45 °C", "plan", "--grain", "300C")]
    [InlineData("--ambient: 300 °C cannot be right; write -10 °C to 45 °C", "plan", "--ambient", "300")]
    [InlineData("--source-water: 120 °C cannot be right; write 0 °C to 60 °C", "plan", "--source-water", "120")]
    [InlineData("--source-water: 150 °F cannot be right; write 32 °F to 140 °F", "plan", "--source-water", "150", "--units", "us")]
    [InlineData("--altitude: 5500 m cannot be right; write -400 m to 5000 m", "kits", "--altitude", "5500 m")]
    [InlineData("--ambient: '60 --seed 5' cannot be read after 60; write -10 °C to 45 °C", "plan", "--ambient", "60 --seed 5")]
    [InlineData("--altitude: '9000m' cannot be right; write -400 m to 5000 m", "plan", "--altitude", "9000m")]
    [InlineData("--batch: 0.0 L cannot be right; write 1.0 L to 2000.0 L", "plan", "--batch", "0L")]
    [InlineData("--alpha: '500' cannot be right; write percent from 0 to 25, such as 8.2%", "plan", "--alpha", "Northern Brewer=500")]
    [InlineData("--final: 1.052 is above 1.048 (original gravity); write that or less", "reckon", "alcohol", "--original", "1.048", "--final", "1.052")]
    [InlineData("--target: 1.060 is above 1.050 (gravity); write that or less", "reckon", "dilution", "--volume", "40", "--gravity", "1.050", "--target", "1.060")]
    [InlineData("--target: 66.5 °F is outside 86 °F to 176 °F", "reckon", "strike", "--units", "us", "--grain", "16", "--water", "6", "--target", "66.5")]
    [InlineData("--language: 'xx' is not known; write en or de", "brew", "--language", "xx", "--plain")]
    public void What_cannot_be_believed_is_one_line(string line, params string[] args)
    {
        Assert.Equal((ExitCode.Usage, "", $"brewdeck: {line}\n"), logbook.Run(args));
    }

    [Fact]
    public void Circuits_that_are_not_there_are_told_with_how_many_there_are() =>
        Assert.Equal("brewdeck: Circuits in use: 0, the brewhouse has 3. Use 1 to 3 circuits.\n", logbook.Run("plan", "--circuits", "0").Errors);

    [Fact]
    public void A_file_that_cannot_be_written_is_told_in_words_for_people()
    {
        using var folder = new TempFolder();
        Assert.Equal($"brewdeck: {folder.At("none/x.html")}: cannot be written: there is no folder {folder.At("none")}; make it, or give another file\n", logbook.Run("log", "report", "1", "--out", folder.At("none/x.html")).Errors);
        Assert.Equal($"brewdeck: {folder.Path}: cannot be written: it is a folder; give a file in it\n", logbook.Run("plan", "--sheet", folder.Path).Errors);
    }

    [Fact]
    public void Us_units_go_in_and_come_out()
    {
        var plan = logbook.Run("plan", "--units", "us", "--batch", "10", "--source-water", "50").Output;
        Assert.Contains("into the fermenter        10.00 gal", plan, StringComparison.Ordinal);
        Assert.DoesNotContain(" L,", plan, StringComparison.Ordinal);
        Assert.DoesNotContain("°C", plan, StringComparison.Ordinal);

        var scaled = logbook.Run("scale", "--units", "us", "--to", "quayside-35", "--batch", "4").Output;
        Assert.Contains("4.00 gal", scaled, StringComparison.Ordinal);
        Assert.Contains("1.44 qt/lb", scaled, StringComparison.Ordinal);

        var sum = logbook.Run("reckon", "strike", "--units", "us", "--grain", "16", "--water", "6", "--target", "152").Output;
        Assert.Contains("°F", sum, StringComparison.Ordinal);
        Assert.Contains("1.50 qt/lb", sum, StringComparison.Ordinal);
    }

    [Fact]
    public void A_day_that_would_have_begun_already_is_drawn_with_a_word_about_it()
    {
        var (code, output, errors) = logbook.Run("plan", "--finish", "2020-05-30T17:00Z");
        Assert.Equal(ExitCode.Done, code);
        Assert.Contains("all clean                 2020-05-30 ", output, StringComparison.Ordinal);
        Assert.Matches("^brewdeck: this day begins at 2020-05-30 [0-9:]+, which is past; .*this computer's\n$", errors);
        Assert.Equal("", logbook.Run("plan", "--finish", "2090-05-30T17:00Z").Errors);
    }

    [Fact]
    public void No_option_has_a_default_that_help_would_show_as_a_word_nobody_types()
    {
        var root = CommandTable.Root(TimeProvider.System, TextWriter.Null, TextWriter.Null);
        var words = new[] { root }.Concat(root.Subcommands.OfType<System.CommandLine.Command>()).SelectMany(c => c.Options)
            .Where(o => o.HasDefaultValue && o.ValueType.IsEnum).Select(o => o.Name);
        Assert.Empty(words);
    }

    [Fact]
    public void Circuits_that_are_shared_are_said_to_carry_one_thing_at_a_time()
    {
        Assert.Contains("(alone on it: with another one the breaker trips)", logbook.Run("plan", "--circuits", "1").Output, StringComparison.Ordinal);
        Assert.DoesNotContain("(alone on it", logbook.Run("plan").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_short_heat_up_to_the_boil_is_explained_and_margins_are_as_coarse_as_what_they_are_of()
    {
        foreach (var plan in new[] { logbook.Run("plan").Output, logbook.Run("plan", "--markdown").Output })
        {
            Assert.Matches(@"From \d\d(\.\d)? °C: the kettle heats while the wort runs off\.", plan);
            Assert.Matches(@"Load on the false bottom by suction \d+\.\d kg, at most \d+\.\d kg: \d+\.\d kg to spare", plan);
        }
        Assert.Matches(@"bitterness \d+ IBU \(plan 30 IBU\)", logbook.Run("rehearse", "--headless", "--seed", "2").Output);
    }

    [Fact]
    public void A_strike_temperature_without_a_tun_says_so()
    {
        string[] given = ["reckon", "strike", "--grain", "7.6", "--water", "23", "--target", "66.5"];
        Assert.Matches("tun +not counted: give its heat capacity, such as --tun \"6.5 kJ/K\"; a plan counts it", logbook.Run(given).Output);
        Assert.DoesNotContain("not counted: give", logbook.Run([.. given, "--tun", "6.5 kJ/K"]).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_words_of_the_deck_are_taken_on_the_command_line()
    {
        var (code, output, _) = logbook.Run("reckon", "hydrometer", "--reading", "1.046", "--temperature-of-the-sample", "40");
        Assert.Equal(ExitCode.Done, code);
        Assert.Equal(logbook.Run("reckon", "hydrometer", "--reading", "1.046", "--sample", "40").Output, output);
    }

    [Fact]
    public void A_list_without_a_batch_says_where_they_are()
    {
        Assert.Equal("No batch here but 1 rehearsed batch: --rehearsed shows it.\n", logbook.Run("log", "list").Output);
        Assert.Equal("No batch here but 1 rehearsed batch: --rehearsed shows it.\n", logbook.Run("log", "trends").Output);
        Assert.Equal("No batch with \"stout\" here.\n", logbook.Run("log", "list", "--rehearsed", "--search", "stout").Output);
        Assert.Contains("1 rehearsed batch of it not counted: --rehearsed takes it in", logbook.Run("lessons").Output, StringComparison.Ordinal);
        using var empty = new TempFolder();
        Assert.Equal("No batch here.\n", RehearsedLogbook.RunOn(empty.At("logbook"), "log", "list").Output);
    }

    [Fact]
    public void Trends_name_their_figures_for_people_and_keep_their_keys_in_a_file()
    {
        var text = logbook.Run("log", "trends", "--rehearsed").Output;
        Assert.Contains("Brewhouse efficiency, %", text, StringComparison.Ordinal);
        Assert.DoesNotContain('_', text);
        Assert.Contains(",efficiency_percent,", logbook.Run("log", "trends", "--rehearsed", "--csv").Output, StringComparison.Ordinal);
    }

    /// <summary>What each refusal offers was brewable alone, but thicker and thinner, or five sizes of batch, do not go together.</summary>
    [Fact]
    public void A_recipe_that_cannot_be_brewed_so_is_not_shown_and_its_mends_agree()
    {
        var (code, output, errors) = logbook.Run("scale", "--to", "quayside-35", "--batch", "60L");
        Assert.Equal((ExitCode.Refused, ""), (code, output));
        Assert.StartsWith("brewdeck: Quayside Amber cannot be brewed like this on Quayside 35:\n", errors, StringComparison.Ordinal);
        Assert.DoesNotContain("Mash thinner", errors, StringComparison.Ordinal);
        Assert.DoesNotContain("Mash thicker", errors, StringComparison.Ordinal);
        var last = errors.TrimEnd().Split('\n')[^1];
        var litres = System.Text.RegularExpressions.Regex.Match(last, @"^brewdeck: For all \d: Brew a smaller batch: ([\d.]+ L) into the fermenter\.$");
        Assert.True(litres.Success, last);
        Assert.Equal(ExitCode.Done, logbook.Run("scale", "--to", "quayside-35", "--batch", litres.Groups[1].Value).Code);
    }

    [Fact]
    public void No_command_names_a_type_or_an_example_as_if_it_were_usual()
    {
        foreach (var (path, command) in Commands.Shipping.CommandTree.Of(CommandTable.Root(TimeProvider.System, TextWriter.Null, TextWriter.Null)))
            Assert.All(command.Options.Where(o => !o.Hidden && o.ValueType.IsEnum), o => Assert.False(o.HelpName is null, $"{path} {o.Name}"));
    }
}
