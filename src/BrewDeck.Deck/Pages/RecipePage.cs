using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Recipes;
using BrewDeck.Deck.Asks;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.RecipeMaking;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>A recipe being made or changed; what its amounts give on the brewhouse moves with them.</summary>
internal sealed class RecipePage : ListPage
{
    private readonly IProfileWriter _writer;
    private readonly Brewhouse _house;
    private readonly Stack<Recipe> _before = new();
    private ProfileEntry? _entry;
    private Recipe _recipe;
    private Recipe _saved;
    private (Recipe Of, ImmutableArray<Line> Lines) _figures;

    /// <param name="entry">The file that is changed; null: a new one is written.</param>
    public RecipePage(Shell shell, IProfileWriter writer, Brewhouse house, Recipe recipe, ProfileEntry? entry)
        : base(shell)
    {
        (_writer, _house, _recipe, _saved, _entry) = (writer, house, recipe, recipe, entry);
        _figures = (recipe, RecipeFigures.Of(house, recipe, shell.Notation));
    }

    public override KeyContext Context => KeyContext.Recipe;

    protected override int Count => Rows.Length;

    private ImmutableArray<RecipeRow> Rows => RecipeRows.Of(_recipe, Shell.Notation);

    protected override void Choose(int row, DateTimeOffset now) => Change(Rows[row]);

    protected override Screen Compose(DateTimeOffset now) => new ListScreen(
        Shell.Notation.Text($"{_recipe.Name} on {_house.Name}{(_recipe == _saved ? "" : Shell.Notation.Text(", not saved"))}"),
        Corners.Of(Shell, now),
        [new Column("", 0), new Column("", 18, Right: true), new Column("", 18)],
        [.. Rows.Select(r => new Row([r.Name, r.Amount, r.More], r.Adds is not null && r.Fields.Length == 0 ? Tone.Muted : Tone.Normal))],
        Selected,
        Figures(),
        KeyMap.Hints(Context, Shell.Notation));

    protected override void Handle(Command command, KeyStroke stroke, DateTimeOffset now)
    {
        switch (command)
        {
            case Command.Change:
                Change(Rows[Selected]);
                break;
            case Command.PickRow when Rows[Selected].Fields is [RecipeField.Line line, ..]:
                Type(line, stroke.Character.ToString());
                break;
            case Command.Remove when Rows[Selected].Fields.OfType<RecipeField.Turn>().LastOrDefault() is { TakesOut: true } takeOut:
                Set(takeOut.Next(_recipe));
                break;
            case Command.Undo when _before.TryPop(out var before):
                _recipe = before;
                Select(Selected);
                break;
            case Command.Save:
                Save(now);
                break;
            case Command.GoOn when RecipeFault() is { } fault:
                Shell.Say(fault, Tone.Warning);
                break;
            case Command.GoOn:
                Shell.Push(new ChoicesPage(Shell, _house, _recipe));
                break;
            case Command.Back when _recipe != _saved:
                AskLeave(now);
                break;
            default:
                base.Handle(command, stroke, now);
                break;
        }
    }

    private void Change(RecipeRow row)
    {
        if (row is { Adds: { } adds, Fields.Length: 0 })
            Add(adds);
        else if (row.Fields is [RecipeField.Line only] && row.Adds is null)
            Type(only, only.Initial, replaces: true);
        else
            Ask(new ChoiceAsk(this, Names.Sentence(row.Name), [], [.. Options(row).Select(o => new Row([Names.Sentence(o)]))], (at, _) => Do(row, at)));
    }

    private IEnumerable<string> Options(RecipeRow row) =>
        row.Fields.Select(f => f.Label).Concat(row.Adds is null ? [] : [Shell.Notation.Text("another one of the catalogue")]);

    private void Do(RecipeRow row, int at)
    {
        if (at == row.Fields.Length)
            Add(row.Adds!.Value);
        else if (row.Fields[at] is RecipeField.Line line)
            Type(line, "");
        else if (row.Fields[at] is RecipeField.Turn turn)
            Set(turn.Next(_recipe));
    }

    private void Type(RecipeField.Line line, string typed, bool replaces = false) => Type(line, typed, _recipe, Set, replaces);

    /// <param name="from">What the line changes.</param>
    private void Type(RecipeField.Line line, string typed, Recipe from, Action<Recipe> then, bool replaces = false) => Ask(new EntryAsk(
        this, line.Question, typed, _ => Line.Of(line.Hint, Tone.Muted), (text, _) =>
        {
            if (line.Read(from, text, Shell.Notation, out var fault) is not { } changed)
                return fault;
            then(changed);
            return null;
        }, replaces));

