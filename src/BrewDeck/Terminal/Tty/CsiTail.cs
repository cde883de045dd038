namespace BrewDeck.Terminal.Tty;

/// <summary>
/// Puts right the key sequences that Terminal.Gui 2.5.0 drops or throws at: an unknown <c>CSI n ~</c> (F13, Shift-F1)
/// throws a NullReferenceException, the F-keys of the Linux console and Home and End of rxvt are lost. ESC and
/// <c>[</c> are passed on at once, so the toolkit's own timer for a lone Esc still runs.
/// </summary>
internal sealed class CsiTail(Action<char> pass)
{
    /// <summary>A focus report: the toolkit swallows it, so it closes a sequence that nobody wants.</summary>
    private const char Swallowed = 'I';

    private const int LongestNumber = 32;

    private static readonly HashSet<int> Known =
        [1, 2, 3, 4, 5, 6, 11, 12, 13, 14, 15, 17, 18, 19, 20, 21, 23, 24, 200, 201];

    /// <summary>What an old mouse report holds after <c>CSI M</c>; its bytes would pass for keys.</summary>
    private const int MouseBytes = 3;

    private Place _place;
    private int _mouseBytes;
    private string _number = "";

    private enum Place
    {
        Text,
        Escape,
        Csi,
        Number,
        LinuxKey,
        Mouse,
    }

    public void Feed(char typed) => _place = _place switch
    {
        Place.Text => InText(typed),
        Place.Escape => AfterEscape(typed),
        Place.Csi => AfterCsi(typed),
        Place.Number => InNumber(typed),
        Place.Mouse => InMouse(),
        _ => AfterLinuxKey(typed),
    };

    private static Place PlaceAfter(char typed) => typed == '\e' ? Place.Escape : Place.Text;

    private Place InText(char typed)
    {
        pass(typed);
        return PlaceAfter(typed);
    }

    private Place AfterEscape(char typed)
    {
        pass(typed);
        return typed == '[' ? Place.Csi : PlaceAfter(typed);
    }

    private Place AfterCsi(char typed)
    {
        if (typed == '[') return Place.LinuxKey;
        if (typed == 'M')
        {
            pass(Swallowed);
            _mouseBytes = MouseBytes;
            return Place.Mouse;
        }

        if (char.IsAsciiDigit(typed))
        {
            _number = typed.ToString();
            return Place.Number;
        }

        pass(typed);
        return PlaceAfter(typed);
    }

    private Place InMouse() => --_mouseBytes > 0 ? Place.Mouse : Place.Text;

    private Place AfterLinuxKey(char typed)
    {
        if (typed is >= 'A' and <= 'E')
            PassAll($"{11 + (typed - 'A')}~");
        else
            pass(Swallowed);
        if (typed != '\e') return Place.Text;
        pass(typed);
        return Place.Escape;
    }

    private Place InNumber(char typed)
    {
        if (char.IsAsciiDigit(typed) || typed is ';' or ':')
        {
            if (_number.Length < LongestNumber) _number += typed;
            return Place.Number;
        }

        if (typed == '~')
            PassAll(Tilde(_number));
        else if (typed == '\e')
            PassAll($"{Swallowed}\e");
        else
            PassAll(_number + typed);
        return PlaceAfter(typed);
    }

    private static string Tilde(string number)
    {
        var parts = number.Split(';', 2);
        var key = int.TryParse(parts[0], out var n) ? n : 0;
        key = key switch { 7 => 1, 8 => 4, _ => key };
        if (!Known.Contains(key)) return Swallowed.ToString();
        return parts.Length > 1 ? $"{key};{parts[1]}~" : $"{key}~";
    }

    private void PassAll(string text)
    {
        foreach (var one in text) pass(one);
    }
}
