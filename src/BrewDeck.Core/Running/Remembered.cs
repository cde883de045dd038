using System.Runtime.CompilerServices;

namespace BrewDeck.Core.Running;

/// <summary>
/// What was reckoned of a value, kept as long as the value is in use: values never change, so whoever asks the same again gets the same answer.
/// Each holds its last few answers, for a deck asks of the same plant at a new moment every second.
/// </summary>
internal sealed class Remembered<TOf, TAnswer>
    where TOf : class
    where TAnswer : class
{
    private const int Kept = 4;

    private readonly ConditionalWeakTable<TOf, List<Known>> _known = [];

    /// <param name="asked">Equal for the same question.</param>
    public TAnswer Of(TOf of, object asked, Func<TAnswer> reckon)
    {
        var answers = _known.GetValue(of, _ => []);
        lock (answers)
        {
            if (answers.Find(k => k.Asked.Equals(asked)) is { } known)
                return known.Answer;
        }
        var answer = reckon();
        lock (answers)
        {
            if (answers.Count == Kept)
                answers.RemoveAt(0);
            answers.Add(new(asked, answer));
        }
        return answer;
    }

    private sealed record Known(object Asked, TAnswer Answer);
}
