using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Deck.Asks;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>What is decided or measured for this one day; the plan is drawn anew with each change.</summary>
internal sealed class ChoicesPage : ListPage
{
    private readonly Brewhouse _brewhouse;
    private readonly Recipe _recipe;
    private readonly ImmutableArray<DayRow> _rows;
    private DayChoices _choices;
    private PlanResult? _drawn;

    public ChoicesPage(Shell shell, Brewhouse brewhouse, Recipe recipe)
        : base(shell)
    {
        (_brewhouse, _recipe, _choices) = (brewhouse, recipe, shell.ChoicesFor(brewhouse, recipe));
        if (_choices == Place(_choices) && _choices != new DayChoices())
            shell.Say(shell.Notation.Text("Water, room, grain and height are as last given for this brewhouse."));
        else if (_choices != new DayChoices())
            shell.Say(shell.Notation.Text("The day's choices are as you left them."));
        _rows =
        [
            .. DayRows.For(brewhouse, recipe, shell.Notation, shell.Typed, shell.Ports.Profiles),
            .. WaterRows.For(shell, recipe),
        ];
    }

    public override KeyContext Context => KeyContext.Choices;

    /// <summary>What of the choices is the brewhouse's.</summary>
    private static DayChoices Place(DayChoices c) => new() { SourceWaterC = c.SourceWaterC, AmbientC = c.AmbientC, GrainC = c.GrainC, AltitudeM = c.AltitudeM };

    protected override int Count => _rows.Length;

    protected override void Choose(int row, DateTimeOffset now) => Change(row, "");

    protected override void Handle(Command command, KeyStroke stroke, DateTimeOffset now)
    {
        switch (command)
        {
            case Command.Change:
                Change(Selected, "");
                break;
            case Command.PickRow:
                Change(Selected, stroke.Character.ToString());
                break;
            case Command.GoOn:
                SeePlan();
                break;
            default:
                base.Handle(command, stroke, now);
                break;
        }
    }

    protected override Screen Compose(DateTimeOffset now) => new ListScreen(
        Shell.Notation.Text($"{_recipe.Name} on {_brewhouse.Name}: the day"),
        Shell.Notation.Clock(now.ToUnixTimeMilliseconds()),
        [new Column(Shell.Notation.Text("choice"), 0), new Column(Shell.Notation.Text("today"), 24, Right: true)],
        [.. _rows.Select(r => new Row([r is DayRow.GoOn ? Ahead : r.Label, r.Show(_choices)]))],
        Selected,
        Preview(now),
        Drawn() is PlanResult.Refused ? KeyMap.Hints(Context, Shell.Notation, Command.GoOn, Shell.Notation.Text("see what is wrong")) : KeyMap.Hints(Context, Shell.Notation));

    /// <summary>What the first row leads to: there is no plan of what cannot be brewed.</summary>
    private string Ahead => Drawn() is PlanResult.Refused ? Shell.Notation.Text("See what is wrong") : Shell.Notation.Text("See the plan");

    private void SeePlan() => Shell.Push(new PlanPage(Shell, _brewhouse, _recipe, _choices, Set));

    private void Change(int row, string typed)
    {
        switch (_rows[row])
        {
            case DayRow.GoOn when typed.Length == 0:
                SeePlan();
                break;
            case DayRow.Turns turns when typed.Length == 0:
                Set(turns.Next(_choices));
                break;
            case DayRow.Turns turns when turns.Digit(_choices, typed[0] - '0') is { } chosen:
                Set(chosen);
                break;
            case DayRow.Turns:
                Shell.Say(Shell.Notation.Text("That digit chooses nothing here; enter turns to the next value."));
                break;
            case DayRow.Opens opens:
                opens.Open(_choices, Set);
                break;
            case DayRow.Typed line:
                Ask(new EntryAsk(this, line.Label + "?", typed, _ => Line.Of(line.Hint, Tone.Muted), (text, at) => Take(line, text, at)));
                break;
        }
    }

    private string? Take(DayRow.Typed line, string text, DateTimeOffset now)
    {
        if (line.Read(_choices, text, now, out var reason) is not { } changed)
            return reason;
        if (changed.Finish is { } finish && changed.Finish != _choices.Finish && TooEarly(Planner.Draw(_brewhouse, _recipe, changed), finish, now) is { } late)
            return late;
        Set(changed);
        return null;
    }

    private void Set(DayChoices choices)
    {
        (_choices, _drawn) = (choices, null);
        Shell.KeepChoices(_brewhouse, _recipe, choices);
    }

    /// <summary>Why a finish cannot be met any more; null: it can, or nothing is known of it.</summary>
    private string? TooEarly(PlanResult drawn, DateTimeOffset finish, DateTimeOffset now) =>
        drawn is PlanResult.Drawn { Plan.Totals.DayS: var dayS } && finish.AddSeconds(-dayS) < now
            ? Shell.Notation.Text($"The day takes {Durations.Words(dayS, Shell.Notation)}: begun now it ends at {Shell.Notation.Date(now.AddSeconds(dayS).ToUnixTimeMilliseconds())}. Take that or later.")
            : null;

    private PlanResult Drawn() => _drawn ??= Planner.Draw(_brewhouse, _recipe, _choices);

    private ImmutableArray<Line> Preview(DateTimeOffset now) => Drawn() switch
    {
        PlanResult.Drawn drawn =>
        [
            Line.Of(Shell.Notation.Text("This gives"), Tone.Strong),
            .. WaterWarnings.Lines(drawn.Plan, Shell.Notation),
            .. PlanLines.Brief(drawn.Plan, Shell.Notation),
            .. FittedWords.Of(_recipe, drawn.Plan, Shell.Notation),
            .. _choices.Finish is { } finish && TooEarly(drawn, finish, now) is { } late ? new[] { Line.Of(late, Tone.Warning) } : [],
        ],
        PlanResult.Refused refused => [Line.Of(Shell.Notation.Text("This cannot be brewed"), Tone.Warning), .. RefusalWords.Lines(refused.Refusals, Shell.Notation)],
        _ => [],
    };
}
