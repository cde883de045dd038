using System.Globalization;
using System.Xml.Linq;
using SkiaSharp;

namespace BrewDeck.Pictures;

/// <summary>An SVG of the program's, which holds only rectangles and words, as PNG: twice its size, so that letters stay sharp on dense screens.</summary>
internal sealed class SvgDrawing : IDisposable
{
    private const int Scale = 2;

    /// <summary>The one font, from its files: no font configuration of the machine is asked.</summary>
    public static readonly string[] Fonts =
        ["/usr/share/fonts/truetype/dejavu/DejaVuSansMono.ttf", "/usr/share/fonts/truetype/dejavu/DejaVuSansMono-Bold.ttf"];

    private readonly SKTypeface[] _faces = [.. Fonts.Select(f => SKTypeface.FromFile(f))];

    public static string PngOf(string svg) => Path.ChangeExtension(svg, ".png");

    /// <summary>Whether the PNG is there and as large as its SVG asks; how letters are smoothed differs from machine to machine and is not compared.</summary>
    public static bool HasPng(string path)
    {
        if (!File.Exists(PngOf(path)))
            return false;
        using var png = SKCodec.Create(PngOf(path));
        return png is not null && (png.Info.Width, png.Info.Height) == SizeOf(XDocument.Load(path).Root!);
    }

    public void Write(string path)
    {
        var root = XDocument.Load(path).Root!;
        var (width, height) = SizeOf(root);
        using var surface = SKSurface.Create(new SKImageInfo(width, height));
        surface.Canvas.Scale(Scale);
        using SKFont plain = new(_faces[0], Number(root, "font-size")), bold = new(_faces[1], Number(root, "font-size"));
        foreach (var element in root.Elements())
        {
            using var paint = new SKPaint { Color = SKColor.Parse((string)element.Attribute("fill")!), IsAntialias = element.Name.LocalName == "text" };
            if (element.Name.LocalName == "text")
                surface.Canvas.DrawText(element.Value, Number(element, "x"), Number(element, "y"), SKTextAlign.Left, element.Attribute("font-weight") is null ? plain : bold, paint);
            else
                surface.Canvas.DrawRect(Number(element, "x"), Number(element, "y"), Number(element, "width"), Number(element, "height"), paint);
        }
        using var image = surface.Snapshot();
        using var png = image.Encode(SKEncodedImageFormat.Png, 100);
        File.WriteAllBytes(PngOf(path), png.ToArray());
    }

    public void Dispose() => Array.ForEach(_faces, f => f.Dispose());

    private static (int Width, int Height) SizeOf(XElement root) => ((int)(Scale * Number(root, "width")), (int)(Scale * Number(root, "height")));

    private static float Number(XElement element, string attribute) =>
        float.Parse((string)element.Attribute(attribute)!, CultureInfo.InvariantCulture);
}
