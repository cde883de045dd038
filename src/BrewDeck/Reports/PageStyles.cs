namespace BrewDeck.Reports;

/// <summary>How the pages look, on a screen and on A4 or Letter: no size of paper is named, the margins leave room for either.</summary>
internal static class PageStyles
{
    private const string Common = """
        @page { margin: 14mm 12mm 16mm; @bottom-right { content: counter(page) " / " counter(pages); font: 8pt sans-serif; color: #555; } }
        * { box-sizing: border-box; }
        body { font: 10pt/1.4 system-ui, "Liberation Sans", "DejaVu Sans", Arial, sans-serif; color: #1c1c1c; background: #fff; max-width: 62rem; margin: 0 auto; padding: 1.2rem; }
        h1 { font-size: 18pt; line-height: 1.2; margin: 0 0 .2rem; overflow-wrap: anywhere; }
        h2 { font-size: 11.5pt; margin: 1.6rem 0 .35rem; padding-bottom: .15rem; border-bottom: 1.5pt solid #1c1c1c; break-after: avoid; }
        p { margin: .2rem 0; }
        .soft { color: #555; }
        table { border-collapse: collapse; width: 100%; font-variant-numeric: tabular-nums; }
        th { text-align: left; font-weight: 600; vertical-align: bottom; }
        thead { display: table-header-group; }
        th, td { padding: .16rem .45rem .16rem 0; border-bottom: .5pt solid #ccc; vertical-align: top; }
        td.short { white-space: nowrap; } td.long { overflow-wrap: anywhere; }
        tr { break-inside: avoid; }
        @media print { body { max-width: none; padding: 0; } }
        """;

    public const string Report = Common + """

        table { font-size: 8.5pt; }
        col.wide { width: 24%; }
        table.pairs { width: auto; }
        table.pairs td:first-child { color: #555; padding-right: 1.4rem; }
        .grid { display: grid; grid-template-columns: 1fr 1fr; gap: 0 2.2rem; align-items: start; }
        .mark { display: inline-block; border: 1.2pt solid #1c1c1c; padding: 0 .5rem; font-size: 9pt; font-weight: 600; }
        figure { margin: .5rem 0 .9rem; break-inside: avoid; }
        figcaption { font-size: 9pt; font-weight: 600; }
        figure svg { display: block; width: 100%; height: auto; }
        section.all td { font-size: 7.5pt; }
        @media (max-width: 40rem) { .grid { grid-template-columns: 1fr; } }
        """;

    /// <summary>Large type and open boxes: read at arm's length, filled in with a thick pencil on wet paper.</summary>
    public const string Sheet = Common + """

        .top { display: grid; grid-template-columns: repeat(4, 1fr); gap: .5rem; margin: .7rem 0; }
        .box { border: 1.2pt solid #1c1c1c; min-height: 1.3cm; padding: .1rem .3rem; font-size: 8pt; color: #444; }
        table { table-layout: fixed; margin-top: .6rem; }
        th, td { border: .8pt solid #555; padding: .2rem .35rem; overflow-wrap: break-word; }
        col.time { width: 4.2rem; } col.blank { width: 4.1rem; } col.reads { width: 11.5rem; }
        th.part { background: #e8e8e8; font-size: 11pt; break-after: avoid; }
        .step { font-weight: 650; font-size: 11.5pt; line-height: 1.25; }
        .caution { font-size: 8pt; font-weight: 600; line-height: 1.25; }
        .reads { display: grid; grid-template-columns: 1fr 4.4rem; gap: .2rem .35rem; align-items: end; font-size: 8.5pt; line-height: 1.2; }
        .reads .box { min-height: .9cm; }
        .tick { display: inline-block; width: .8rem; height: .8rem; border: 1.2pt solid #1c1c1c; margin-right: .4rem; vertical-align: -1pt; }
        .lines { height: 5cm; background: repeating-linear-gradient(#fff 0, #fff .95cm, #999 .95cm, #999 1cm); break-inside: avoid; }
        """;
}
