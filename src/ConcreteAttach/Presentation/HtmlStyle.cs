namespace ConcreteAttach.Presentation;

/// <summary>The look of the HTML report: a page of a textbook, black on white with one accent colour, on a screen, on a phone and on paper.</summary>
internal static class HtmlStyle
{
    public const string Text = """
        :root { color-scheme: only light; --accent: #9b3420; }
        * { box-sizing: border-box; }
        html { font: 1.0625rem/1.5 serif; background: #fff; color: #000; -webkit-text-size-adjust: 100%; }
        body { margin: 0; }
        main { max-width: 54rem; margin: 0 auto; padding: 2rem 1.25rem 4rem; counter-reset: figure; }
        h1 { font-size: 1.9rem; line-height: 1.2; margin: 0 0 1rem; }
        h2 { font-size: 1.35rem; line-height: 1.25; margin: 2.75rem 0 .75rem; padding-bottom: .25rem; border-bottom: 2px solid var(--accent); }
        h3 { font-size: 1.1rem; margin: 2rem 0 .35rem; }
        p { margin: .5rem 0; }
        a { color: var(--accent); }
        ul { margin: .5rem 0; padding-left: 1.25rem; }
        .answer { font-size: 1.2rem; line-height: 1.45; margin: 1rem 0; padding: .1rem 0 .1rem 1rem; border-left: 5px solid var(--accent); }
        nav ul { list-style: none; margin: 1.25rem 0 0; padding: 0; display: flex; flex-wrap: wrap; gap: .2rem 1.25rem; font-size: .95rem; }
        nav a { display: inline-block; padding: .2rem 0; }
        var { font-style: italic; }
        sub { font-size: .72em; line-height: 0; }
        .wide { overflow-x: auto; margin: 1.25rem 0; }
        table { border-collapse: collapse; font-size: .92rem; line-height: 1.35; font-variant-numeric: tabular-nums lining-nums; border-top: 1.5px solid #000; border-bottom: 1.5px solid #000; }
        .hidden { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
        caption { text-align: left; font-style: italic; padding: 0 0 .3rem; white-space: nowrap; }
        th, td { padding: .2rem .6rem; text-align: left; vertical-align: baseline; }
        th:first-child, td:first-child { padding-left: 0; }
        th:last-child, td:last-child { padding-right: 0; white-space: nowrap; }
        th { font-weight: bold; border-bottom: 1px solid #000; vertical-align: bottom; }
        .n { text-align: right; white-space: nowrap; }
        .n span { display: inline-block; }
        td.n:has(span) { white-space: normal; }
        .group th { border-bottom: 0; padding: .6rem 0 .1rem; font-weight: normal; font-style: italic; }
        tbody + tbody .group th { border-top: .5px solid #000; }
        td strong { color: var(--accent); }
        .sheet { list-style: none; margin: .35rem 0 1rem; padding: 0 0 0 1rem; overflow-x: auto; overflow-y: hidden; }
        .sheet li { display: flex; flex-wrap: wrap; align-items: baseline; justify-content: space-between; gap: 0 1.5rem; padding: .14rem 0; }
        .sheet li > span { padding-left: 1.5rem; text-indent: -1.5rem; }
        .sheet small { font-size: .82rem; color: #444; margin-left: auto; text-align: right; }
        .sheet .given { justify-content: start; gap: 0 1.75rem; }
        .sheet .given span { padding-left: 0; text-indent: 0; }
        .sheet .note { display: block; font-style: italic; color: #333; }
        math { text-indent: 0; font-size: 1.02em; math-style: normal; }
        .figures { display: flex; flex-wrap: wrap; justify-content: space-evenly; align-items: flex-end; gap: .5rem 1.5rem; margin: 1.25rem 0; }
        figure { margin: .5rem 0; max-width: 100%; }
        figure svg { display: block; max-width: 100%; height: auto; }
        figcaption { font-size: .92rem; font-style: italic; padding-top: .25rem; }
        :focus-visible { outline: 2px solid var(--accent); outline-offset: 2px; }
        @media (max-width: 40rem) {
          html { font-size: 1rem; }
          main { padding: 1.25rem 1rem 3rem; }
          h1 { font-size: 1.5rem; }
          .answer { font-size: 1.1rem; }
          .sheet { padding-left: 0; }
          .sheet small { flex: 1 0 100%; }
          th, td { padding: .2rem .45rem; }
        }
        @page { margin: 17mm 16mm 19mm; }
        @page { @bottom-center { content: counter(page) " / " counter(pages); font: 9pt serif; } }
        @media print {
          html { font-size: 10.2pt; line-height: 1.4; }
          main { max-width: none; padding: 0; }
          nav { display: none; }
          a { color: inherit; text-decoration: none; }
          h2, h3, caption, .group { break-after: avoid; }
          h3 + p { break-after: avoid; }
          h2 { margin-top: 1.75rem; }
          figure, tr, li, .answer, .short { break-inside: avoid; }
          .wide, .sheet { overflow: visible; }
          .figures { gap: 0 .6rem; break-inside: avoid; }
          figure { max-width: 49%; }
          figure.broad { max-width: 100%; }
          table { font-size: .85rem; }
          p, li { orphans: 3; widows: 3; }
        }

        """;
}
