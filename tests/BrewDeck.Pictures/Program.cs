using BrewDeck.Pictures;

// dotnet run --project tests/BrewDeck.Pictures -- screenshots
// dotnet run --project tests/BrewDeck.Pictures -- --check screenshots
var check = args is ["--check", _];
if (args is not ([_] or ["--check", _]))
{
    Console.Error.WriteLine("pictures: say which folder, such as screenshots; --check before it only looks");
    return 2;
}
var drawings = Directory.GetFiles(args[^1], "*.svg").Order(StringComparer.Ordinal).ToList();
var missing = check ? drawings.Where(d => !SvgDrawing.HasPng(d)).ToList() : [];
foreach (var drawing in missing)
    Console.Error.WriteLine($"{SvgDrawing.PngOf(drawing)}: is not there, or not of its SVG's size; run dotnet run --project tests/BrewDeck.Pictures -- {args[^1]}");
if (check)
    return missing.Count == 0 ? 0 : 1;
if (!SvgDrawing.Fonts.All(File.Exists))
{
    Console.Error.WriteLine($"pictures: {SvgDrawing.Fonts[0]} is not there; apt-get install fonts-dejavu-core");
    return 2;
}
using var pen = new SvgDrawing();
foreach (var drawing in drawings)
    pen.Write(drawing);
Console.WriteLine($"{drawings.Count} PNG written");
return 0;
