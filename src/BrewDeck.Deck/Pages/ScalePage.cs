using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Asks;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>A recipe moved to another brewhouse: what is to be kept, and both side by side; saved as a recipe of its own.</summary>
internal sealed class ScalePage(Shell shell, IProfileWriter writer, Brewhouse from, Recipe recipe, ImmutableArray<Brewhouse> others) : ListPage(shell)
{
    private const int To = 0, Litres = 1, FirstKept = 2;
    private const double LeastL = 1, MostL = 2000;

    private int _to;
    private double? _batchL;
    private KeptFigures _keep = KeptFigures.All;
    private (Scaling? Scaling, bool Known) _scaled;

    public override KeyContext Context => KeyContext.Scaling;

    protected override int Count => FirstKept + ScalingWords.Choices.Length;

    /// <summary>Reads the other brewhouses; one whose file cannot be used is left out.</summary>
    public static void Enter(Shell shell, IProfileWriter writer, Brewhouse from, Recipe recipe) => shell.Try(() =>
    {
        var others = shell.Ports.Profiles.Brewhouses().Select(e => Readable(shell, e)).OfType<Brewhouse>().Where(h => h.Name != from.Name).ToImmutableArray();
        if (others.IsEmpty)
            shell.Say(shell.Notation.Text($"There is no brewhouse besides {from.Name}: make one first."), Tone.Warning);
        else
            shell.Push(new ScalePage(shell, writer, from, recipe, others));
    });

    protected override void Choose(int row, DateTimeOffset now) => Change(row, "");

    protected override void Handle(Command command, KeyStroke stroke, DateTimeOffset now)
    {
        switch (command)
        {
            case Command.Change:
                Change(Selected, "");
                break;
            case Command.PickRow when Selected == Litres:
                Change(Selected, stroke.Character.ToString());
                break;
            case Command.GoOn when Scaled() is { } scaling:
                Shell.Push(new ScaledRecipePage(Shell, scaling));
                break;
            case Command.Save:
                Save(now);
                break;
            default:
                base.Handle(command, stroke, now);
                break;
        }
    }

    protected override Screen Compose(DateTimeOffset now) => new ListScreen(
        Shell.Notation.Text($"Rescale {recipe.Name}"),
        Shell.Notation.Clock(now.ToUnixTimeMilliseconds()),
        [new Column("", 0), new Column("", 42, Right: true)],
        [.. Rows()],
        Selected,
        Details(),
        KeyMap.Hints(Context, Shell.Notation));

    private IEnumerable<Row> Rows() =>
    [
        new([Shell.Notation.Text("To"), others[_to].Name]),
        new([Shell.Notation.Text("Into the fermenter"), Scaled() is { } s ? Shell.Notation.Volume(s.New.Recipe.BatchL) : "?"]),
        .. ScalingWords.Choices.Select(c => new Row([Shell.Notation.Text($"Keep the {ScalingWords.Name(c, Shell.Notation)}"), _keep.HasFlag(c) ? Shell.Notation.Text("yes") : Shell.Notation.Text("no")])),
    ];

    private void Change(int row, string typed)
    {
        if (row == To)
            (_to, _batchL) = ((_to + 1) % others.Length, null);
        else if (row == Litres)
            Ask(new EntryAsk(this, Shell.Notation.Text("Into the fermenter?"), typed, _ => Line.Of(Shell.Notation.Text("cold wort on the new brewhouse, such as 20 L"), Tone.Muted), (text, _) => Take(text)));
        else
            _keep ^= ScalingWords.Choices[row - FirstKept];
        _scaled = default;
    }

    private string? Take(string text)
    {
        if (!Shell.Typed.TryRead(ReadingKind.Volume, text, out var litres, out var reason))
            return reason;
        if (litres is < LeastL or > MostL)
            return Shell.Notation.Text($"{Shell.Notation.Volume(litres)} is outside {Shell.Notation.Volume(LeastL)} to {Shell.Notation.Volume(MostL)}.");
        (_batchL, _scaled) = (litres, default);
        return null;
    }

    private Scaling? Scaled()
    {
        if (!_scaled.Known)
            _scaled = (RecipeScaling.Of(from, others[_to], recipe, _keep, new DayChoices(), _batchL), true);
        return _scaled.Scaling;
    }

    private ImmutableArray<Line> Details() => Scaled() is { } scaling
        ? ScalingWords.Lines(scaling, Shell.Notation)
        : [Line.Of(Shell.Notation.Text($"{from.Name} or {others[_to].Name} cannot mash this: it cannot raise the mash from rest to rest."), Tone.Warning)];

    private void Save(DateTimeOffset now)
    {
        if (Scaled() is not { } scaling)
            Shell.Say(Shell.Notation.Text("There is nothing to save: choose another brewhouse."), Tone.Warning);
        else if (!scaling.New.Failed.IsEmpty)
            Shell.Say(Shell.Notation.Text("This cannot be brewed there, so it is not saved: take another batch."), Tone.Warning);
        else
        {
            Shell.Try(() =>
            {
                var entry = writer.Write(scaling.Written with { Name = Shell.Notation.Text($"{recipe.Name} on {scaling.New.House.Name}") }, null, now);
                Shell.ProfilesWritten++;
                Shell.Say(Shell.Notation.Text($"Saved to {entry.Path}."));
            });
        }
    }

    private static Brewhouse? Readable(Shell shell, ProfileEntry entry)
    {
        try
        {
            return shell.Ports.Profiles.Brewhouse(entry);
        }
        catch (ProfileException)
        {
            return null;
        }
    }
}
