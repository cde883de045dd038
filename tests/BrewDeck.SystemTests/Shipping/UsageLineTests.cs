using System.CommandLine;
using BrewDeck.Commands;

namespace BrewDeck.SystemTests.Shipping;

/// <summary>A mistake on the command line is one line: where, what, what would be right, in no words of the machine.</summary>
public sealed class UsageLineTests
{
    private static readonly RootCommand Root = CommandTable.Root(TimeProvider.System, TextWriter.Null, TextWriter.Null);

    [Theory]
    [InlineData("plann", "there is no command 'plann', did you mean plan?; \"brewdeck --help\" lists them")]
    [InlineData("reckon strik", "reckon: there is no sum 'strik', did you mean strike?; \"brewdeck reckon --help\" lists them")]
    [InlineData("log sho 1", "log: there is no \"log\" command 'sho', did you mean show?; \"brewdeck log --help\" lists them")]
    [InlineData("reckon hydrometer --readin 1.046 --sample 40", "reckon hydrometer: there is no option '--readin', did you mean --reading?; \"brewdeck reckon hydrometer --help\" lists them")]
    [InlineData("reckon boiling-point --height 1000m", "reckon boiling-point: there is no option '--height'; it takes --altitude, --gravity, --json; \"brewdeck reckon boiling-point --help\" lists them")]
    [InlineData("plan --language de", "plan: there is no option '--language'; \"brewdeck plan --help\" lists them")]
    [InlineData("log show x", "log show: 'x' is no batch; write a whole number such as 3")]
    [InlineData("log show", "log show: the batch is missing; write \"brewdeck log show BATCH\"")]
    [InlineData("log show 1 2", "log show: '2' is one word too many; \"brewdeck log show --help\" says what it takes")]
    [InlineData("rehearse --seed 1.5", "--seed: '1.5' cannot be used; write a whole number such as 3")]
    [InlineData("rehearse --speed fast", "--speed: 'fast' cannot be used; write a number such as 1.5")]
    [InlineData("plan --units uss", "--units: 'uss' is not known, did you mean us?; write metric or us")]
    [InlineData("log list --format cvs", "--format: 'cvs' is not known, did you mean csv?; write text, json or csv")]
    [InlineData("plan --batch", "--batch: its value is missing; write VOLUME")]
    [InlineData("scale", "scale: --to is missing; write --to FILE")]
    [InlineData("reckon", "reckon: say which; \"brewdeck reckon --help\" lists them")]
    public void Each_mistake_has_its_line(string typed, string said) => Assert.Equal(said, UsageLine.Of(Root.Parse(typed)));

    [Theory]
    [InlineData("plan --batch 40L --units us")]
    [InlineData("log list --format JSON --rehearsed")]
    [InlineData("brew --language de --theme light")]
    public void What_can_be_used_has_none(string typed) => Assert.Null(UsageLine.Of(Root.Parse(typed)));

    /// <summary>Whatever is put in the place of a word: one line, no name of a type, nothing that a terminal obeys.</summary>
    [Fact]
    public void Nonsense_anywhere_is_one_line()
    {
        string[] lines = ["plan --circuits N", "log show N", "N", "rehearse --seed N --count N", "--N", "reckon N", "reckon strike --N 3", "debrief N", "plan N N N", "lessons --json N"];
        foreach (var typed in lines)
        {
            var said = UsageLine.Of(Root.Parse(typed.Replace("N", "be\u001b[31mer", StringComparison.Ordinal).Split(' ')))!;
            Assert.DoesNotContain(said, char.IsControl);
            Assert.DoesNotContain("System.", said, StringComparison.Ordinal);
            Assert.DoesNotContain("BrewDeck.", said, StringComparison.Ordinal);
        }
    }
}
