using System.Collections.Frozen;
using Scriban;
using Scriban.Runtime;
using Scriban.Syntax;

namespace Explain;

/// <summary>The templates of one output, parsed once and never changed. Safe to share between threads.</summary>
internal sealed class TemplateSet
{
    /// <summary>The most loop steps of all the templates of one document together.</summary>
    private const int MostLoops = 100_000;

    /// <summary>The most characters that one block may print.</summary>
    private const int MostCharacters = 1_000_000;

    private const string Folder = "templates/", Ending = ".scriban", Page = "page";

    private static readonly ScriptObject NoFunctions = [];
    private static readonly FrozenDictionary<string, TemplateSet> Standard = Resources.Names(Folder)
        .GroupBy(n => n.Split('/')[1])
        .ToFrozenDictionary(g => g.Key, g => new TemplateSet(g.Select(n => KeyValuePair.Create(n.Split('/')[2][..^Ending.Length], Parse(n, Resources.Read(n))))), StringComparer.Ordinal);

    private readonly FrozenDictionary<string, Template> templates;

    private TemplateSet(IEnumerable<KeyValuePair<string, Template>> templates) => this.templates = templates.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The outputs that have templates.</summary>
    public static IEnumerable<string> Folders => Standard.Keys.Order(StringComparer.Ordinal);

    public static TemplateSet For(string output) => Standard[output];

    /// <summary>The set with some templates exchanged.</summary>
    /// <exception cref="TemplateException">A template cannot be read, or there is no block of its name.</exception>
    public TemplateSet With(IEnumerable<KeyValuePair<string, string>> own)
    {
        Dictionary<string, Template> all = new(templates, StringComparer.Ordinal);
        foreach ((string name, string text) in own)
        {
            if (!all.ContainsKey(name)) throw new TemplateException(name, "", null);
            all[name] = Parse(name, text);
        }

        return new(all);
    }

    /// <summary>Prints a document: its blocks, in the frame of a page. Every part of a block stands between marks.</summary>
    /// <exception cref="TemplateException">A template of a house fails, or goes over a limit.</exception>
    public string Print(Document document, InlineWriter writer, Marks marks)
    {
        TemplateContext context = Context();
        BlockModel models = null!;
        models = new(writer, marks, Block);
        return Fill(Page, models.OfPage(document.Blocks.Select(Block))) + "\n";

        string Block(Block block) => Fill(BlockModel.TemplateOf(block), models.Of(block));

        string Fill(string name, ScriptObject model)
        {
            context.PushGlobal(model);
            try
            {
                return templates[name].Render(context).Trim('\n');
            }
            catch (Exception e) when (e is ScriptRuntimeException or InvalidOperationException)
            {
                throw new TemplateException(name, e.Message, e);
            }
            finally
            {
                context.PopGlobal();
            }
        }
    }

    private static TemplateContext Context() => new(NoFunctions)
    {
        StrictVariables = true,
        EnableRelaxedMemberAccess = false,
        EnableRelaxedIndexerAccess = false,
        NewLine = "\n",
        AutoIndent = false,
        LoopLimit = MostLoops,
        OutputLimit = MostCharacters,
        OnOutputLimit = ScriptLimitBehavior.Throw,
        OnStringLimit = ScriptLimitBehavior.Throw,
    };

    private static Template Parse(string name, string text) => Template.Parse(text, name) is { HasErrors: false } template
        ? template : throw new TemplateException(name, string.Join("; ", Template.Parse(text, name).Messages), null);
}
