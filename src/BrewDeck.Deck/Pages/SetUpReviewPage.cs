using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.SetUp;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>All answers of a set-up with what they make; here the file is written.</summary>
/// <param name="change">Called with the place of a question that is to be answered anew.</param>
internal sealed class SetUpReviewPage(Shell shell, IProfileWriter writer, SetUpSheet sheet, Action<int> change) : ListPage(shell)
{
    public override KeyContext Context => KeyContext.List;

    protected override int Count => sheet.Questions.Count + 1;

    protected override Screen Compose(DateTimeOffset now) => new ListScreen(
        Shell.Notation.Text($"{sheet["name"]}: write it?"),
        Corners.Of(Shell, now),
        [new Column("", 0), new Column("", 14, Right: true), new Column("", 15)],
        [new Row([Shell.Notation.Text("Write the file"), "", ""], Tone.Strong), .. sheet.Questions.Select(Answer)],
        Selected,
        SetUpFindings.Of(sheet, sheet.Questions.Count, Shell.Notation),
        KeyMap.Hints(Context, Shell.Notation));

    protected override void Choose(int row, DateTimeOffset now)
    {
        if (row == 0)
            Write(now);
        else
            change(row - 1);
    }

    // leaving the review leaves the set-up: the questions under it are all answered
    protected override void Handle(Command command, KeyStroke stroke, DateTimeOffset now)
    {
        if (command == Command.Back)
            Shell.Home();
        else
            base.Handle(command, stroke, now);
    }

    private void Write(DateTimeOffset now) => Shell.Try(() =>
    {
        var entry = writer.Write(BrewhouseDraft.Of(sheet), BrewhouseNotes.Of(sheet, now), now);
        writer.KeepDraft(SetUpPage.DraftName, []);
        Shell.ProfilesWritten++;
        Shell.Home();
        Shell.Say(Shell.Notation.Text($"{entry.Name} is written to {entry.Path}. Choose it under New brew day."));
    });

    private Row Answer(SetUpQuestion question)
    {
        var says = question is SetUpQuestion.Pick pick ? Shell.Notation.Name(pick.Options.First(o => o.Word == sheet[pick.Id]).Word) : question.Id == "name" ? sheet[question.Id] : HeatText.Said(sheet[question.Id], Shell.Notation);
        return new Row([Names.Sentence(SetUpTopics.Of(question.Id, sheet.Vessels, Shell.Notation)), says, question is SetUpQuestion.Line line ? Source(line) : ""]);
    }

    private string Source(SetUpQuestion.Line line) => sheet.SourceOf(line.Id) switch
    {
        AnswerSource.Measured => Shell.Notation.Text("measured"),
        AnswerSource.Typed => Shell.Notation.Text("as you said"),
        _ when line.Usually.Message == Typical.Guess.Message => Shell.Notation.Text(Typical.Guess),
        _ => line.UsualIs is null || line.Usually.Message == Typical.CommonPractice.Message ? Shell.Notation.Text(Typical.CommonPractice) : "",
    };
}
