using System.Collections.Immutable;
using BrewDeck.Deck.Asks;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.SetUp;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>A new brewhouse, question by question. Each answer is on disk before the next question is asked.</summary>
internal sealed class SetUpPage : ListPage
{
    internal const string DraftName = "brewhouse";

    private readonly IProfileWriter _writer;
    private readonly ImmutableArray<string> _names;
    private ImmutableDictionary<string, SetUpAnswer> _answers;
    private SetUpSheet _sheet;
    /// <summary>Whoever typed a word ends it with Enter, which must not take what is offered.</summary>
    private bool _lettersTyped;

    private int _at;

    private SetUpPage(Shell shell, IProfileWriter writer)
        : base(shell)
    {
        _writer = writer;
        _names = [.. shell.Ports.Profiles.Brewhouses().Select(b => b.Name)];
        _answers = SetUpAnswers.Of(writer.Draft(DraftName));
        _sheet = SetUpSheet.Of(_answers, _names, Shell.Notation);
        Open(FirstOpen());
    }

    // letters begin a name at once, so that no letter can be a key there
    public override KeyContext Context => Question.Id == "name" ? KeyContext.Naming : KeyContext.SetUp;

    public static void Enter(Shell shell) => shell.Try(() =>
    {
        if (shell.Ports.Writer is not { } writer)
        {
            shell.Say(shell.Notation.Text("No profile can be written here."), Tone.Warning);
            return;
        }
        var page = new SetUpPage(shell, writer);
        shell.Push(page);
        if (page._at > 0)
            shell.Say(shell.Notation.Text("Your answers were kept; this is the next question."));
        if (page._at == page._sheet.Questions.Count)
            page.Review();
    });

    protected override int Count => Rows().Length;

    private SetUpQuestion Question => _sheet.Questions[Math.Min(_at, _sheet.Questions.Count - 1)];

    protected override Screen Compose(DateTimeOffset now) => new ListScreen(
        Shell.Notation.Text(Question.Sentence),
        Shell.Notation.Text($"{Math.Min(_at + 1, _sheet.Questions.Count)} of {_sheet.Questions.Count} · {Corners.Of(Shell, now)}"),
        [new Column("", 0)],
        Rows(),
        Selected,
        Details(),
        KeyMap.Hints(Context, Shell.Notation, Command.Back, Shell.Notation.Text("leave the set-up")));

    protected override void Handle(Command command, KeyStroke stroke, DateTimeOffset now)
    {
        var endsLetters = _lettersTyped && command == Command.Choose;
        _lettersTyped = false;
        switch (command)
        {
            case Command.Choose when endsLetters:
                SayDigits();
                break;
            case Command.Before:
                Open(Math.Max(0, _at - 1));
                break;
            case Command.PickRow when Question is SetUpQuestion.Line line:
                Type(line, stroke.Character.ToString());
                break;
            default:
                base.Handle(command, stroke, now);
                break;
        }
    }

    protected override void Ignored(KeyStroke stroke)
    {
        _lettersTyped = Question is SetUpQuestion.Line && char.IsLetter(stroke.Character);
        if (_lettersTyped)
            SayDigits();
    }

    private void SayDigits() => Shell.Say(Shell.Notation.Text("A number is wanted: begin with a digit, or take a row."), Tone.Warning);

    protected override void Choose(int row, DateTimeOffset now)
    {
        switch (Question)
        {
            case SetUpQuestion.Pick pick:
                Take(new(pick.Options[row].Word, AnswerSource.Typed));
                break;
            case SetUpQuestion.Line line when row == 0:
                Take(_sheet.Answered(line) ?? new(line.Usual, AnswerSource.Usual));
                break;
            case SetUpQuestion.Line line when row == 1:
                Type(line, "");
                break;
            case SetUpQuestion.Line { Trial: { } trial }:
                Try(trial);
                break;
        }
    }

    private ImmutableArray<Row> Rows() => Question switch
    {
        SetUpQuestion.Pick pick => [.. pick.Options.Select(o => new Row([Shell.Notation.Text(o.Says)]))],
        SetUpQuestion.Line line =>
        [
            new Row([Offer(line)]),
            new Row([Shell.Notation.Text("Type another")]),
            .. line.Trial is { } trial ? [new Row([Shell.Notation.Text($"Measure it: {Shell.Notation.Text(trial.Sum.Title)}")])] : ImmutableArray<Row>.Empty,
        ],
        _ => [],
    };

    private string Offer(SetUpQuestion.Line line) => _sheet.Answered(line) switch
    {
        null => AsUsual(line, line.Usual),
        { Source: AnswerSource.Usual } usual => AsUsual(line, usual.Text),
        { Source: AnswerSource.Measured } measured => Shell.Notation.Text($"{Said(measured.Text)}, measured"),
        var typed => Shell.Notation.Text($"{Said(typed.Text)}, as you said"),
    };

    private string AsUsual(SetUpQuestion.Line line, string text) => line.Usually.IsEmpty ? text : $"{Said(text)}, {Shell.Notation.Text(line.Usually)}";

    private string Said(string kept) => HeatText.Said(kept, Shell.Notation);