    private void Add(RecipeAdds what)
    {
        var pick = new IngredientPicks(Shell.Ports.Profiles, Shell.Notation);
        switch (what)
        {
            case RecipeAdds.Grist:
                Shell.Push(new CataloguePage(Shell, Shell.Notation.Text("Which malt or sugar?"), pick.Grist, i => Amount(r => r with { Grist = r.Grist.Add(pick.GristAt(i)) }, r => r.Grist.Length - 1)));
                break;
            case RecipeAdds.Hop:
                Shell.Push(new CataloguePage(Shell, Shell.Notation.Text("Which hop?"), pick.Hops, i => Amount(r => r with { Hops = r.Hops.Add(pick.HopAt(i, r.BoilMin)) }, r => r.Hops.Length - 1)));
                break;
            case RecipeAdds.Yeast:
                Shell.Push(new CataloguePage(Shell, Shell.Notation.Text("Which yeast?"), pick.Yeasts, i => Set(_recipe with { Yeast = pick.YeastAt(i) })));
                break;
            case RecipeAdds.Rest:
                AddRest();
                break;
            default:
                AddOther();
                break;
        }
    }

    /// <summary>Asks for all that is typed of a fresh line, one after the other, before it counts.</summary>
    private void Amount(Func<Recipe, Recipe> with, Func<Recipe, int> place)
    {
        var fresh = with(_recipe);
        var at = place(fresh);
        var isHop = fresh.Hops.Length > _recipe.Hops.Length;
        var fields = RecipeRows.Of(fresh, Shell.Notation)[Place(fresh, isHop, at)].Fields;
        var amount = (RecipeField.Line)fields[0];
        // a hop whose time is left open would count as boiled for the whole boil
        if (isHop)
            Type(amount, "", fresh, weighed => Type((RecipeField.Line)fields[1], "", weighed, Done));
        else
            Type(amount, "", fresh, Done);

        void Done(Recipe recipe)
        {
            Set(recipe);
            Select(Place(recipe, isHop, at));
        }
    }

    private static int Place(Recipe recipe, bool isHop, int at) => RecipeRows.HeadRows + at + (isHop ? recipe.Grist.Length + 1 + recipe.Rests.Length + 1 : 0);

    private void AddRest() => Type(
        new(Shell.Notation.Text("rest"), Shell.Notation.Text("Which rest?"), Shell.Notation.Text("its temperature, minutes and name, such as 72 20 dextrins"), RestReader.Read), "");

    private void AddOther() => Type(
        new(Shell.Notation.Text("addition"), Shell.Notation.Text("What, how much and when?"), Shell.Notation.Text("such as 5 g carrageen finings 15 min, 4 g gypsum mash, 2 g yeast nutrient fermenter"), OtherReader.Read), "");

    private void Set(Recipe recipe)
    {
        _before.Push(_recipe);
        _recipe = recipe;
        Select(Selected);
    }

    private ImmutableArray<Line> Figures()
    {
        if (!ReferenceEquals(_figures.Of, _recipe))
            _figures = (_recipe, RecipeFigures.Of(_house, _recipe, Shell.Notation));
        return _figures.Lines;
    }

    private string? RecipeFault() => _recipe.MashKg <= 0 ? Shell.Notation.Text("Add malt first: there is nothing to mash.") : _recipe.Rests.IsEmpty ? Shell.Notation.Text("Add a rest first.") : null;

    private bool Save(DateTimeOffset now)
    {
        if (RecipeFault() is { } fault)
        {
            Shell.Say(fault, Tone.Warning);
            return false;
        }
        if (_entry is null && _recipe.Name == RecipeKeys.Unnamed(Shell.Notation) && Rows[0].Fields is [RecipeField.Line name, ..])
        {
            Type(name, name.Initial, _recipe, named =>
            {
                Set(named);
                Save(now);
            }, replaces: true);
            return false;
        }
        return Shell.Try(() =>
        {
            _entry = _writer.Write(_recipe, _entry, now);
            _saved = _recipe;
            Shell.ProfilesWritten++;
            Shell.Say(Shell.Notation.Text($"Saved to {_entry.Path}."));
        });
    }

    private void AskLeave(DateTimeOffset now) => Ask(new ChoiceAsk(
        this, Shell.Notation.Text("Leave this recipe?"), [Line.Of(Shell.Notation.Text("It is not saved yet."))], [new Row([Shell.Notation.Text("Save it and leave")]), new Row([Shell.Notation.Text("Stay")]), new Row([Shell.Notation.Text("Leave it as it was")])],
        (row, at) =>
        {
            if (row == 2 || (row == 0 && Save(at)))
                Shell.Pop();
        }));
}
