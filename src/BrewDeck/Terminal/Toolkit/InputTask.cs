using System.Runtime.CompilerServices;
using Terminal.Gui.App;

namespace BrewDeck.Terminal.Toolkit;

/// <summary>
/// The toolkit starts a task that looks for input every 20 ms, also when it runs headless. Stopping it takes a private
/// member: 2.2 % of a core idle without this, 0.15 % with. If a later version hides the member elsewhere, the task stays.
/// </summary>
internal static class InputTask
{
    public static void Stop(IApplication application)
    {
        try
        {
            Running(Coordinator(application)).Cancel();
        }
        catch (Exception e) when (e is MissingMemberException or InvalidCastException or TypeLoadException)
        {
            // the cost is a little idle work, nothing else
        }
    }

    [UnsafeAccessor(UnsafeAccessorKind.Method, Name = "get_Coordinator")]
    [return: UnsafeAccessorType("Terminal.Gui.App.IMainLoopCoordinator, Terminal.Gui")]
    private static extern object Coordinator(
        [UnsafeAccessorType("Terminal.Gui.App.ApplicationImpl, Terminal.Gui")] object application);

    [UnsafeAccessor(UnsafeAccessorKind.Field, Name = "_runCancellationTokenSource")]
    private static extern ref CancellationTokenSource Running(
        [UnsafeAccessorType("Terminal.Gui.App.MainLoopCoordinator`1[[System.Char, System.Private.CoreLib]], Terminal.Gui")]
        object coordinator);
}
