using System.Collections.Immutable;
using System.Globalization;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.SetUp;

/// <summary>
/// The questions of a set-up in their order, as the answers so far make them: later ones depend on earlier ones. What is not answered
/// counts as usual, so that the sheet always makes a whole brewhouse.
/// </summary>
internal sealed class SetUpSheet
{
    private readonly ImmutableDictionary<string, SetUpAnswer> _answers;
    private readonly Dictionary<string, string> _texts = new(StringComparer.Ordinal);
    private readonly List<SetUpQuestion> _questions = [];

    // a dozen plans: found once, and only when somebody asks
    private readonly Lazy<(double Litres, Limit? Bound)> _fits;

    private SetUpSheet(ImmutableDictionary<string, SetUpAnswer> answers)
    {
        _answers = answers;
        _fits = new(() => Largest.Of(BrewhouseDraft.House(this)));
    }

    /// <summary>How much of a common wort can be brewed, and what is full then; null: the fermenter.</summary>
    public (double Litres, Limit? Bound) Fits => _fits.Value;

    /// <summary>Every question so far is answered.</summary>
    public bool Complete => _questions.All(q => Answered(q) is not null);

    public IReadOnlyList<SetUpQuestion> Questions => _questions;

    public SetUpVessel[] Vessels => SetUpVessel.Of(this["vessels"]);

    public IReadOnlyList<Circuit> Circuits { get; private set; } = [];

    /// <summary>The answer, or what is usual.</summary>
    public string this[string id] => _texts[id];

    /// <param name="names">Of brewhouses that are there already.</param>
    public static SetUpSheet Of(ImmutableDictionary<string, SetUpAnswer> answers, IReadOnlyCollection<string> names, Notation notation)
    {
        var sheet = new SetUpSheet(answers);
        VesselQuestions.Ask(sheet, names, notation);
        PowerQuestions.Ask(sheet);
        PlantQuestions.Ask(sheet);
        TrialQuestions.Ask(sheet);
        sheet.Ask(PlantQuestions.Batch(sheet));
        return sheet;
    }

    public void Ask(SetUpQuestion question)
    {
        _questions.Add(question);
        Answer(question.Id, Answered(question) is { } answer ? answer.Text : question.Usual);
    }

    /// <summary>The answer that counts; null while there is none, or when what was answered before fits no more.</summary>
    public SetUpAnswer? Answered(SetUpQuestion question) =>
        _answers.TryGetValue(question.Id, out var answer) && question.Takes(answer.Text) ? answer : null;

    public AnswerSource SourceOf(string id) => _answers.TryGetValue(id, out var answer) ? answer.Source : AnswerSource.Usual;

    /// <summary>A number that no question asks for: measured, or reckoned from what is usual.</summary>
    public void Reckon(string id, string usual) => Answer(id, _answers.TryGetValue(id, out var answer) ? answer.Text : usual);

    public void Wire(IReadOnlyList<Circuit> circuits) => Circuits = circuits;

    /// <summary>Circuits of a vessel's elements, the first element first: neighbours in the row hang on different ones where there are several.</summary>
    public IReadOnlyList<Circuit> CircuitsOf(string vesselId)
    {
        var at = Array.FindIndex(Vessels, v => v.Id == vesselId);
        return [.. Enumerable.Range(0, 4).Select(e => Circuits[(at + e) % Circuits.Count])];
    }

    public double Number(string id, Dimension dimension) => QuantityReader.Read(this[id], dimension).Value;

    public double DiameterM(string vesselId) => Number(vesselId + ".diameter", Dimension.Length);

    public double HeightM(string vesselId)
    {
        var read = QuantityReader.Read(this[vesselId + ".height"], Dimension.Length);
        return read.Ok ? read.Value : Cylinder.DepthM(DiameterM(vesselId), CapacityL(vesselId));
    }

    public double CapacityL(string vesselId)
    {
        var read = QuantityReader.Read(this[vesselId + ".height"], Dimension.Volume);
        return read.Ok ? read.Value : Cylinder.VolumeL(DiameterM(vesselId), HeightM(vesselId));
    }

    public int Rings => int.Parse(this["rings"], CultureInfo.InvariantCulture);

    /// <summary>What a ring adds to the kettle, L; 0 without rings.</summary>
    public double RingL
    {
        get
        {
            if (Rings == 0)
                return 0;
            var read = QuantityReader.Read(this["kettle.ring"], Dimension.Volume);
            return read.Ok ? read.Value : Cylinder.VolumeL(DiameterM("kettle"), Number("kettle.ring", Dimension.Length));
        }
    }

    public bool HasPlate(string vesselId) => _texts.TryGetValue(vesselId + ".plate", out var answer) && answer == "yes";

    public HeatText Heat(string vesselId) => HeatText.Of(this[vesselId + ".heat"])!;

    public double HeatCapacityJPerK(string vesselId) => Typical.HeatCapacityJPerK(DiameterM(vesselId), HeightM(vesselId));

    /// <summary>Of the rating what reaches the liquid, W.</summary>
    public double NetW(string vesselId)
    {
        var heat = Heat(vesselId);
        return heat.Count * heat.Watts * (heat.Count == 0 ? 0 : Number(vesselId + ".net", Dimension.Fraction));
    }

    private void Answer(string id, string text) => _texts[id] = text;
}
