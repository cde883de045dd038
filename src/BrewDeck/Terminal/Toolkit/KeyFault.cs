using System.Runtime.ExceptionServices;

namespace BrewDeck.Terminal.Toolkit;

/// <summary>Carries an exception from a key handler past the toolkit's parser, which it must not be mistaken for.</summary>
internal sealed class KeyFault
{
    private ExceptionDispatchInfo? _caught;

    /// <summary>Runs nothing more once something was thrown.</summary>
    public void Guard(Action handler)
    {
        if (_caught is not null) return;
        try
        {
            handler();
        }
        catch (Exception e)
        {
            _caught = ExceptionDispatchInfo.Capture(e);
        }
    }

    public void ThrowIfAny() => _caught?.Throw();
}
