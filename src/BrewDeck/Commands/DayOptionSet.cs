using System.CommandLine;
using BrewDeck.Core.Planning;
using BrewDeck.Deck.Wording;
using BrewDeck.Profiles;

namespace BrewDeck.Commands;

/// <summary>The options of a day, the same for each command that draws one.</summary>
/// <param name="units">What a number without a unit means.</param>
internal sealed class DayOptionSet(Option<UnitSystem> units)
{
    private readonly Option<string> _brewhouse = new("--brewhouse") { Description = "A file, or the name of a bundled or own one.", HelpName = "FILE", DefaultValueFactory = _ => ProfileFolder.EverydayBrewhouse };
    private readonly Option<string> _recipe = new("--recipe") { Description = "A file, or the name of a bundled or own one.", HelpName = "FILE", DefaultValueFactory = _ => ProfileFolder.EverydayRecipe };
    private readonly Option<string?> _batch = new("--batch") { Description = "Cold wort into the fermenter, such as \"40 L\".", HelpName = "VOLUME" };
    private readonly Option<int?> _circuits = new("--circuits") { Description = "Circuits in use that day.", HelpName = "N" };
    private readonly Option<string?> _sparge = new("--sparge") { Description = "fly, batch or none.", HelpName = "METHOD" };
    private readonly Option<string?> _mash = new("--mash") { Description = "From rest to rest: direct, water, coil or decoction; without it as the brewhouse usually does.", HelpName = "METHOD" };
    private readonly Option<string?> _start = new("--start") { Description = "When setting up begins, such as 2026-05-30T08:30: this computer's time unless Z or +02:00 follows it.", HelpName = "ISO" };
    private readonly Option<string?> _finish = new("--finish") { Description = "When all should be clean, written in the same way.", HelpName = "ISO" };
    private readonly Option<string?> _source = new("--source-water") { Description = $"Temperature of the source water, {Span(DayBounds.SourceWaterC)} °C.", HelpName = "TEMP" };
    private readonly Option<string?> _ambient = new("--ambient") { Description = $"Temperature of the room, {Span(DayBounds.AmbientC)} °C.", HelpName = "TEMP" };
    private readonly Option<string?> _grain = new("--grain") { Description = $"Temperature of the grist, {Span(DayBounds.GrainC)} °C.", HelpName = "TEMP" };
    private readonly Option<string?> _altitude = new("--altitude") { Description = $"Height above the sea, such as \"350 m\", {Span(DayBounds.AltitudeM)} m.", HelpName = "LENGTH" };

    private readonly Option<string?> _water = new("--water") { Description = "Analysis of the water: a file, or the name of a bundled or own one.", HelpName = "FILE" };
    private readonly Option<string?> _target = new("--water-target") { Description = "What the water is to become; without it as the recipe says.", HelpName = "FILE" };
    private readonly Option<string?> _bitterness = new("--bitterness") { Description = "tinseth or rager.", HelpName = "FORMULA" };
    private readonly Option<string?> _matters = new("--matters") { Description = "What a remedy should get right first: gravity, volume or time.", HelpName = "AIM" };
    private readonly Option<string[]> _alpha = new("--alpha") { Description = "Alpha acid as measured; may be given again.", HelpName = "HOP=PERCENT" };
    private readonly Option<string[]> _instead = new("--instead") { Description = "A malt or hop on hand in place of the recipe's; may be given again.", HelpName = "NAME=OTHER" };

    public void AddTo(Command command)
    {
        foreach (var option in new Option[] { _brewhouse, _recipe, _batch, _circuits, _sparge, _mash, _start, _finish, _source, _ambient, _grain, _altitude, _bitterness, _matters, _alpha, _instead, _water, _target })
            command.Options.Add(option);
    }

    public DayOptions Of(ParseResult parsed) => new()
    {
        Units = parsed.GetValue(units),
        Brewhouse = parsed.GetValue(_brewhouse)!,
        Recipe = parsed.GetValue(_recipe)!,
        Batch = parsed.GetValue(_batch),
        Circuits = parsed.GetValue(_circuits),
        Sparge = parsed.GetValue(_sparge),
        Mash = parsed.GetValue(_mash),
        Start = parsed.GetValue(_start),
        Finish = parsed.GetValue(_finish),
        SourceWater = parsed.GetValue(_source),
        Ambient = parsed.GetValue(_ambient),
        Grain = parsed.GetValue(_grain),
        Altitude = parsed.GetValue(_altitude),
        Bitterness = parsed.GetValue(_bitterness),
        Matters = parsed.GetValue(_matters),
        Alpha = parsed.GetValue(_alpha) ?? [],
        Instead = parsed.GetValue(_instead) ?? [],
        Water = parsed.GetValue(_water),
        WaterTarget = parsed.GetValue(_target),
    };

    private static string Span((double Least, double Most) bounds) => FormattableString.Invariant($"{bounds.Least} to {bounds.Most}");
}