    private ImmutableArray<Line> Details()
    {
        var spread = Question is SetUpQuestion.Line { Spread.IsEmpty: false } line ? Shell.Notation.Text(line.Spread) : "";
        var findings = SetUpFindings.Of(_sheet, _at, Shell.Notation);
        return
        [
            .. Question.Help.IsEmpty ? [] : new[] { Line.Of(Shell.Notation.Text(Question.Help)) },
            .. spread.Length == 0 ? [] : new[] { Line.Of(Shell.Notation.Text($"Common practice: {spread}."), Tone.Muted) },
            .. findings.IsEmpty ? [] : new[] { Line.Of(""), Line.Of(Shell.Notation.Text("So far"), Tone.Muted) },
            .. findings,
        ];
    }

    private void Type(SetUpQuestion.Line line, string typed) => Ask(new EntryAsk(
        this, Shell.Notation.Text(line.Sentence), typed, text => Understood(line, text), (text, _) =>
        {
            if (line.Read(text, Shell.Notation, out var fault) is not { } kept)
                return Names.Sentence(fault) + ".";
            if (Doubt(line, kept) is { } doubt)
                Ask(AgainAsk(line, kept, doubt));
            else
                Take(new(kept, AnswerSource.Typed));
            return null;
        }));

    /// <summary>So many times more or less than what is usual there is more often a slip than a size; common practice, no source.</summary>
    private const double Unlikely = 3;

    /// <summary>Why a number is asked about once more; null: it may well be.</summary>
    private string? Doubt(SetUpQuestion.Line line, string kept) =>
        KeptNumber.Of(kept) is { Value: > 0 } typed && KeptNumber.Of(line.Usual) is { Value: > 0 } usual && typed.Unit == usual.Unit
            && Math.Max(typed.Value / usual.Value, usual.Value / typed.Value) > Unlikely
            ? Shell.Notation.Text($"{Said(kept)} is far from the usual {Said(line.Usual)}.")
            : null;

    private ChoiceAsk AgainAsk(SetUpQuestion.Line line, string kept, string doubt) => new(
        this,
        Shell.Notation.Text(line.Sentence),
        [Line.Of(doubt, Tone.Warning)],
        [new Row([Shell.Notation.Text("Type it again")]), new Row([Shell.Notation.Text($"It is {Said(kept)}")])],
        (row, _) =>
        {
            if (row == 1)
                Take(new(kept, AnswerSource.Typed));
            else
                Type(line, "");
        });

    private Line Understood(SetUpQuestion.Line line, string text) =>
        text.Trim().Length > 0 && line.Read(text, Shell.Notation, out _) is { } kept
            ? Line.Of(Shell.Notation.Text($"understood as {Said(kept)}"))
            : Line.Of(Shell.Notation.Text($"such as {Shell.Notation.Decimals(line.Example)}"), Tone.Muted);

    /// <summary>Readings of a trial are kept like answers: a heat-up takes an hour, and laptops fall asleep.</summary>
    private void Try(SetUpTrial trial)
    {
        var of = Question.Id + "/";
        var texts = _answers.Where(a => a.Key.StartsWith(of, StringComparison.Ordinal)).ToDictionary(a => a.Key[of.Length..], a => a.Value.Text, StringComparer.Ordinal);
        Shell.Push(new TrialPage(Shell, trial, texts, KeepReadings, Measured));

        void KeepReadings()
        {
            foreach (var (input, text) in texts)
                _answers = _answers.SetItem(of + input, new(text, AnswerSource.Typed));
            Keep();
        }
    }

    private void Measured(TrialResult result)
    {
        foreach (var (id, text) in result.Answers)
            _answers = _answers.SetItem(id, new(text, AnswerSource.Measured));
        Keep();
        Open(_at);
        Shell.Say(Shell.Notation.Text($"Measured: {string.Join(", ", result.Answers.Select(a => Said(a.Text)))}. Enter takes it."));
    }

    private void Take(SetUpAnswer answer)
    {
        _answers = _answers.SetItem(Question.Id, answer);
        if (!Keep())
            return;
        Open(Next());
        if (_at == _sheet.Questions.Count)
            Review();
    }

    /// <summary>The next one; after the last, or when all are answered as after a look back, what is still open.</summary>
    private int Next() => _at + 1 < _sheet.Questions.Count && FirstOpen() < _sheet.Questions.Count ? _at + 1 : FirstOpen();

    private int FirstOpen()
    {
        var open = _sheet.Questions.ToList().FindIndex(q => _sheet.Answered(q) is null);
        return open < 0 ? _sheet.Questions.Count : open;
    }

    private bool Keep()
    {
        _sheet = SetUpSheet.Of(_answers, _names, Shell.Notation);
        return Shell.Try(() => _writer.KeepDraft(DraftName, SetUpAnswers.Lines(_answers)));
    }

    private void Review() => Shell.Push(new SetUpReviewPage(Shell, _writer, _sheet, question =>
    {
        Shell.Pop();
        Open(question);
    }));

    private void Open(int question)
    {
        _at = question;
        var chosen = Question is SetUpQuestion.Pick pick ? pick.Options.Select(o => o.Word).ToList().IndexOf(_sheet[pick.Id]) : 0;
        Select(Math.Max(0, chosen));
    }
}
