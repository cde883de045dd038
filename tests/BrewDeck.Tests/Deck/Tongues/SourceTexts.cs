using System.Collections.Immutable;
using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace BrewDeck.Tests.Deck.Tongues;

/// <summary>A text in the deck's source.</summary>
/// <param name="Text">With numbered places for what is put in.</param>
internal sealed record SourceText(string File, int Line, string Text);

/// <summary>All texts of the deck, found by compiling its source: those that are said in the brewer's language, and those that are not.</summary>
internal sealed class SourceTexts
{
    private static readonly Lazy<SourceTexts> Found = new(() => new SourceTexts());

    private readonly List<SourceText> _said = [];
    private readonly List<SourceText> _unsaid = [];

    private SourceTexts()
    {
        var compilation = Compile();
        foreach (var tree in compilation.SyntaxTrees)
            Read(tree, compilation.GetSemanticModel(tree));
    }

    public static SourceTexts Deck => Found.Value;

    /// <summary>Messages: constants that go to <c>Notation.Text</c> or into a <c>Phrase</c>.</summary>
    public IReadOnlyList<SourceText> Said => _said;

    /// <summary>Words that reach a screen, if they do, as they stand.</summary>
    public IReadOnlyList<SourceText> Unsaid => _unsaid;

    private static CSharpCompilation Compile()
    {
        var options = new CSharpParseOptions(LanguageVersion.Preview);
        var trees = Directory.EnumerateFiles(Folder(), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains("/obj/", StringComparison.Ordinal) && !f.Contains("/bin/", StringComparison.Ordinal))
            .Select(f => CSharpSyntaxTree.ParseText(File.ReadAllText(f), options, f))
            .Append(CSharpSyntaxTree.ParseText("global using System; global using System.Collections.Generic; global using System.IO; global using System.Linq;", options));
        var references = ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator)
            .Where(p => Path.GetFileName(p) != "BrewDeck.Deck.dll")
            .Select(p => MetadataReference.CreateFromFile(p));
        var compilation = CSharpCompilation.Create("deck", trees, references, new(OutputKind.DynamicallyLinkedLibrary, nullableContextOptions: NullableContextOptions.Enable));
        // with an error in it, a text could be missed; CS8795: no source generator runs here
        Assert.Empty(compilation.GetDiagnostics().Where(d => d.Severity == DiagnosticSeverity.Error && d.Id != "CS8795"));
        return compilation;
    }

    private static string Folder([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "../../../../src/BrewDeck.Deck"));

    private void Read(SyntaxTree tree, SemanticModel model)
    {
        foreach (var text in tree.GetRoot().DescendantNodes().OfType<ExpressionSyntax>().Where(IsText))
        {
            var found = new SourceText(Path.GetRelativePath(Folder(), tree.FilePath), text.GetLocation().GetLineSpan().StartLinePosition.Line + 1, Message(text));
            if (IsSaid(text, model))
                _said.Add(found);
            else if (HasWords(found.Text) && !IsForTheProgram(text, model))
                _unsaid.Add(found);
        }
    }

    private static bool IsText(ExpressionSyntax e) => e is InterpolatedStringExpressionSyntax || e.IsKind(SyntaxKind.StringLiteralExpression);

    private static string Message(ExpressionSyntax text)
    {
        if (text is LiteralExpressionSyntax literal)
            return literal.Token.ValueText;
        var message = new StringBuilder();
        var place = 0;
        foreach (var part in ((InterpolatedStringExpressionSyntax)text).Contents)
            message.Append(part is InterpolatedStringTextSyntax words ? Unescaped(words) : string.Create(CultureInfo.InvariantCulture, $"{{{place++}}}"));
        return message.ToString();
    }

    private static string Unescaped(InterpolatedStringTextSyntax words) => words.TextToken.ValueText.Replace("{{", "{", StringComparison.Ordinal).Replace("}}", "}", StringComparison.Ordinal);

    private static bool IsSaid(ExpressionSyntax text, SemanticModel model) =>
        IsPhrase(text, model) || (text is LiteralExpressionSyntax && Outermost(text) is ExpressionSyntax whole && IsPhrase(whole, model))
        || (text.Parent is ArgumentSyntax { Parent.Parent: InvocationExpressionSyntax call } && model.GetSymbolInfo(call).Symbol is IMethodSymbol { Name: "Text", ContainingType.Name: "Notation" });

    private static bool IsPhrase(ExpressionSyntax text, SemanticModel model)
    {
        var type = model.GetTypeInfo(text).ConvertedType;
        return (type is INamedTypeSymbol { Name: "Nullable", TypeArguments: [var inner] } ? inner : type)?.Name is "Phrase" or "TextHandler";
    }

    /// <summary>The choice that a text is an arm of, or itself.</summary>
    private static SyntaxNode Outermost(SyntaxNode at)
    {
        while (at.Parent is ParenthesizedExpressionSyntax or ConditionalExpressionSyntax or SwitchExpressionArmSyntax or SwitchExpressionSyntax)
            at = at.Parent;
        return at;
    }

    /// <summary>Names of units and of the program's own things are the same everywhere.</summary>
    private static readonly ImmutableHashSet<string> Wordless =
    [
        "L", "kg", "g", "mg", "C", "F", "K", "W", "kW", "A", "V", "min", "s", "h", "m", "cm", "mm", "ft", "in", "psi", "bar", "IBU", "EBC", "SRM", "lb", "oz", "gal", "qt",
        "mL", "pH", "SG", "Bx", "x", "HH", "yyyy", "MM", "dd", "Ca", "Mg", "Na", "Cl", "SO", "BrewDeck", "Tinseth", "Rager",
    ];

    private static bool HasWords(string text)
    {
        var letters = string.Concat(text.Select(c => char.IsLetter(c) ? c : ' '));
        return letters.Split(' ', StringSplitOptions.RemoveEmptyEntries).Any(w => w.Length > 1 && !Wordless.Contains(w));
    }

    private static bool IsForTheProgram(ExpressionSyntax text, SemanticModel model)
    {
        if (text.Ancestors().TakeWhile(a => a is not MemberDeclarationSyntax).Any(a => a is AttributeSyntax or CaseSwitchLabelSyntax or ConstantPatternSyntax or ThrowStatementSyntax or ThrowExpressionSyntax or ParameterSyntax)
            || text.Parent is BinaryExpressionSyntax { RawKind: (int)SyntaxKind.EqualsExpression or (int)SyntaxKind.NotEqualsExpression }
            || text.Parent is ArgumentSyntax { Parent: BracketedArgumentListSyntax })
            return true;
        var at = text.Parent;
        while (at is ParenthesizedExpressionSyntax or ConditionalExpressionSyntax or SwitchExpressionArmSyntax or SwitchExpressionSyntax or BinaryExpressionSyntax)
            at = at.Parent;
        if (at is ArgumentSyntax { Parent: BracketedArgumentListSyntax })
            return true;
        return at is ArgumentSyntax { Parent: ArgumentListSyntax { Parent: { } call } list } argument && model.GetSymbolInfo(call).Symbol is IMethodSymbol method
            && (IsOfTheFramework(method) || IsKey(Takes(method, argument, list)?.ToLowerInvariant() ?? "", method.ContainingNamespace.Name));
    }

    /// <summary>A sum is called by its name on the command line; its examples are numbers with units.</summary>
    private static bool IsKey(string parameter, string space) => parameter is "format" or "unit" or "code" or "id" or "figure" or "word" or "bareunit" or "key"
        || (space is "Reckoning" or "SetUp" or "Trends" && parameter is "name" or "example" or "preset" or "default" or "usual" or "options" or "ion" or "usualheat");

    private static bool IsOfTheFramework(IMethodSymbol method) =>
        method.ContainingNamespace.ToString()!.StartsWith("System", StringComparison.Ordinal) && method.Name is not ("Concat" or "Append" or "Prepend" or "Add" or "Create");

    private static string? Takes(IMethodSymbol method, ArgumentSyntax argument, ArgumentListSyntax list) =>
        argument.NameColon?.Name.Identifier.Text ?? method.Parameters.ElementAtOrDefault(list.Arguments.IndexOf(argument))?.Name;
}
